// What each drawing shows, in English: its name, what is said of it in one breath, and the words in place of
// the picture, from which a person who sees nothing learns the same.

import type { SightId } from '../kitchen/sights.ts';

type Key = `see.${SightId}` | `see.${SightId}.said` | `see.${SightId}.alt`;

export const sightWords: Record<Key, string> = {
  'see.simmer': 'A simmer',
  'see.simmer.said': 'Small bubbles at the edge, one at a time. The top hardly moves.',
  'see.simmer.alt':
    'A pot cut open, on a low flame. A few small bubbles rise along the wall and the top only trembles. You hear a soft plop now and then.',
  'see.boil': 'A boil that stirs down',
  'see.boil.said': 'Bubbles all over, but a spoon stops them. Not yet a rolling boil.',
  'see.boil.alt':
    'A pot on a high flame with bubbles breaking in many places. Where a spoon goes through, the top falls flat behind it. If stirring stops it, it is not a rolling boil.',
  'see.rollingBoil': 'A full rolling boil',
  'see.rollingBoil.said': 'The whole top heaves, and stirring can not stop it.',
  'see.rollingBoil.alt':
    'A pot on a high flame. Big bubbles break all over and the whole top heaves and tumbles. A spoon stirs through it, and it boils on behind the spoon. It sounds like steady rain.',
  'see.cannerBoil': 'A full rolling boil in the canner',
  'see.cannerBoil.said': 'Big bubbles all over the water, and they do not stop.',
  'see.cannerBoil.alt':
    'The canner on a high flame, jars on the rack deep under the water. Big bubbles break all over, and the whole top heaves and tumbles. It boils on and on, and the lid rattles. Only now does the time begin.',
  'see.boilLost': 'The boil is lost',
  'see.boilLost.said': 'The top has gone flat over the jars. The time starts again.',
  'see.boilLost.alt':
    'The canner with jars on the rack. The water over the lids lies flat, with one or two small bubbles. That is no boil: the time so far does not count. Bring back the full boil, then the full time.',
  'see.foam': 'Skim the foam',
  'see.foam.said': 'Push the pale foam to one side and lift it off.',
  'see.foam.alt':
    'A pot with pale foam gathered at one side of the top. A flat spoon slides under the foam and lifts it off, and leaves the clear fruit. Do it once, at the end.',
  'see.spoonCoats': 'It coats the spoon',
  'see.spoonCoats.said': 'Lift a spoon out of the steam. Thick fruit coats it and hangs.',
  'see.spoonCoats.alt':
    'Two spoons held sideways. From the first, thin drops run off one by one: not done. The second wears a thick coat and one broad sheet hangs from its edge: done. Hold it out of the steam to see.',
  'see.plateHeld': 'The plate test: it holds',
  'see.plateHeld.said': 'A line drawn through it stays open. No juice runs out.',
  'see.plateHeld.alt':
    'A cold plate with a round heap of fruit. A finger has drawn a line through the middle, and the line stays open. The edge is clean, with no wet rim round it. It holds: fill the jars.',
  'see.plateWrinkled': 'The plate test: it wrinkles',
  'see.plateWrinkled.said': 'Push it: the skin wrinkles up before your finger. That is set.',
  'see.plateWrinkled.alt':
    'A cold plate with a spoonful of jam. A finger pushes from one side, and the skin in front of it folds in small wrinkles. Wrinkles mean that it has set.',
  'see.plateRunny': 'The plate test: runny',
  'see.plateRunny.said': 'The line closes, and juice runs from the edge. Boil on.',
  'see.plateRunny.alt':
    'A cold plate with a flat, wide puddle. The line that was drawn has run together, and a ring of thin juice creeps out from the edge. It is runny: back to the simmer.',
  'see.headspace': 'Headspace',
  'see.headspace.said': 'Leave the top of the jar empty, down to the mark.',
  'see.headspace.alt':
    'The top of a jar, close up. The fruit ends below the rim, and a bracket marks the empty space: a quarter inch, about as thick as a pencil. Air must get out there, and the lid draws down.',
  'see.wipeRim': 'Wipe the rim',
  'see.wipeRim.said': 'Wipe all round the rim with a clean damp cloth.',
  'see.wipeRim.alt':
    'A filled jar without its lid. A folded damp cloth goes once round the rim and takes off a drop of fruit. A drop left under the lid breaks the seal.',
  'see.fingertipTight': 'Fingertip tight',
  'see.fingertipTight.said': 'Turn the ring with fingertips. Stop where it first stops.',
  'see.fingertipTight.alt':
    'A jar seen from above. Only fingertips hold the ring and turn it to the right, and stop at the first stop. Do not force it with the fist: air must get out.',
  'see.waterOverJars': 'Water over the jars',
  'see.waterOverJars.said': 'Jars on the rack, water an inch or two over the lids.',
  'see.waterOverJars.alt':
    'The canner cut open. Three jars stand upright on a rack, not touching. A bracket shows the water above the lids: one to two inches, about two fingers. Above it there is room to boil.',
  'see.lidUp': 'Not sealed: lid up',
  'see.lidUp.said': 'The middle springs when pressed. Not sealed: fridge. Later: throw it away.',
  'see.lidUp.alt':
    'A jar from the side, its lid bulging up in the middle. A finger presses and the lid springs back with a click. It did not seal: put it in the fridge now. If it came up later, on the shelf, throw it away.',
  'see.lidDown': 'Sealed: lid down',
  'see.lidDown.said': 'The middle dips and does not move. That is sealed.',
  'see.lidDown.alt':
    'A jar from the side, the ring off, its lid drawn down in the middle like a shallow dish. A finger presses and nothing moves, with no click. It is sealed.',
  'see.scorch': 'Scorching',
  'see.scorch.said': 'Dark crust on the floor, a burnt smell, a rough spoon. Heat off.',
  'see.scorch.alt':
    'A pot cut open with a dark crust on its floor and a thread of smoke. It smells like burnt sugar, the spoon feels rough below, and it hisses where it was quiet. Heat off, do not scrape, pour it into a clean pot.',
  'see.steamBurns': 'Where steam burns',
  'see.steamBurns.said': 'Steam bursts out at the rim. Keep hands and face to the side.',
  'see.steamBurns.alt':
    'A pot with its lid lifted a crack. Steam shoots out at the open side and straight up over the pot: that is where it burns. The hand holds the lid from the far side, out of the steam.',
  'see.mash': 'Mash till it swims',
  'see.mash.said': 'Crush it until the fruit swims in its own juice.',
  'see.mash.alt':
    'A pot cut open, no flame. A masher presses the fruit down. Juice stands above the floor and between the pieces, and no dry sugar is left below. Now heat will not burn it.',
  'see.stirIn': 'Stir till none is left',
  'see.stirIn.said': 'Stir with no flame until the spoon feels no grain or lump.',
  'see.stirIn.alt':
    'A pot of juice cut open, no flame. Grains fall in while a spoon stirs round. The deeper they sink, the smaller they are, and none lies on the floor. When the spoon scrapes no grain and no lump is left, heat will not burn it.',
  'see.coldPlate': 'The cold plate',
  'see.coldPlate.said': 'A plate in the freezer, a quarter of an hour before the test.',
  'see.coldPlate.alt':
    'A small plate lies in the freezer, with frost stars round it. It needs a quarter of an hour to get cold. Hot fruit is always runny, and only a cold plate shows how it will set.',
  'see.hotJars': 'Hot jar, hot fruit',
  'see.hotJars.said': 'Hot fruit in a hot jar. A cold jar cracks.',
  'see.hotJars.alt':
    'Two jars. On the left, a hot jar with steam takes hot fruit and stays whole. On the right, a cold jar takes hot fruit, and a crack runs up the glass. Keep jars in hot water till you fill them.',
  'see.ventedBlender': 'Blend with a vent',
  'see.ventedBlender.said': 'Heat off, half full, the lid open a crack, a towel over it.',
  'see.ventedBlender.alt':
    'A blender filled to the half. The cap in its lid is out, and a folded towel lies over the hole, so steam can get out. A closed lid would burst and throw hot fruit.',
  'see.funnel': 'Fill through a funnel',
  'see.funnel.said': 'A wide funnel in a hot jar keeps the rim clean.',
  'see.funnel.alt':
    'A wide funnel sits in the mouth of a hot jar. A ladle pours the fruit through it, and no drop falls on the rim. Stop at the headspace.',
  'see.bubblesOut': 'Bubbles out',
  'see.bubblesOut.said': 'Slide a thin spatula down inside, all round, then top up.',
  'see.bubblesOut.alt':
    'A filled jar cut open, with air bubbles caught in the fruit. A thin flat tool slides down between the fruit and the glass, and the bubbles rise out. Then fill up to the headspace again.',
  'see.liftUpright': 'Lift it upright',
  'see.liftUpright.said': 'Grip under the ring. Straight up, never tilted.',
  'see.liftUpright.alt':
    'A jar lifter grips a jar by its neck, under the ring, and lifts it straight up out of the water. The jar stays upright. Do not tip it to pour off the water on its lid: that breaks the seal.',
  'see.restStill': 'Let them rest',
  'see.restStill.said': 'On a towel, an inch apart, out of the draft. Hands off.',
  'see.restStill.alt':
    'Three jars stand upright on a towel, an inch apart, under a moon: they stay there the night. Nobody touches, tilts or tightens them for twelve to twenty-four hours.',
  'see.label': 'The label',
  'see.label.said': 'Ring off, jar washed, then what it is and the date.',
  'see.label.alt':
    'A sealed jar without its ring, with a label. One line says what is in it, the next says the date. Without a ring you would see at once if the lid came up.',
  'see.potDepth': 'Depth on the spoon',
  'see.potDepth.said': 'Stand the spoon on the floor. Read the wet mark on its handle.',
  'see.potDepth.alt':
    'A wooden spoon stands upright on the floor of the pot. The fruit comes up to the lower of two marks on its handle. The upper mark was the start, and the lower one is where to stop.',
  'see.stirBottom': 'Stir to the bottom',
  'see.stirBottom.said': 'Drag the spoon over the whole floor, corners too.',
  'see.stirBottom.alt':
    'A pot cut open. A flat spoon drags along the floor from wall to wall and lifts the fruit that lies there. What lies still on the bottom burns.',
  'see.strain': 'Through the mill',
  'see.strain.said': 'Turn the crank. Skins and seeds stay, smooth fruit falls.',
  'see.strain.alt':
    'A food mill over a bowl. Its crank turns a blade on a sieve, and skins and seeds stay above. Smooth fruit falls into the bowl below.',
  'see.nickedRim': 'Look at the rim',
  'see.nickedRim.said': 'A whole rim seals. One nick, and the jar is out.',
  'see.nickedRim.alt':
    'Two jar rims. The left one is round and whole: use it. The right one has a chip and a crack: it can not seal and may break, so put it aside.',
  'see.lidAway': 'Lid away from you',
  'see.lidAway.said': 'Lift the far side first, so steam goes away from you.',
  'see.lidAway.alt':
    'The canner from the side. The lid tips so that its far edge opens first, like a shield. Steam pours out away from the cook. Lift it toward you last.',
  'see.coolStand': 'Five minutes to stand',
  'see.coolStand.said': 'Heat off, lid off. Five minutes in the still water.',
  'see.coolStand.alt':
    'The canner with no flame under it and no lid on it. The jars stand in still water while a small clock shows five minutes. They calm down, so they do not spit when you lift them.',
};
