// Why the plan's plainer figures are what they are, in English: those that need no more than the plan and the tables.

export const reasonWords = {
  'screen.why.startMass.says':
    'All that goes in before heating. Weigh the empty pot first: then the scale can check this.',
  'screen.why.startMass.how':
    '{sugar} of sugar, {acid} of acid, {rest} of trimmed fruit or juice, with any water and pectin',
  'screen.why.startMass.sum': 'a sum',
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
  'screen.why.clean.how': '{minutes} minutes; boiling them first is needed under {under}',
  'screen.why.sugarPer100g.says': 'Nearly all that dissolves is sugar: the fruit’s own and what you add.',
  'screen.why.sugarPer100g.how': '95 parts in 100 of the soluble solids of {solids} %',
  'screen.why.sugarPer100g.source': 'soluble-solids balance; the 95 parts: common practice, no source',
  'screen.why.bestBy.says': 'At its best this long, counted from the day it is made.',
  'screen.why.bestBy.how': 'the published time for where it is to be kept',
  'screen.why.cost.says': 'What this batch costs, and each jar of it.',
  'screen.why.cost.how':
    'fruit, sugar and acid by weight, a lid and what you said for a jar for each, and the burner’s {burner} for {minutes}',
  'screen.why.cost.assumed': '2000 W, assumed,',
  'screen.why.cost.source': 'the prices you entered, in your own money',
} as const satisfies Record<string, string>;
