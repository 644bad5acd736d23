// What the words of the trade mean, in English: a short answer, and the rest for "tell me more".
//
// Numbers come as parameters from machines/dialogue/answers.ts, where each has its source.

export const teachWords = {
  'teach.rollingBoil': 'A boil so strong that stirring cannot stop it.',
  'teach.rollingBoil.more':
    'Big bubbles break all over the top. A simmer looks like it in a small pot: stir it, and see if it stops.',
  'teach.headspace': 'The empty space under the lid: {headspaceMm} for spreads.',
  'teach.headspace.more':
    'Too little, and food boils out under the lid and spoils the seal. Too much, and air stays in.',
  'teach.plateTest': 'A spoonful on a freezing cold plate. See if it holds.',
  'teach.plateTest.more':
    'Take the pot off the heat. Put the plate back in the cold for a few minutes. Then push the spoonful: it should hold, with no wet rim.',
  'teach.simmer': 'Small bubbles at the edge, and now and then a plop.',
  'teach.simmer.more':
    'Water leaves slowly and the sugar does not burn. Keep the lid off, or nothing thickens.',
  'teach.scorch': 'Sugar burning on the bottom of the pot.',
  'teach.scorch.more':
    'Heat off, and do not scrape. Pour what is loose into a clean pot and taste it. Burnt stays burnt.',
  'teach.fingertipTight': 'Turn the ring with your fingertips until it just stops.',
  'teach.fingertipTight.more':
    'Air must get out in the canner. Forced tight, the lid buckles and does not seal.',
  'teach.pectin': 'The stuff in fruit that makes jam set.',
  'teach.pectin.more':
    'Tart apples, crab apples and plums have much; pears, peaches and strawberries little. It needs acid and sugar to set.',
  'teach.butter': 'Fruit pulp cooked down thick and smooth. No milk in it.',
  'teach.butter.more':
    'The standard asks for {butterSolids} percent solids; many home ones are looser. It is done when it mounds on the spoon and no water rims it.',
  'teach.jam': 'Crushed fruit and sugar, cooked until it sets.',
  'teach.jam.more':
    'Finished jam is {jamSolids} percent solids or more, most of it sugar. With no added pectin it sets at about eight degrees Fahrenheit over boiling water.',
  'teach.canner': 'The big pot with a rack that boils the full jars.',
  'teach.canner.more': 'It must be deep enough for {depthM} of water over the lids, with room to boil.',
  'teach.seal': 'The lid drawn down in the middle. It does not move.',
  'teach.seal.more':
    'Take the ring off when the jar is cold. Press the middle: no spring. Look from the side: it dips. Tap it: it rings.',
  'teach.falseSeal': 'A lid that looks down but lets go later.',
  'teach.falseSeal.more':
    'It happens when the jar was not heated enough, or food sat on the rim. A lid found loose on the shelf: throw the food away, and do not taste it.',
  'teach.ping': 'The sound of a lid pulled down as the jar cools.',
  'teach.ping.more':
    'A good sign, but no proof. Some seal without a sound. Check every lid when the rest is over.',
  'teach.foam': 'Air and fruit bits on top. Skim it once, at the end.',
  'teach.foam.more': 'It is good to eat, but it carries air into the jar and looks cloudy.',
  'teach.mash': 'Crushing the fruit until it swims in its own juice.',
  'teach.mash.more': 'Do it before the heat. Sugar in a dry pot burns.',
  'teach.process': 'Boiling the full jars, for a set time, so they keep.',
  'teach.process.more':
    'The time comes from a tested table for this food, jar and altitude. It counts only at a full rolling boil, with no break.',
  'teach.rest': 'Jars left alone, {restLowHours} to {restHighHours} hours, while they seal.',
  'teach.rest.more':
    'Stand them on a towel, {gapDepthM} apart, away from a draught. Do not tilt, tighten or press.',
  'teach.solids': 'All that is not water: mostly sugar. More means thicker.',
  'teach.solids.more':
    'Solids stay in the pot while water leaves. So the weight of the pot tells how thick it is.',
  'teach.settingPoint': 'The heat at which jam will set when cold.',
  'teach.settingPoint.more':
    'Eight degrees Fahrenheit, or four and a half Celsius, above boiling water where you are, if no pectin was added. Butters have no such point: use the plate.',
  'teach.acid': 'Sourness. It keeps the worst germs from growing.',
  'teach.acid.more':
    'For the shelf, fruit must be at p H {shelfPh} or lower. Some fruits need bottled lemon juice for that: bottled, because its strength is known.',
  'teach.sterileJar': 'An empty jar boiled {minutes}, or more up high.',
  'teach.sterileJar.more':
    'Needed when the jars are processed less than {processMinutes}. One minute more for each thousand feet.',
  'teach.reprocess': 'Doing it again for a jar that did not seal.',
  'teach.reprocess.more':
    'Within {withinHours} hours only. Boil the food again, clean hot jar, new lid, the full time. Or just put it in the fridge.',
  'teach.altitude': 'Your height above the sea. Water boils cooler up high.',
  'teach.altitude.more': 'Cooler water kills less, so jars need more minutes above {elevationM}.',
  'teach.rack': 'It holds the jars off the bottom of the canner.',
  'teach.rack.more': 'Water must flow under them, and glass on hot metal cracks.',
  'teach.airBubbles': 'Air caught in the jar. Run a thin spatula down inside.',
  'teach.airBubbles.more': 'Then fill up to the headspace again. Not with metal: it scratches the glass.',
  'teach.foodMill': 'A sieve with a crank. It keeps back skins and seeds.',
  'teach.foodMill.more': 'Work in small lots. Let the fruit cool a little if it spits.',
  'teach.thermalShock': 'Glass cracking when hot meets cold.',
  'teach.thermalShock.more':
    'Hot fruit in hot jars, hot jars in hot water, and a towel under them when they come out.',
  'teach.band': 'The screw ring. It holds the lid only until it seals.',
  'teach.band.more':
    'Take it off the next day, wash it and store the jar without it. It rusts, and it hides a bad seal.',
  'teach.siphoning': 'Food forced out of the jar by a sudden change of heat.',
  'teach.siphoning.more':
    'Let the jars stand {standMinutes} with the heat and the lid off before you lift them. A sealed jar that lost some is still good.',
  'teach.ventedLid': 'A blender lid with its hole open, under a folded towel.',
  'teach.ventedLid.more':
    'Hot fruit makes steam that bursts a closed lid. Fill it half at most, and start slow.',
  'teach.bestBy': 'A year, processed and sealed, in a cool, dark, dry place.',
  'teach.bestBy.more':
    'Write the date on the jar. After {shelfMonths} months it darkens and loses taste. In the fridge, once open, eat a full sugar jam within a month.',
  'teach.spoilage': 'Mould, a bulging lid, gas or leaks. Throw it all away.',
  'teach.spoilage.more':
    'Do not taste it, and do not scrape the mould off: its poison goes deeper than you see.',

  // About the teaching itself.
  'teach.source':
    '{remembered, select, true {From memory, not checked: } other {}}{who, select, usda {the U S D A guide says so.} center {the National Center for Home Food Preservation says so.} law {the food standards say so.} extension {state food guides say so.} you {that is from you.} practice {common practice; I have no source.} other {a handbook rule.}}',
  'teach.hidden': 'The picture is away.',
  'teach.nothingToShow': 'I have no picture of that.',
  'teach.words':
    '{level, select, full {All the words from here.} half {Fewer words from here.} other {Very few words from here.}}',
  'teach.neverLess': 'This step keeps its words: safety hangs on it.',
} as const satisfies Record<string, string>;
