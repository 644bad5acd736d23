// The contrast of every word on the screen, from the pixels that are painted: drawings, halos and all.

import type { Darkroom } from './pixels.ts';
import { see } from './seen.ts';
import { sayLook, type Look } from './sizes.ts';
import type { Stage } from './stage.ts';

export interface Contrast {
  words: number;
  least: number;
  leastBig: number;
  faults: string[];
}

export const noContrast = (): Contrast => ({ words: 0, least: Infinity, leastBig: Infinity, faults: [] });

/** WCAG 2.2, 1.4.6 Contrast (Enhanced), for text of any size here. */
const LEAST = 7;
/** The house's own, for what is read from two metres through steam. */
const LEAST_BIG = 10;

const CLEAR =
  '* { -webkit-text-fill-color: transparent !important; caret-color: transparent !important; } svg text { fill: transparent !important; }';

export async function contrastOf(
  stage: Stage,
  darkroom: Darkroom,
  name: string,
  look: Look,
  contrast: Contrast,
): Promise<void> {
  const { page } = stage;
  await stage.turnTo(look);
  const { texts, page: size } = await see(page);
  const shown = await page.screenshot();
  const sheet = await page.addStyleTag({ content: CLEAR });
  const cleared = await page.screenshot();
  await sheet.evaluate((style) => (style as HTMLElement).remove());
  const onScreen = texts.filter(({ y, h }) => y >= 0 && y + h <= size.h);
  const ratios = await darkroom.contrasts(shown, cleared, onScreen);
  for (const [i, ratio] of ratios.entries()) {
    const text = onScreen[i];
    if (!text || ratio === Infinity) continue;
    const big = text.part === 'clock' || text.part === 'act' || text.part === 'label';
    contrast.words += 1;
    contrast.least = Math.min(contrast.least, ratio);
    if (big) contrast.leastBig = Math.min(contrast.leastBig, ratio);
    if (ratio < (big ? LEAST_BIG : LEAST))
      contrast.faults.push(`${name} (${sayLook(look)}): “${text.words}” ${ratio.toFixed(1)}:1`);
  }
}
