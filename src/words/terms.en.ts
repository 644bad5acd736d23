// The words of the trade a cook may ask about, and the ways each is asked for.

import type { Term } from '../../machines/dialogue/answers.ts';

/** The sayable forms, the first being the one on screen, by the key of the answer in en.teach.ts. */
export const englishTerms = {
  rollingBoil: ['a rolling boil', 'a full boil', 'a full rolling boil'],
  headspace: ['headspace'],
  plateTest: ['a plate test', 'the plate test'],
  simmer: ['a simmer', 'simmering'],
  scorch: ['scorching'],
  fingertipTight: ['fingertip tight'],
  pectin: ['pectin'],
  butter: ['a fruit butter', 'butter'],
  jam: ['jam'],
  canner: ['a canner', 'the canner'],
  seal: ['a seal', 'a good seal'],
  falseSeal: ['a false seal'],
  ping: ['a ping', 'the ping'],
  foam: ['foam', 'the foam'],
  mash: ['the mash'],
  process: ['processing', 'the process time'],
  rest: ['the rest', 'resting'],
  solids: ['soluble solids'],
  settingPoint: ['the setting point', 'the gel point'],
  acid: ['acid', 'the acid for'],
  sterileJar: ['a sterile jar', 'sterilizing'],
  reprocess: ['reprocessing'],
  altitude: ['altitude'],
  rack: ['a rack', 'the rack'],
  airBubbles: ['an air bubble', 'a bubble tool'],
  foodMill: ['a food mill'],
  thermalShock: ['thermal shock'],
  band: ['a band', 'the ring'],
  siphoning: ['siphoning'],
  ventedLid: ['a vented lid'],
  bestBy: ['best by'],
  spoilage: ['spoilage'],
} as const satisfies Record<Term, readonly string[]>;
