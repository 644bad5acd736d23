// The contrast of every word on the screen, from the pixels that are painted: drawings, halos and all.

import type { Page } from 'playwright-core';
import type { Darkroom } from './pixels.ts';
import { see, type Text } from './seen.ts';
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

const letters = (colour: string) =>
  `* { -webkit-text-fill-color: ${colour} !important; caret-color: transparent !important; } svg text { fill: ${colour} !important; }`;

/** A colour that nothing on the page has: what a drawing shares with the ink of a letter is told from it. */
const MARK = letters('#f0f');
const CLEAR = letters('transparent');

export async function contrastOf(
  stage: Stage,
  darkroom: Darkroom,
  name: string,
  look: Look,
  contrast: Contrast,
): Promise<void> {
  await stage.turnTo(look);
  const first = await measured(stage, darkroom);
  // A clock that runs on between two pictures is not where it was: what is wrong once is looked at again.
  const again = first.some(isWrong) ? await measured(stage, darkroom) : [];
  for (const one of first) {
    const { text, ratio } =
      again.find(({ text: { words, part } }) => words === one.text.words && part === one.text.part) ?? one;
    const best = Math.max(ratio, one.ratio);
    contrast.words += 1;
    contrast.least = Math.min(contrast.least, best);
    if (isBig(text)) contrast.leastBig = Math.min(contrast.leastBig, best);
    if (isWrong({ text, ratio: best }))
      contrast.faults.push(`${name} (${sayLook(look)}): “${text.words}” ${best.toFixed(1)}:1`);
  }
}

interface Measured {
  text: Text;
  ratio: number;
}

const isBig = ({ part }: Text): boolean => part === 'clock' || part === 'act' || part === 'label';
const isWrong = ({ text, ratio }: Measured): boolean => ratio < (isBig(text) ? LEAST_BIG : LEAST);

async function measured({ page }: Stage, darkroom: Darkroom): Promise<Measured[]> {
  const { texts, page: size } = await see(page);
  const marked = await shotWith(page, MARK);
  const cleared = await shotWith(page, CLEAR);
  const onScreen = texts.filter(({ y, h }) => y >= 0 && y + h <= size.h);
  const ratios = await darkroom.contrasts(marked, cleared, onScreen);
  return ratios.flatMap((ratio, i) => {
    const text = onScreen[i];
    return text && ratio !== Infinity ? [{ text, ratio }] : [];
  });
}

async function shotWith(page: Page, content: string): Promise<Buffer> {
  const sheet = await page.addStyleTag({ content });
  const picture = await page.screenshot();
  await sheet.evaluate((style) => (style as HTMLElement).remove());
  return picture;
}
