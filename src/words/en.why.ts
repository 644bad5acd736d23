// Why: of every step, every figure of a plan and every warning, in English; in one breath, and two sentences
// more. The source, where there is one, is the third sentence and comes from the tables.

import type { CannerState } from '../../machines/canner/choices.ts';
import type { FigureId } from '../core/guidance.ts';
import type { BatchFace } from '../kitchen/face.ts';

type Why<Name extends string> = `why.${Name}` | `why.${Name}.more`;
type Words<Name extends string> = Record<Why<Name>, string>;

const batchWhys: Words<`batch.${BatchFace}`> = {
  'why.batch.settingUp': 'Once the pot boils there is no time to look for things.',
  'why.batch.settingUp.more':
    'The plate must be freezing cold for the test, and the canner takes long to heat. A jar with a nick will not seal, so look at each rim.',
  'why.batch.mashing': 'Sugar burns in a dry pot. Crushed fruit gives juice.',
  'why.batch.mashing.more':
    'Juice carries the heat, so it warms evenly. Crush till no dry sugar is left on the floor of the pot.',
  'why.batch.softening': 'Sugar hardens peel that is not soft yet.',
  'why.batch.softening.more':
    'Boil the peel in its water, lid on, till a thumb crushes it. Then the sugar goes in.',
  'why.batch.melting': 'Dry sugar on the floor of the pot burns.',
  'why.batch.melting.more': 'Stir it before the heat, till no grain is left below. Then it boils evenly.',
  'why.batch.comingToBoil': 'Below a rolling boil, foam and fruit are not hot right through.',
  'why.batch.comingToBoil.more':
    'A rolling boil cannot be stirred down. From there on I can tell how fast the water leaves.',
  'why.batch.simmering': 'Water leaves, and the sugar on the floor does not burn.',
  'why.batch.simmering.more':
    'Solids stay in the pot while water leaves, so its weight tells how thick it is. The thicker it gets, the sooner it catches.',
  'why.batch.boilingHard': 'A fast boil sets it before colour and taste are cooked away.',
  'why.batch.boilingHard.more':
    'Slow cooking breaks the pectin that makes it set. Stir to the bottom: the thicker it gets, the sooner it burns.',
  'why.batch.skimming': 'Foam carries air into the jar, and it looks cloudy.',
  'why.batch.skimming.more': 'Skim once, at the end: less fruit is lost. What you lift off is good to eat.',
  'why.batch.straining': 'Skins, seeds and stones come out, so that it is smooth.',
  'why.batch.straining.more':
    'They give pectin while they cook, so they stay in till now. Work in small lots, and mind the splashes.',
  'why.batch.blending': 'Steam in a closed blender throws hot fruit at you.',
  'why.batch.blending.more':
    'So half full at most, the lid vented, a towel over it. A stick blender in the pot is safer.',
  'why.batch.spooning': 'Hot fruit is always runny. The cold plate shows how it sets.',
  'why.batch.spooning.more':
    'The heat goes off while you test, or it cooks on past the mark. A small spoonful cools fastest.',
  'why.batch.cooling': 'Warm, it still runs. Cold, it shows the truth.',
  'why.batch.cooling.more':
    'A few minutes in the cold show how it will be in the jar. Then push it with a finger.',
  'why.batch.judging': 'If the line stays open and no juice runs, it holds.',
  'why.batch.judging.more':
    'Runny means that too much water is left: back to the simmer for a few minutes. You can test as often as you like.',
  'why.batch.loosening': 'Too thick, it traps air and heats badly in the jar.',
  'why.batch.loosening.more':
    'Add boiling water by the spoon and stir it in. Cold water would cool the pot before the jars.',
  'why.batch.held': 'Off the heat nothing burns while you are away.',
  'why.batch.held.more':
    'It comes back to a boil before it goes on. A pot that cooled must not go in the jars.',
  'why.batch.caught': 'The burn stays on the floor if you leave it there.',
  'why.batch.caught.more': 'Scraped loose, it flavors the whole pot. If it tastes burnt, stop this batch.',
  'why.batch.readyingJars': 'Hot fruit cracks a cold jar.',
  'why.batch.readyingJars.more':
    'Jars that are processed for less than ten minutes must be boiled first. The canner does it for the rest.',
  'why.batch.filling': 'The gap draws the lid down. Food on the rim breaks the seal.',
  'why.batch.filling.more':
    'Too full, and food boils out under the lid. Forced tight, the ring keeps the air in and the lid bends.',
  'why.batch.waitingForCanner': 'The tested time holds for hot jars only.',
  'why.batch.waitingForCanner.more':
    'A jar that cooled would need longer than any table says. And a cold jar cracks in hot water.',
  'why.batch.processing': 'The full time at a full boil is what makes it keep.',
  'why.batch.processing.more':
    'The time is the published one for this food, this jar and your height. If the boil drops, it starts again.',
  'why.batch.unprocessed': 'The time was not served, so nobody knows that it is safe.',
  'why.batch.unprocessed.more':
    'In the fridge it is good for three weeks at most. Or boil it again within a day: clean hot jars, new lids, the full time.',
  'why.batch.reheating': 'To process again is a whole new start.',
  'why.batch.reheating.more':
    'Hot fruit, hot jars, new lids, the full time. Nothing of the first time counts.',
  'why.batch.resting': 'The seal forms as the jar cools.',
  'why.batch.resting.more':
    'Leave it twelve to twenty-four hours, out of the draft. Moved, tipped or tightened, the soft seal can break.',
  'why.batch.checkingSeals': 'Only a firm lid keeps the air out.',
  'why.batch.checkingSeals.more':
    'Press the middle: a sealed one does not move. Look from the side: it dips; and tap it: it rings.',
  'why.batch.puttingAway': 'A label tells you what and when. A ring hides a bad seal.',
  'why.batch.puttingAway.more':
    'Sealed jars keep a year, cool and dark. One that did not seal is for the fridge, or for the canner again within a day.',
  'why.batch.putAway': 'A lid that comes up later has let air in.',
  'why.batch.putAway.more': 'Then do not taste it: throw it away. No look or smell shows that it is safe.',
  'why.batch.stopped': 'What was not processed is not for the shelf.',
  'why.batch.stopped.more': 'Cool it, and into the fridge within two hours. Warm food grows germs fast.',
};

