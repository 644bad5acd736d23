// Why the plan's plainer figures are what they are, in English: those that need no more than the plan and the tables.

export const reasonWords = {
  'screen.why.startMass.says':
    'All that goes in before heating. Weigh the empty pot first: then the scale can check this.',
  'screen.why.startMass.how':
    '{sugar} of sugar, {acid} of acid, {rest} of trimmed fruit or juice, with any water and pectin',
  'screen.why.startMass.withoutAcid':
    '{sugar} of sugar, {rest} of trimmed fruit or juice, with any water and pectin; no acid added',
  'screen.why.startMass.sum': 'a sum',
  'screen.why.sugarBounds.says':
    'Within these the recipe holds. With less sugar the verdict may change; more would set as a sweet.',
  'screen.why.liquid.own': 'As you said. It goes in with the fruit.',
  'screen.why.liquid.peel': 'Peel is boiled soft in it before the sugar, which would harden it.',
  'screen.why.liquid.dried': 'Dried fruit is stewed in it first.',
  'screen.why.liquid.how': '{water} to {fruit} of clean fruit',
  'screen.why.pectin.says': 'The usual dose. Where the packet says otherwise, do as the packet says.',
  'screen.why.pectin.how':
    '{dose} to {fruit} of fruit or juice and sugar; less where the fruit has much of its own',
  'screen.why.sugarBounds.how': '{low} to {high} parts of sugar to one of prepared fruit or juice ({fruit})',
  'screen.why.solidsBounds.says':
    'Looser than this it is a thin puree, which no butter row covers; stiffer, it scorches before it is done.',
  'screen.why.solidsBounds.how':
    '{low} % is what published home yields imply, {high} % is where a butter turns to paste; the name asks for 43 %',
  'screen.why.startDepth.says': 'Depth on the handle of a spoon, before anything has boiled away.',
  'screen.why.waterBoils.says':
    'Water boils cooler the higher you live. To be surer, boil some and read your own thermometer.',
  'screen.why.waterBoils.how': 'steam line of water at the air pressure of {elevation}',
  'screen.why.waterBoils.measured': 'read on your thermometer in boiling water',
  'screen.why.own': 'what you entered',
  'screen.why.headspace.says':
    'The gap between spread and rim. Too little and it boils out under the lid; too much and the seal is weak.',
  'screen.why.headspace.how': 'one figure for jam, jelly, marmalade and butter, whatever the jar',
  'screen.why.headspace.freezer':
    'This is the gap for a jar filled hot. Spread swells as it freezes: leave more, as below.',
  'screen.why.sterilise.says':
    'The process is too short to make the jars sterile, so they are boiled empty first.',
  'screen.why.sterilise.how':
    '{least} minutes, and one more for each full {perFt} ft; you are at {elevation}',
  'screen.why.clean.says': 'The process is long enough to make the jars sterile by itself.',
  'screen.why.clean.how': '{long} minutes; boiling them first is needed under {under}',
  'screen.why.sugarPer100g.says': 'Nearly all that dissolves is sugar: the fruit’s own and what you add.',
  'screen.why.sugarPer100g.how': '95 parts in 100 of the soluble solids of {solids} %',
  'screen.why.sugarPer100g.source': 'soluble-solids balance; the 95 parts: common practice, no source',
  'screen.why.fruitPer100g.says': 'Trimmed fruit or juice that went in for each 100 g that came out.',
  'screen.why.fruitPer100g.how': 'prepared fruit over the finished weight',
  'screen.why.pH.says':
    'A guess, for looking and not for proving: {line} is the line. The verdict goes by tested doses, never by this.',
  'screen.why.pH.how': 'the range of the fruit, lowered by the added acid against what the fruit buffers',
  'screen.why.waterActivity.says':
    'How much of the water is free, 1 for pure water. It does not make a spread safe by itself.',
  'screen.why.waterActivity.how': 'activity of water in a sugar solution of {solids} %, at 25 °C (77 °F)',
  'screen.why.bestBy.says': 'At its best this long, counted from the day it is made.',
  'screen.why.bestBy.how': 'the published time for where it is to be kept',
  'screen.why.cost.says': 'What this batch costs, and each jar of it.',
  'screen.why.cost.how':
    'fruit, sugar and acid by weight, a lid and what you said for a jar for each, and the burner’s {burner} for {minutes}',
  'screen.why.cost.assumed': '2000 W, assumed,',
  'screen.why.cost.source': 'the prices you entered, in your own money',
} as const satisfies Record<string, string>;
