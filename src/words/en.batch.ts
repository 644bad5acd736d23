// What the batch says, in English: ICU message format, one sentence or two, the verb first.
//
// Quantities come as SI numbers in parameters named by their unit and are written plainly, {minutes};
// the catalogue says them in the cook's units: ...Kg, depthM, ...TempC, minutes, ...Minutes, volumeL,
// headspaceMm, elevationM, seconds. {aboutMinutes} rounds to what a person can hold and says "about".
// Plain numbers and the # of a plural are said in words up to ninety-nine.

export const batchWords = {
  'batch.setUp':
    '{juice, select, none {Weigh fruit: {fruitMassKg}.} weighed {Weigh juice: {fruitMassKg}.} other {Strain juice, weigh it.}} {jars, plural, one {# jar} other {# jars}}. Freeze a plate.',
  'batch.setUp.why': 'Once the pot boils there is no time to look for things.',
  'batch.mash':
    '{pectin, select, powdered {Pectin {pectinMassKg},{acid, select, none {} other { acid,}} {into, select, juice {juice. Stir.} other {fruit. Mash.}} Sugar waits.} liquid {Sugar {sugarMassKg},{acid, select, none {} other { acid,}} {into, select, juice {juice. Stir.} other {fruit. Mash.}} Pectin waits.} other {{into, select, peel {Water {liquidMassKg}: peel soft. Sugar {sugarMassKg}.} stewed {Water {liquidMassKg}, sugar {sugarMassKg}{acid, select, none {} other {, acid}}: mash.} juice {Sugar {sugarMassKg},{acid, select, none {} other { acid,}} juice. Stir till it melts.} other {Sugar {sugarMassKg},{acid, select, none {} other { acid,}} fruit. Mash till it swims.}}}}',
  'batch.mash.why':
    '{into, select, peel {Sugar hardens peel that is not soft yet.} juice {Dry sugar on the floor of the pot burns.} other {Sugar scorches in a dry pot. Crushed fruit gives the juice it needs.}}',
  'batch.bringToBoil': 'Heat on, to a rolling boil. {aboutMinutes}.',
  'batch.bringToBoil.why':
    'A rolling boil cannot be stirred down. Below that, foam and fruit are not hot right through.',
  'batch.intoTheBoil':
    '{pectin, select, powdered {Sugar in: {sugarMassKg}.} other {Pectin in: {pectinMassKg}.}} Back to a rolling boil.',
  'batch.intoTheBoil.why':
    '{pectin, select, powdered {Powder melts only in a pot with little sugar. It goes first.} other {Long boiling spoils liquid pectin. It goes last.}}',
  'batch.askIfRollingBoil': 'Is it at a rolling boil, one you cannot stir down?',
  'batch.simmer':
    '{timed, select, true {Boil it hard one minute. Stir all the while.} other {{hard, select, true {{again, select, true {Heat on, boil it hard again.} other {Keep it at a hard boil.}}} other {{again, select, true {Back to the simmer.} other {Heat down to a simmer.}}}} {aboutMinutes} more.}}',
  'batch.simmer.why':
    '{hard, select, true {A fast boil sets it before colour and taste are cooked away.} other {Water leaves, and the sugar on the floor does not burn.}}',
  'batch.stir': '{near, select, true {Stir now, right to the bottom.} other {Stir the pot.}}',
  'batch.stir.why': 'As it thickens, what lies still on the bottom burns.',
  'batch.stirred': 'Good. {aboutMinutes} more.',
  'batch.reading':
    '{done, select, true {That is the target. Is it thick enough?} other {{far, select, true {That is far from the plan. Please measure it again.} other {Noted. {aboutMinutes} more.}}}}',
  'batch.readingFarOff.why':
    'I hardly count on it. A weight is without the pot. "At half" is half the first height.',
  'batch.minutesAdded': 'Added. {aboutMinutes} more.',
  'batch.nearlyThick': 'Nearly there. Stay by the pot and stir often.',
  'batch.nearlyThick.why':
    'The last minutes take the most water for the least fruit. It can catch in one of them.',
  'batch.askIfThick': 'By now it should be thick. Is it thick enough?',
  'batch.askIfThick.why':
    'Lift a spoonful out of the steam. It should mound up and no clear juice run from its edge.',
  'batch.askIfBoiled': 'Did it boil hard for the whole minute?',
  'batch.askIfBoiled.why': 'Added pectin sets by the clock. It is still thin, and longer spoils it.',
  'batch.simmeredUnwatched':
    '{over, select, true {Away {awayMinutes}. Stir now. Is it thick?} other {Away {awayMinutes}. Stir now. Not thick yet.}}',
  'batch.skim': 'Off the burner. Skim the foam off. Say: the foam is off.',
  'batch.skim.why':
    'Foam carries air into the jar, and it looks cloudy. Skim once, at the end: less fruit is lost.',
  'batch.strain':
    '{needed, select, true {Heat off. Strain it through the mill or sieve. Mind the splashes.} other {Heat off. Strain it if you like, or say: skip the straining.}}',
  'batch.strain.why': 'Skins, seeds and stones come out here, so that the spread is smooth.',
  'batch.mustStrain': 'This one must be strained. Put it through the mill.',
  'batch.blend': 'Heat off. Blend it smooth, vent the lid, half full at most.',
  'batch.blend.why': 'Steam in a closed blender throws hot fruit at you. A stick blender is safer.',
  'batch.spoonOnPlate':
    '{cold, select, true {Pot off the burner. Put a spoonful on the cold plate.} other {Off the burner. Plate not cold: {minutes} more. Then a spoonful.}}',
  'batch.spoonOnPlate.why': 'Hot fruit is always runny. The cold plate shows how it will sit in the jar.',
  'batch.waitForPlate': 'Wait two minutes. Then push it with a finger.',
  'batch.askIfItHolds': 'Push the spoonful. Does it hold, or is it runny?',
  'batch.askIfItHolds.why': 'If the line stays open and no juice runs from the edge, it holds.',
  'batch.loosen': 'Too thick: heat off. Stir in hot water. Say: I loosened it.',
  'batch.loosen.why': 'Boiling water from the kettle, a spoon or two at a time. Then test again.',
  'batch.held': 'Holding. Heat off, lid on. Say: carry on, when you are back.',
  'batch.askIfStillHeld': 'Held {minutes}. Carry on, or stop?',
  'batch.itCaught': 'Heat off. Do not scrape. Pour it in a clean pot.',
  'batch.itCaught.why':
    'The burn stays on the bottom if you leave it there. If it tastes burnt, stop this batch.',
  'batch.jarsNoted': 'Good. Keep the jars in the hot water.',
  'batch.readyJars':
    '{sterile, select, true {Boil the empty jars {minutes}. Pot off the burner, lid on.} other {{shelf, select, true {Off the burner. Get clean hot jars. Say: the jars are ready.} other {Clean jars by the pot. Say: the jars are ready.}}}}',
  'batch.readyJars.why':
    'Hot fruit cracks a cold jar. Jars that are processed less than ten minutes must be boiled first.',
  'batch.fill':
    '{keep, select, shelf {Fill hot jars, leaving {headspaceMm}. Wipe rims, lids fingertip tight.} freezer {Cool it, then fill, leaving {headspaceMm}. Lids on.} other {Fill the jars, leaving {headspaceMm}. Lids on.}}',
  'batch.fill.why': 'The gap draws the lid down. Food on the rim breaks the seal.',
  'batch.toTheCanner':
    '{jars, plural, one {# jar} other {# jars}} to the canner now, hot.{short, plural, =0 {} one { Short one: fridge.} other { Short ones: fridge.}}',
  'batch.toTheCanner.why':
    'Cooled jars would need longer than the published time, and a cold jar cracks in hot water.',
  'batch.wentCold': 'Jars too cold. Not safe for the shelf: refrigerate or reheat.',
  'batch.wentCold.why': 'The published time holds for hot jars only. You may boil it again within a day.',
  'batch.notServed': 'They came out early. Not safe for the shelf: refrigerate or reheat.',
  'batch.notServed.why': 'The time was not served at an unbroken full boil, so nobody knows that it is safe.',
  'batch.reheat': 'Full boil again, stir all the time. Tell me: rolling boil.',
  'batch.reheat.why': 'Processing again is a whole new start: hot fruit, hot jars, new lids, the full time.',
  'batch.nextLoad': 'Boil the rest, stir all the time. Tell me: rolling boil.',
  'batch.nextLoad.why': 'Each load goes into hot jars, hot, and gets the full time.',
  'batch.rest': 'Let the jars rest a day. Do not touch, tilt or tighten.',
  'batch.rest.why': 'The seal forms as the jar cools. Leave it 12 to 24 hours, out of the draught.',
  'batch.ping':
    '{pings, plural, one {That is one lid down. A good sign, but no proof.} other {# pings. Check them all tomorrow.}}',
  'batch.restLonger': 'Too soon. Let them rest {hours, plural, one {# more hour} other {# more hours}}.',
  'batch.tooEarlyToJudge':
    'Too soon to judge. Do not press. Look again in {hours, plural, one {# hour} other {# hours}}.',
  'batch.tooEarlyToJudge.why': 'A lid can still draw down in the first twelve hours.',
  'batch.mayCheckSeals': 'Rested twelve hours. You may check the seals.',
  'batch.checkSeals': 'Check {jars, plural, one {the jar} other {all # jars}}. Ring off. Lid down, no flex?',
  'batch.checkSeals.why':
    'Press the middle of the lid: a sealed one does not move. It dips, and it rings when tapped.',
  'batch.tooManyFailed': 'There are only {jars, plural, one {# jar} other {# jars}}. How many did not seal?',
  'batch.putAway':
    '{sealed, plural, =0 {} one {Label # jar for the shelf. } other {Label # jars for the shelf. }}{cold, plural, =0 {} one {{keep, select, freezer {{cold} to the freezer.} other {{cold} to the fridge now.}}} other {{keep, select, freezer {{cold} to the freezer.} other {{cold} to the fridge now.}}}}',
  'batch.putAway.why': 'Sealed jars keep a year, cool and dark. An unsealed jar is not safe there.',
  'batch.done':
    '{shelf, plural, =0 {} one {# jar on the shelf. } other {# jars on the shelf. }}{cold, plural, =0 {} one {# jar kept cold. } other {# jars kept cold. }}Well done.',
  'batch.discard': 'Seal lost on the shelf: do not taste it. Throw it away.',
  'batch.discard.why': 'It let in air for an unknown time. No look or smell shows that it is safe.',
  'batch.jarsMoved':
    '{jars, plural, one {# jar} other {# jars}} {what, select, eaten {eaten. Good appetite} givenAway {given away} discarded {thrown away. Nobody tastes it} intoFridge {in the fridge. Three weeks at most} other {in the freezer. A full jar may crack}}. {left, plural, =0 {None left.} other {# left.}}',
  'batch.stopped':
    '{raw, select, true {Stopped. Nothing is cooked: the fruit keeps in the fridge.} other {{jars, plural, =0 {Heat off. Into the fridge within two hours. Not the shelf.} other {Heat off. Pot and jars: fridge within two hours. Not the shelf.}}}}',
  'batch.whereWeAre': 'I was away {awayMinutes}.',
} as const satisfies Record<string, string>;
