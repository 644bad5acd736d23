// Can every two states be told apart by eyes that see fewer colours, or none? By their pictures, and by their words.

import type { Darkroom } from './pixels.ts';
import type { SavedKitchen } from './kitchens.ts';
import type { Look } from './sizes.ts';
import type { Stage } from './stage.ts';

export const EYES = ['protanopia', 'deuteranopia', 'tritanopia', 'achromatopsia'] as const;
type Eyes = (typeof EYES)[number];

export interface View {
  name: string;
  /** Where the chart of the thing in view stands, as the page tells it: on another screen of one state only clock and voids differ. */
  state: string;
  /** What the glance zone says. */
  words: string;
  /** The picture in lightness alone, by eyes. */
  grids: Record<Eyes, number[]>;
}

const ACROSS = 24;
const DOWN = 32;
/** Of 255, averaged over the picture; two pictures of one state a second apart differ by less than a tenth of it. */
const APART = 1;

/** The page stands on this kitchen already. */
export async function viewOf(
  stage: Stage,
  darkroom: Darkroom,
  kitchen: SavedKitchen,
  look: Look,
): Promise<View> {
  await stage.turnTo(look);
  const words = await stage.page.evaluate(() => {
    const text = (what: string) => document.querySelector(`.glance ${what}`)?.textContent ?? '';
    const drawn = [...document.querySelectorAll('.vessel [role=img]')].map(
      (one) => one.getAttribute('aria-label') ?? '',
    );
    return [text('.which'), text('.clock-words'), text('.act'), ...drawn].join(' · ');
  });
  const grids = {} as View['grids'];
  for (const type of EYES) {
    await stage.devtools.send('Emulation.setEmulatedVisionDeficiency', { type });
    grids[type] = await darkroom.grid(await stage.page.locator('.vessel').screenshot(), ACROSS, DOWN);
  }
  await stage.devtools.send('Emulation.setEmulatedVisionDeficiency', { type: 'none' });
  return { name: kitchen.name, state: await stage.page.evaluate(stateInView), words, grids };
}

/** While its jars are in the canner, a batch stands where the canner stands. */
function stateInView(): string {
  const { kitchen = '' } = document.documentElement.dataset;
  const states = kitchen.split('; ').map((pair) => pair.split(': '));
  const of = (who: string) => states.find(([name]) => name === who)?.[1] ?? 'none';
  const looksAt = document.querySelector<HTMLElement>('main.stove')?.dataset['looksAt'];
  const isCanner = looksAt !== undefined && looksAt.startsWith('canner');
  if (isCanner) return `canner ${of('canner')}`;
  const [name = '', state = ''] = states[0] ?? [];
  return state === 'processing' ? `canner with ${name}: ${of('canner')}` : `${name} ${state}`;
}

export interface Told {
  pairs: number;
  /** The least difference of two pictures whose words differ, mean lightness of 255. */
  least: number;
  faults: string[];
}

/** Every two states: their words must differ, and their pictures in lightness alone. */
export function toldApart(views: readonly View[]): Told {
  const told: Told = { pairs: 0, least: Infinity, faults: [] };
  views.forEach((a, i) => {
    for (const b of views.slice(i + 1)) {
      if (a.state === b.state) continue;
      told.pairs += 1;
      if (a.words === b.words) told.faults.push(`the same words: “${a.name}” and “${b.name}”`);
      for (const eyes of EYES) {
        const apart = mean(a.grids[eyes].map((value, cell) => Math.abs(value - (b.grids[eyes][cell] ?? 0))));
        told.least = Math.min(told.least, apart);
        if (apart < APART)
          told.faults.push(`alike to ${eyes} (${apart.toFixed(2)}): “${a.name}” and “${b.name}”`);
      }
    }
  });
  return told;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
