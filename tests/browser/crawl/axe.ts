// Asks axe-core about the page as it stands: WCAG 2.2 A and AA, and of AAA the contrast of 7:1.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Axe {
  run(
    context: Document,
    options: object,
  ): Promise<{ violations: { id: string; nodes: { html: string }[] }[]; passes: unknown[] }>;
}

const OPTIONS = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } },
  resultTypes: ['violations'],
};

/** Each violation with the first things that it was found on; and how many rules had something to look at. */
export async function violations(page: Page): Promise<{ found: string[]; rules: number }> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(source);
  return page.evaluate(async (options) => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations: broken, passes } = await axe.run(document, options);
    const found = broken.map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .slice(0, 2)
          .map(({ html }) => html.slice(0, 120))
          .join(' ¦ ')}`,
    );
    return { found, rules: passes.length + broken.length };
  }, OPTIONS);
}
