// Which cautions do the guides give, and who says so?

import { memory, read } from './source.ts';

export const cautions = {
  boilingSugar: memory(
    'Boiling sugar is hotter than water and sticks: long sleeves, a long spoon, a pot at most half full.',
    'general burn prevention',
  ),
  potMetal: memory(
    'Use stainless steel or enamel; acid fruit attacks aluminium, copper and iron.',
    'extension texts',
  ),
  hotBlending: memory(
    'Never close a blender on hot fruit: half full at most, the lid vented, a folded towel on top.',
    'general kitchen safety',
  ),
  juiceFirst: read(
    'Cook and strain the juice first, then weigh it: the plan guesses how much you will get.',
    'AIB-539 guide 7: juice is extracted and strained before the sugar goes in',
  ),
  bottledAcid: read(
    'Use bottled lemon juice: fresh lemons vary, and the shelf hangs on this acid.',
    'AIB-539 guides 2 and 3',
  ),
  altitudeNotThermometer: read(
    'The process time goes by altitude, not by the thermometer.',
    'AIB-539 guides 2 and 7: minutes by altitude band',
  ),
  hotJars: read(
    'Hot jars for hot fruit, the lid of the canner away from you, no tilting, no draught.',
    'Illinois Extension; Wisconsin B2909',
  ),
  rhubarbLeaves: memory('Only the stalks: rhubarb leaves are poisonous.', 'extension texts'),
  marmaladePeel: read('A marmalade by name holds citrus peel.', 'Directive 2001/113/EC Annex I'),
} as const;
