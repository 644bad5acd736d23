// What is answered to the cook's own questions, in English: a short answer, and two sentences for "tell me more".
//
// The numbers come as parameters from the rows of src/tables/guidance.ts, each with its source. Where no guide
// covers it the answer is no shelf: fridge or freezer.

import type { QuestionId } from '../core/guidance.ts';

type Key = `ask.${QuestionId}` | `ask.${QuestionId}.more`;

export const answerWords: Record<Key, string> = {
  // What goes in.
  'ask.lessSugar': 'Not in jam or jelly: it may not set. Change the plan.',
  'ask.lessSugar.more':
    'With plain pectin, keep the sugar of the recipe. For less, use a recipe made for it, or keep the jars cold.',
  'ask.honey': 'Only in a recipe tested with it. If not, keep it cold.',
  'ask.honey.more':
    'Honey and syrup hold more water than sugar, and the plan does not count that. Follow a tested recipe to the letter, or use the fridge.',
  'ask.sweetener': 'Only by a recipe made for it. Then mostly fridge food.',
  'ask.sweetener.more':
    'Such a spread keeps {leastWeeks} to {mostWeeks} weeks in the fridge. It goes on a shelf only where a tested recipe gives a time for it.',
  'ask.double': 'No. One batch at a time: a big one sets soft.',
  'ask.double.more':
    'More in the pot boils too long, and the set suffers. Make a second batch, or plan a butter in more pots.',
  'ask.half': 'Yes. Plan it again with the fruit you have.',
  'ask.half.more':
    'All the numbers shrink with it, but for the time in the canner. A small batch dries fast: stir more and stay close.',
  'ask.skipLemon': 'Not where the plan says it is for safety.',
  'ask.skipLemon.more':
    'Food for the shelf must be at p H {shelfPh} or lower, and some fruits need the acid for that. In the rest it helps the set: put in what the recipe names.',
  'ask.freshLemon': 'Not for safety. Use bottled: its strength is known.',
  'ask.freshLemon.more':
    'One fresh lemon is sour and the next is not. Where it is only for taste, squeeze what you like.',
  'ask.vinegar': 'Only where the recipe names it. Bottled lemon juice is tested.',
  'ask.vinegar.more':
    'Lemon juice is more sour than most vinegar, cup for cup. So vinegar in its place may leave too little acid.',
  'ask.citricAcid': 'Yes, for figs and tomatoes: a quarter teaspoon for each pint.',
  'ask.citricAcid.more':
    'That stands for one tablespoon of bottled lemon juice. In other fruit put in what the plan says, no less: choose it under acid.',
  'ask.spices': 'Yes, a little dry spice. It does not change the time.',
  'ask.spices.more':
    'Tie whole ones in a bag and take it out before you fill. Fresh herbs and roots are another matter: leave them out.',
  'ask.nuts': 'No. Nothing that is not sour goes in.',
  'ask.nuts.more':
    'It takes the acid down, and no time is tested for it. Make the plain one, and stir them in when you eat it.',
  'ask.brandy': 'Only as a tested recipe says. Else add it when you eat.',
  'ask.brandy.more':
    'It boils hard when it meets hot fruit, and it can catch fire. No time here was tested with it.',
  'ask.starch': 'No. Starch keeps the heat from the middle of the jar.',
  'ask.starch.more':
    'No safe time is known for it at home. Boil the butter down, or use a tested recipe with pectin.',
  'ask.mixFruit': 'This plan counts one fruit. For a mix, use a tested recipe.',
  'ask.mixFruit.more':
    'A butter by its name may hold two to five fruits, each at least a fifth. If one of them may not go on the shelf, the mix may not.',
  'ask.frozenFruit': 'Yes. Thaw it, and use the juice that runs out too.',
  'ask.frozenFruit.more':
    'Weigh it with its juice, or the plan is off. It may set softer, since some of the pectin is gone.',
  'ask.badFruit': 'Sound fruit only. Throw out what is rotten or moldy.',
  'ask.badFruit.more':
    'Cut small bruises away. Very ripe fruit has less acid and less pectin, so it sets less.',
  'ask.otherPectin': 'Not by a swap. Choose it in the plan first.',
  'ask.otherPectin.more':
    'Powder goes in before the sugar, and liquid after the boil. The amounts are not the same, and a butter needs none.',
  'ask.peel': 'No need, if it goes through the mill. Stones must come out.',
  'ask.peel.more':
    'Skins and cores give pectin, and the mill keeps them back. For jam, take stones and cores out first.',
  'ask.wash': 'Yes, in cold water, just before you use it. Drain it.',
  'ask.wash.more': 'Wet fruit weighs more and boils longer. Take off stems, leaves and bad spots.',

  // On the stove.
  'ask.burntSmell': 'Heat off. Do not scrape. Pour it in a clean pot.',
  'ask.burntSmell.more':
    'Taste it when it has cooled: burnt stays burnt, and then stop. Tell me: it caught on the bottom.',
  'ask.foamsOver': 'Heat down, pot off the ring. Stir it down.',
  'ask.foamsOver.more':
    'Next time fill the pot half at most. Half a teaspoon of butter in the pot holds the foam down.',
  'ask.spits': 'Heat down. Long spoon, long sleeves, stand back.',
  'ask.spits.more':
    'Thick fruit traps steam until it bursts. Stir to the bottom, and lay a splash screen over it, not a lid.',
  'ask.burnedMyself': 'Heat off. Cool running water on it for {minutes}.',
  'ask.burnedMyself.more':
    'No ice, no butter, and take rings off. If it is bigger than your palm, or on the face, get help now.',
  'ask.slow': 'Lid off, wide pot, a little more heat. Keep stirring.',
  'ask.slow.more':
    'Water must leave, and it leaves from the top. A deep pot can take twice as long as a wide one.',
  'ask.lumpy': 'Heat off, then blend it, or push it through the mill.',
  'ask.lumpy.more': 'Do it before the plate test. Lumps hold the heat back from the middle of the jar.',
  'ask.lidOnPot': 'Fruit pot: lid off. Canner: lid on.',
  'ask.lidOnPot.more':
    'A lid on the fruit keeps the water in, so it never thickens. A lid on the canner holds the boil.',
  'ask.whichPot': 'A wide, heavy one: stainless steel or enamel.',
  'ask.whichPot.more': 'Sour fruit eats bare aluminum, copper and iron. A thick floor scorches less.',
  'ask.potFull': 'Half full at most. It rises when it boils.',
  'ask.potFull.more': 'Foam can double what is in it. If it is too full, use two pots.',
  'ask.slowCooker': 'To cook the butter down, yes. Never for the jars.',
  'ask.slowCooker.more':
    'Leave its lid open a crack, so that steam gets out. My minutes are for a pot on the stove: weigh it to know.',
  'ask.stopTonight': 'Yes, before the jars are filled. Cool it, then the fridge.',
  'ask.stopTonight.more':
    'Tomorrow bring it back to a full boil before you fill. Once jars are in the canner, the time must run through.',
  'ask.howDone': 'It mounds on the spoon. No water rims it on the plate.',
  'ask.howDone.more':
    'Hold a spoonful out of the steam for {minutes}: a butter stays heaped. For jam with no added pectin, use the cold plate, or count degrees above boiling water.',
  'ask.thermometer': 'For jam without added pectin, yes. For butter, use the plate.',
  'ask.thermometer.more':
    'So made, jam and jelly are done {riseF} degrees Fahrenheit above boiling water, where you are. With pectin, time {minutes} of hard boil; a butter hardly gets hotter at all.',
  'ask.notSet': 'Give it a day. Soft is still good to eat.',
  'ask.notSet.more':
    'You can cook it again: full boil, plate test, hot jars, new lids, the full time. A jar that was processed and sealed keeps, set or not.',
  'ask.tooStiff': 'It boiled too long. Good to eat: warm it to loosen.',
  'ask.tooStiff.more': 'Stop a little sooner next time. The plate shows it when it is cold, not in the pot.',
  'ask.grainy': 'Sugar that did not melt, or a boil too long.',
  'ask.grainy.more':
    'It is good to eat. Stir the sugar in until it is clear, before the boil, and wipe the pot sides.',
  'ask.blendHot': 'Heat off, half full, lid vented, towel on top.',
  'ask.blendHot.more':
    'Let it cool a little and start slow, for steam throws a closed lid off. A stick blender in the pot is safer: keep its head under.',

  // The jars.
  'ask.jarBroke': 'Out with that jar and all its fruit. Mind the glass.',
  'ask.jarBroke.more':
    'A splinter in fruit is not seen, so nothing of it is saved. Wipe the place, look into the other jars, and fill them hot.',
  'ask.whyBreak': 'Hot met cold. Hot fruit, hot jars, hot water.',
  'ask.whyBreak.more':
    'Glass also breaks on the bare floor of the canner, or where it has a nick. If it breaks, leave it till the end and mind the pieces.',
  'ask.dishwasher': 'To wash jars, yes. It does not process them.',
  'ask.dishwasher.more':
    'It is not hot enough to keep food safe. Full jars need the boiling canner for the full time.',
  'ask.oven': 'No. Not to process jars, and not to heat them.',
  'ask.oven.more': 'Dry air heats slowly and not evenly, and jars can burst. Only boiling water counts here.',
  'ask.microwave': 'No. It heats in spots, and has no tested time.',
  'ask.microwave.more': 'Warm empty jars in hot water. Process full ones in the boiling canner.',
  'ask.openKettle': 'For the shelf, yes, always. Else the fridge.',
  'ask.openKettle.more':
    'Hot fill alone may pull the lid down, and still leave mold or worse inside. The time in the canner is what makes it keep.',
  'ask.inversion': 'No. It does not process them, and seals fail.',
  'ask.inversion.more': 'Hot food under the lid can leak and spoil the seal. Stand them up and leave them.',
  'ask.paraffin': 'No. Wax shrinks and lets mold in. Use lids.',
  'ask.paraffin.more':
    'Old books show it, and guides gave it up. A two piece lid and the canner do it right.',
  'ask.steamCanner': 'Yes for sour food, up to {minutes}. I time only water.',
  'ask.steamCanner.more':
    'The times are the same as in water, with the minutes for height, and {minutes} is the most. Count from a full plume of steam, never open it, and keep to food at p H {shelfPh} or less.',
  'ask.pressureCanner': 'Not with these times. They are for boiling water.',
  'ask.pressureCanner.more':
    'No table here gives a time under pressure for a spread. With the lid loose and no weight it is just a big pot.',
  'ask.reuseLids': 'No. A new flat lid each time. Rings can be used again.',
  'ask.reuseLids.more': 'The soft ring inside the lid takes one print only. Keep old lids for the fridge.',
  'ask.oldJars': 'Only real canning jars. Others crack, or do not seal.',
  'ask.oldJars.more':
    'Look at each for a nick or a crack. A jar with no row in the tables gets no time, so use it for the fridge.',
  'ask.bigJars': 'Not for jam or jelly. Only apple butter has quarts.',
  'ask.bigJars.more': 'Heat takes longer to reach the middle of a big jar. No table, no time, no shelf.',
  'ask.smallJars': 'Yes. The small ones take the half pint time.',
  'ask.smallJars.more':
    '{quarterPintOz} and {halfPintOz} ounce jars share one row. You need more of them: change the jar in the plan.',
  'ask.chippedRim': 'Do not use it. A nick lets air in.',
  'ask.chippedRim.more': 'Run a finger round the rim with care. A chipped jar may also crack in the canner.',
  'ask.boilJarsFirst': 'Only if they process for less than {processMinutes}.',
  'ask.boilJarsFirst.more':
    'Then boil the empty jars {minutes}, and one more for each thousand feet. From {processMinutes} up, clean hot jars will do.',
  'ask.keepJarsHot': 'In hot water, just under a simmer, until you fill.',
  'ask.keepJarsHot.more': 'About {tempC} is enough. Lift one, drain it, fill it, then lift the next.',
  'ask.howFull': 'Leave {headspaceMm} empty, for jam, jelly and butter.',
  'ask.howFull.more':
    'Too full, and food boils out under the lid. Too low, and too much air stays in and the seal is weak.',
  'ask.howTight': 'Fingertip tight: stop where it first stops.',
  'ask.howTight.more': 'Air must get out in the canner. Forced tight, the lid bends and does not seal.',
  'ask.bubblesInJar': 'Run a thin spatula down inside. Then top it up.',
  'ask.bubblesInJar.more':
    'Trapped air lifts out later and eats the headspace. Use wood or plastic: metal scratches the glass.',
  'ask.shortJar': 'The short one goes in the fridge. Do not process it.',
  'ask.shortJar.more': 'Too much air is left in it to make a sure seal. Or pour it in a smaller jar, full.',
  'ask.wipeRim': 'Yes, every rim, with a clean damp cloth.',
  'ask.wipeRim.more': 'A seed or a drop under the lid breaks the seal. Wipe, look, then put the new lid on.',

  // The canner.
  'ask.altitude': 'Yes. Above {elevationM}, jars need more minutes.',
  'ask.altitude.more':
    'Water boils cooler up high, and cooler water kills less. Put your height in the plan: it picks the row.',
  'ask.whenTimeStarts': 'At a full rolling boil, with the jars in.',
  'ask.whenTimeStarts.more':
    'Not when the jars go in, and not at the first bubbles. Tell me: it is at a full rolling boil.',
  'ask.ifBoilStops': 'Back to a full boil. Then the whole time again.',
  'ask.ifBoilStops.more':
    'The minutes before it do not count. If you can not get it back, the jars go in the fridge.',
  'ask.howMuchWater': '{leastDepthM} to {mostDepthM} over the lids.',
  'ask.howMuchWater.more': 'Start half full, since the jars raise it. Add boiling water if it falls lower.',
  'ask.coldWater': 'No. Boiling water only, poured beside the jars.',
  'ask.coldWater.more': 'Cold water stops the boil and can crack a jar. Then the whole time starts again.',
  'ask.waitFive': 'Heat off, lid off, wait {minutes}. Then lift.',
  'ask.waitFive.more':
    'The jars calm down, so they do not spit or lose the seal. This wait is not part of the time.',
  'ask.touching': 'No. Upright on the rack, not touching.',
  'ask.touching.more':
    'Water must flow round each one. A jar on its side leaks, and jars that knock can crack.',
  'ask.noRack': 'Yes, you need one. Glass on the hot floor cracks.',
  'ask.noRack.more': 'Water must run under the jars too. Any rack that fits and lets water through will do.',
  'ask.whichCanner': 'Any deep pot with a lid and a rack.',
  'ask.whichCanner.more':
    'It must hold {leastDepthM} to {mostDepthM} of water over the jars, and room to boil. It must keep a hard boil on your stove.',
  'ask.longer': 'A few more minutes do no harm, but jam sets softer.',
  'ask.longer.more': 'The time in the plan is the tested least. Sooner is never right.',
  'ask.shorter': 'No. Never less than the plan says.',
  'ask.shorter.more':
    'The time is tested for this food, this jar and your height. Less is not safe: then use the fridge.',
  'ask.coolFaster': 'No. Still air, {restLowHours} hours at least.',
  'ask.coolFaster.more':
    'The jars go on heating inside while they cool, and that counts. Cold air or water cracks glass and pulls seals loose.',

  // The lids.
  'ask.buckled': 'The ring was too tight. That jar goes in the fridge.',
  'ask.buckled.more':
    'Air could not get out, so it pushed the lid up. Next time turn the ring with fingertips only.',
  'ask.leaked': 'Just out of the canner: check its seal. Later: throw it away.',
  'ask.leaked.more':
    'Some food may seep out as it cools; with a firm lid it is good. A jar that leaks on the shelf has lost its seal: do not taste it.',
  'ask.noPing': 'Some seal with no sound. Check them after the rest.',
  'ask.noPing.more': 'A ping is a good sign and no proof. Wait {restLowHours} hours, then press each lid.',
  'ask.checkSeal': 'Press the middle: it must not move at all.',
  'ask.checkSeal.more':
    'Look from the side: it dips. Tap it with a spoon: a clear ring is good, and a dull sound is not.',
  'ask.unsealedJar': 'In the fridge now, or process again within a day.',
  'ask.unsealedJar.more':
    'In the fridge eat it within {leastDays} to {mostDays} days. Or boil it again, hot jar, new lid, the full time.',
  'ask.again': 'Yes, within {withinHours} hours. New lid, full time.',
  'ask.again.more':
    'Empty it and bring the food back to a full boil. Then clean hot jars, new lids, and the whole time.',
  'ask.looseLater': 'Do not taste it. Throw it away.',
  'ask.looseLater.more': 'Nobody knows how long air was in it. No look or smell can show that it is safe.',
  'ask.tighten': 'No. It can break a seal that is still soft.',
  'ask.tighten.more': 'Leave them as they are till they are cold. Then take the rings off.',
  'ask.ringsOff': 'Yes. Rings off, wash the jars, then the shelf.',
  'ask.ringsOff.more': 'A ring rusts, and it can hide a bad seal. The lid holds by itself.',

  // Keeping it.
  'ask.howLongKeeps': 'Processed and sealed: a year, cool, dark and dry.',
  'ask.howLongKeeps.more':
    'That is {shelfMonths} months between {lowTempC} and {highTempC}. Then it darkens and loses taste, and with little sugar sooner.',
  'ask.opened': 'A full sugar jam: a month, in the fridge.',
  'ask.opened.more':
    'The fridge must be at {tempC} or colder. With less sugar it keeps less: eat it soon, and at any mold throw it out.',
  'ask.inFridge': 'Fresh cooked: {weeks} weeks, low acid one. Failed seal: a few days.',
  'ask.inFridge.more':
    'With little sugar take {leastWeeks} weeks; a jar that did not seal keeps {leastDays} to {mostDays} days, the shorter the surer. To keep it longer, freeze it.',
  'ask.freeze': 'Yes, for a year. Leave {headspaceMm} empty.',
  'ask.freeze.more': 'It swells as it freezes. Cool it first, and use a jar with straight sides or a box.',
  'ask.mold': 'Throw out the whole jar. Do not taste it.',
  'ask.mold.more': 'Its poison goes deeper than you can see. Do not scrape it off.',
  'ask.smellsOff': 'Do not taste it. Throw it away.',
  'ask.smellsOff.more':
    'Signs are gas, a lid that is up, mold, or a bad smell. But some bad food shows no sign.',
  'ask.bulging': 'Gas inside. Do not open or taste it. Throw it away.',
  'ask.bulging.more': 'Put it in a bag, out of reach. Wash your hands and all it touched.',
  'ask.botulism': 'Botulism: not in sour fruit that is processed by the tables.',
  'ask.botulism.more':
    'Its germ does not grow at p H {shelfPh} or lower, so other fruit gets tested acid or no shelf here. A loose lid, gas or mold: throw it away, and do not taste it.',
  'ask.whereKeep': 'Cool, dark and dry. Never near heat or sun.',
  'ask.whereKeep.more':
    'Between {lowTempC} and {highTempC} is best. Do not stack them high: it can lift a lid.',
  'ask.darkened': 'Light, heat or time. Check the seal first.',
  'ask.darkened.more':
    'Light fruit and low sugar turn dark sooner. In a processed jar with a firm lid only the looks suffer; at mold or a bad smell throw it out.',
  'ask.whiteFilm': 'Hard water. Wipe it off with a little vinegar.',
  'ask.whiteFilm.more': 'It is only on the glass. A spoon of vinegar in the canner stops it.',
  'ask.giveAway': 'Give it, with a label. To sell it, ask your state.',
  'ask.giveAway.more':
    'Write what it is and when you made it. Only processed jars with a firm seal should go for the shelf.',
  'ask.label': 'What it is, and the date.',
  'ask.label.more': 'Wash the jar first, with the ring off. Write the lot too if you made two in one day.',

  // What never goes on the shelf.
  'ask.pumpkin': 'Never on the shelf. Fridge or freezer only.',
  'ask.pumpkin.more':
    'It is not sour enough, and too thick for heat to get through. No canner at home makes it safe, not even with pressure.',
  'ask.whitePeach': 'Never on the shelf. Freeze it.',
  'ask.whitePeach.more':
    'White ones may not be sour enough, and no tested dose of acid is known. Yellow ones may go on it, as the plan says.',
  'ask.elderberry': 'Not on the shelf. Fridge or freezer.',
  'ask.elderberry.more':
    'They were found near p H {elderberryPh}, and the line is lower. Recipes for other berries do not cover them.',
  'ask.lowAcid': 'Pumpkin, white peach, elderberry. Others need tested acid.',
  'ask.lowAcid.more':
    'Fig, tomato and Asian pear need a tested amount, to be at p H {shelfPh} or lower. Banana, mango, papaya, melon, persimmon: a tested recipe only, or the fridge.',
};