const cannerWhys: Words<`canner.${CannerState}`> = {
  'why.canner.empty': 'It takes long to heat, and must be hot for the jars.',
  'why.canner.empty.more':
    'Half full is enough, for the jars raise the water. The rack keeps glass off the hot floor.',
  'why.canner.filled': 'It must be hot when the jars are full.',
  'why.canner.filled.more': 'Hot jars crack in cold water. And jars that wait for the canner grow cold.',
  'why.canner.heating': 'Hot jars go in hot water, or the glass cracks.',
  'why.canner.heating.more': 'Just under a simmer is right. A hard boil would splash you as you load.',
  'why.canner.probablyHot': 'By the clock it is hot, but only you can see it.',
  'why.canner.probablyHot.more': 'Steam and small bubbles on the wall show it. Hot jars crack in cold water.',
  'why.canner.hot': 'Hot jars, hot water: so the glass does not crack.',
  'why.canner.hot.more': 'Hold it near 180 degrees Fahrenheit. Keep the lid on, and little water is lost.',
  'why.canner.comingToFullBoil': 'The time counts only from a full rolling boil.',
  'why.canner.comingToFullBoil.more':
    'Before that, the middle of a jar is not hot enough. The cold of the jars themselves slows the boil.',
  'why.canner.fullBoil': 'Unbroken, at a full boil: only so does the time count.',
  'why.canner.fullBoil.more':
    'The time is the published one for this food, this jar and your height. I ask because only you can see the boil.',
  'why.canner.boilLost': 'Below a boil the middle of the jar may not get hot enough.',
  'why.canner.boilLost.more':
    'So the whole time starts again at the next full boil. The minutes before do not count.',
  'why.canner.unsureOfTheBoil': 'Nobody saw whether it boiled the whole time.',
  'why.canner.unsureOfTheBoil.more':
    'If it did, the time is served. If you are not sure, it was not: full boil, and the full time again.',
  'why.canner.standing': 'The jars calm down, so that they do not spit.',
  'why.canner.standing.more':
    'Lifted at once, they can lose food and the seal. This wait is not part of the time.',
  'why.canner.ready': 'A tilt or a twist can break a seal still soft.',
  'why.canner.ready.more':
    'Lift straight up, and leave the water on the lids: it dries. An inch apart, on a towel, out of the draft.',
};

