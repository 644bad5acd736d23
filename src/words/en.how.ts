// What full words add to a prompt, in English, and what is left of it for a cook who asks for fewer.
//
// The points on which safety hangs stand in the prompts themselves (en.batch.ts, en.canner.ts) or in a line here
// that never fades; src/kitchen/fading.ts says which.

export const howWords = {
  'how.batch.setUp': 'Wash jars; lids, ladle, skimmer near. Say: all is ready.',
  'how.batch.mash':
    '{acid, select, none {{pectin, select, powdered {No dry lumps left. Say: the mash is done.} other {{into, select, peel {A thumb crushes it. Sugar after. Say: everything is in the pot.} juice {No dry sugar left below. Say: everything is in the pot.} other {No dry sugar left below. Say: the mash is done.}}}}} other {{acidVolumeMl, plural, =0 {Citric acid: {acidMassKg}.} other {Bottled lemon juice: {acidVolumeMl}.}} {pectin, select, powdered {No dry lumps left.} other {No dry sugar left below.}}}}',
  'how.batch.bringToBoil': 'Stir all the time. It boils on while you stir it.',
  'how.batch.simmer':
    '{hard, select, true {Big bubbles, lid off. Stir often, right to the bottom.} other {Small lazy bubbles, lid off, stir to the bottom.}}',
  'how.batch.stir': 'Drag the spoon over the whole floor, corners too.',
  'how.batch.nearlyThick': 'It plops now. A spoonful mounds and stays.',
  'how.batch.skim': 'Push it to one side, lift it off. Spice bags out.',
  'how.batch.strain': 'Small lots. Skins and seeds stay. Say: straining is done.',
  'how.batch.blend': 'Towel over the lid, start slow. Say: blending is done.',
  'how.batch.spoonOnPlate': 'A small one, in the middle. Say: it is on the plate.',
  'how.batch.waitForPlate': 'Back in the cold with it. The pot stays off.',
  'how.batch.loosen': 'A spoon or two at a time, boiling, stirred in.',
  'how.batch.fill':
    '{tooMany, select, true {Bubbles out. Only {fits}: lid on the rest. Say how many.} other {Bubbles out, top up. New lids. Say how many, short ones too.}}',
  'how.batch.readyJars': 'Look at each rim: no nick. Say: the jars are ready.',
  'how.batch.toTheCanner': 'Upright, on the rack, not touching. Say: the jars are in.',
  'how.batch.rest':
    '{more, select, true {On a towel, apart. Say: there is more in the pot.} other {On a towel, an inch apart, out of the draft.}}',
  'how.batch.checkSeals': 'Say: all jars sealed. Or say how many did not.',
  'how.batch.putAway': 'What and when on the label. Say: everything is put away.',
  'how.canner.fillIt': 'Hot before the jars are full. Say: the canner is heating.',
  'how.canner.loadNow': 'Straight down, not touching. Say: the jars are in.',
  'how.canner.bringToFullBoil': 'A boil all over. Say: it is at a full rolling boil.',
  'how.canner.clockStarted': 'Stay close. Tell me at once: the boil dropped.',
  'how.canner.served': 'Lift the lid away from you: steam burns.',
  'how.canner.liftOut': 'Grip under the ring. Set them an inch apart on a towel.',

  'bare.batch.setUp': 'Set up: {fruitMassKg}, {jars, plural, one {# jar} other {# jars}}.',
  'bare.batch.mash':
    '{pectin, select, powdered {Stir in {pectinMassKg} of pectin.} other {{into, select, fruit {Mash, with {sugarMassKg} of sugar.} juice {Stir in {sugarMassKg} of sugar.} other {Water {liquidMassKg}, then sugar {sugarMassKg}.}}}}',
  'bare.batch.bringToBoil': 'To a rolling boil.',
  'bare.batch.simmer': '{hard, select, true {Boil hard.} other {Simmer.}} {aboutMinutes}.',
  'bare.batch.stir': 'Stir.',
  'bare.batch.nearlyThick': 'Nearly.',
  'bare.batch.skim': 'Off the burner, skim.',
  'bare.batch.strain': 'Heat off, strain.',
  'bare.batch.waitForPlate': 'Two minutes.',
  'bare.batch.loosen': 'Heat off, loosen it.',
  'bare.canner.fillIt': 'Canner on, half full.',
} as const satisfies Record<string, string>;
