// Which tools does the work take? Common practice, no source, but for the canner: AIB-539 guide 1.

export const tools = {
  always: [
    'wide heavy pot',
    'long spoon',
    'kitchen scale',
    'ladle',
    'wide funnel',
    'clean cloth',
    'cold plate',
  ],
  blending: ['stick blender'],
  gelling: ['thermometer'],
  juicing: ['jelly bag'],
  canning: ['canner with rack', 'jar lifter', 'new lids and bands', 'headspace gauge'],
} as const;