const saidWhys: Words<`said.${SaidKey}`> = {
  'why.said.canner.addWater': 'Lids must stay under water, or the tops do not get hot.',
  'why.said.canner.addWater.more':
    'Cold water would stop the boil and crack a jar. If the boil drops, the time starts again.',
  'why.said.canner.jarBroke': 'Its fruit is lost, but the others can go on.',
  'why.said.canner.jarBroke.more':
    'Hands near the glass get cut. Lift the rest at the end, and pick the glass out when the water is cold.',
  'why.said.canner.askPlainly': 'Time alone proves nothing: it must have boiled all along.',
  'why.said.canner.askPlainly.more':
    'Say no if you are not sure. A second time costs minutes; a bad jar costs more.',
  'why.said.canner.whileAway': 'I could not see it, and the time counts only unbroken.',
  'why.said.canner.whileAway.more':
    'If you were there and it boiled hard, say yes. If not, say no, and the time starts again.',
  'why.said.batch.simmeredUnwatched': 'A pot boils on while I am away, and the end comes fast.',
  'why.said.batch.simmeredUnwatched.more':
    'Stir to the floor first: if it is rough, it has caught. Then look how thick it is.',
  'why.said.batch.wentCold': 'The tested time holds for hot jars only.',
  'why.said.batch.wentCold.more':
    'Within a day you can boil it again: clean hot jars, new lids, the full time. Or eat it from the fridge within three weeks.',
  'why.said.batch.notServed': 'The time was broken, so nobody knows that it is safe.',
  'why.said.batch.notServed.more':
    'Boil it again within a day, with clean hot jars and new lids, for the full time. Or keep it in the fridge.',
  'why.said.batch.discard': 'It let air in, and nobody knows for how long.',
  'why.said.batch.discard.more':
    'No look, smell or taste can show that it is safe. A taste is enough to harm you.',
  'why.said.kitchen.clockVoid': 'A boil that was lost does not count, whenever it was told.',
  'why.said.kitchen.clockVoid.more':
    'Below a boil the middle of the jar cools. So the whole time starts again.',
  'why.said.kitchen.notServed': 'By what you told me now, the time was broken.',
  'why.said.kitchen.notServed.more':
    'So these jars are not safe for the shelf. Fridge now, or the full time again within a day.',
  'why.said.kitchen.clockReopened': 'By what you told me now, the time was not full.',
  'why.said.kitchen.clockReopened.more':
    'The jars are still in the canner, so it can be done again. Full boil, then the full time.',
  'why.said.kitchen.didItSleep': 'While I slept, nobody watched the clock or the boil.',
  'why.said.kitchen.didItSleep.more':
    'If I slept, I ask what went on. If only the clock was set, all stays as it was.',
};

/** What is said that has a reason of its own, apart from the step it is said in. */
type SaidKey =
  | 'canner.addWater'
  | 'canner.jarBroke'
  | 'canner.askPlainly'
  | 'canner.whileAway'
  | 'batch.simmeredUnwatched'
  | 'batch.wentCold'
  | 'batch.notServed'
  | 'batch.discard'
  | 'kitchen.clockVoid'
  | 'kitchen.notServed'
  | 'kitchen.clockReopened'
  | 'kitchen.didItSleep';

const figureWhys: Words<`figure.${FigureId}`> = {
  'why.figure.sugar': 'So much for this fruit: it sweetens, thickens and helps it keep.',
  'why.figure.sugar.more':
    'In jam, sugar is what sets it. In a butter you may choose less, and it ends looser.',
  'why.figure.acid': 'Acid makes it safe for the shelf, or helps it set.',
  'why.figure.acid.more':
    'The line is p H 4.6, and some fruits may lie above it. Use bottled juice: its strength is known.',
  'why.figure.pectin': 'The usual dose. Where the packet says otherwise, do as it says.',
  'why.figure.pectin.more':
    'Powder goes in before the heat, and the sugar at the boil. Liquid goes in last, at the boil.',
  'why.figure.liquid': 'Peel and dried fruit are boiled soft in water first.',
  'why.figure.liquid.more': 'Then the sugar goes in. Sugar hardens peel that is not soft yet.',
  'why.figure.targetMass': 'Only water leaves. So the weight tells when it is thick.',
  'why.figure.targetMass.more':
    'All the sugar and solids stay in the pot. Weigh it with the pot, and take the empty pot off.',
  'why.figure.solubleSolids': 'All that is not water, mostly sugar: more means thicker.',
  'why.figure.solubleSolids.more':
    'A butter ends between a third and a half. Jam goes on to about two thirds.',
  'why.figure.targetDepth': 'The depth on the spoon handle, when it is thick enough.',
  'why.figure.targetDepth.more':
    'It comes from the weight and the width of your pot. Stir the foam down, and read it near the end: there it tells most.',
  'why.figure.finishTemp': 'Sugar makes it boil hotter, so heat tells how thick it is.',
  'why.figure.finishTemp.more':
    'That serves for jam and jelly with no added pectin. A butter hardly gets hotter: trust the scale and the plate.',
  'why.figure.heatMinutes': 'From cold to a rolling boil, by your burner and the weight.',
  'why.figure.heatMinutes.more':
    'It is a range, for no two stoves are the same. After a few batches here I know yours better.',
  'why.figure.simmerMinutes': 'So much water must leave, and your burner drives it off.',
  'why.figure.simmerMinutes.more':
    'It is a range, not a promise: four batches in five end in it. Each weighing makes it narrower.',
  'why.figure.stirInterval': 'The thicker it gets, the sooner it catches.',
  'why.figure.stirInterval.more': 'So the times between draw closer. Near the end stay by the pot.',
  'why.figure.yield': 'What is left in the pot, less what sticks to it.',
  'why.figure.yield.more':
    'It is the weight at the end over how dense it is. A little stays on pot, spoon and plate.',
  'why.figure.jars': 'The yield, by what one jar holds under the gap.',
  'why.figure.jars.more':
    'Make ready more than you think: a cold jar can not be used. The short one goes in the fridge.',
  'why.figure.canner': 'Water over the lids heats the whole jar evenly.',
  'why.figure.canner.more':
    'It must be hot when the jars are full, so it goes on early. It takes only so many jars at once.',
  'why.figure.shelf': 'A published table must cover food, jar and height.',
  'why.figure.shelf.more':
    'It also must be sour enough and thick enough. Where no table does, it is for the fridge or freezer.',
  'why.figure.process': 'The published minutes for this food, this jar, your height.',
  'why.figure.process.more':
    'Water boils cooler up high, so the minutes grow in steps. They count only at an unbroken full boil.',
  'why.figure.strain': 'Skins, seeds and stones stay behind in the mill.',
  'why.figure.strain.more': 'A butter must be smooth. What stays behind is taken off the yield.',
  'why.figure.standard': 'What it may be called goes by its fruit and its solids.',
  'why.figure.standard.more': 'That is a rule for shops. At home it tells you how others make it.',
  'why.figure.pots': 'Too deep, it boils too long and loses color and taste.',
  'why.figure.pots.more': 'It also needs room to foam. Two wide pots beat one deep one.',
  'why.figure.startMass': 'All that goes in: fruit, sugar, acid and any water.',
  'why.figure.startMass.more':
    'It is a sum, after stones and peel are gone. Weigh it in the pot to check me.',
  'why.figure.startDepth': 'How deep it stands before anything boils away.',
  'why.figure.startDepth.more': 'Mark it on the handle of your spoon. The second mark is where to stop.',
  'why.figure.waterBoils': 'Up high the air presses less, so water boils cooler.',
  'why.figure.waterBoils.more':
    'I work it out from your height. To be surer, boil water and read your own thermometer.',
  'why.figure.headspace': 'The gap lets air out and draws the lid down.',
  'why.figure.headspace.more': 'Too little, and it boils out under the lid. Too much, and the seal is weak.',
  'why.figure.sterilise': 'The process is too short to make the jars sterile.',
  'why.figure.sterilise.more':
    'So boil them empty first: ten minutes, and one more for each thousand feet. Keep them hot till you fill.',
  'why.figure.clean': 'The process is long enough to make the jars sterile.',
  'why.figure.clean.more':
    'Wash them, and keep them hot. Only a process under ten minutes needs boiled jars.',
  'why.figure.sugarPer100g': 'Nearly all that dissolves is sugar, the fruit’s own too.',
  'why.figure.sugarPer100g.more': 'It is worked out from the solids. It is good to know, not a tested label.',
  'why.figure.fruitPer100g': 'The fruit that went in, for each part that comes out.',
  'why.figure.fruitPer100g.more':
    'Water boiled away, so it can be more than the weight of the jar. It tells you how much is fruit and how much sugar.',
  'why.figure.pH': 'How sour it ends: 4.6 is the line for the shelf.',
  'why.figure.pH.more':
    'It is a guess from the fruit and the acid you add. No strip at home is sure enough to go by: follow the tested amount.',
  'why.figure.waterActivity': 'How much water is free for germs to live on.',
  'why.figure.waterActivity.more':
    'Sugar binds water, so a sweet spread keeps better once open. It does not make a jar safe by itself.',
  'why.figure.bestBy': 'Past this it is not at its best.',
  'why.figure.bestBy.more': 'It darkens and loses taste. A jar whose lid is up is bad at any age.',
  'why.figure.cost': 'Fruit, sugar, lids and heat, at your own prices.',
  'why.figure.cost.more':
    'Divided by the jars, it is what one costs you. The burner is counted for the whole time.',
};

export const whyWords = { ...batchWhys, ...cannerWhys, ...saidWhys, ...figureWhys };
