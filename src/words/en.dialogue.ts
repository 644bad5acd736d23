// What the dialogue itself says, in English: asking back, offering, answering.

export const dialogueWords = {
  'dialogue.wasThat': 'Was that: {words}?',
  'dialogue.which':
    'Which one: {count, plural, =2 {the {first} or the {second}} =3 {the {first}, the {second} or the {third}} other {the {first}, the {second}, the {third} or the {fourth}}}?',
  'dialogue.clearAnswer': 'Say: yes, that is right. Or: no, that is wrong.',
  'dialogue.haveThat': 'I have that. Ask me: what is next.',
  'dialogue.notNow': 'Not now. Ask me: what is next.',
  'dialogue.takenBack': 'Taken back.',
  'dialogue.noted': 'Noted.',
  'dialogue.pardon': 'Say that again, please.',
  'dialogue.offer':
    'You can say: {count, plural, =0 {status, or help} =1 {{first}} =2 {{first}; or {second}} other {{first}; {second}; or {third}}}.',
  'dialogue.touch': 'I do not hear you well. Use the screen.',
  'dialogue.noSuchWord': 'I do not know that word.',

  // Asked before something weighty is believed.
  'dialogue.plain.canner.fullBoil':
    'Is the {name, select, none {canner} other {{name}}} at a full rolling boil?',
  'dialogue.plain.canner.boilHolds':
    'Did the {name, select, none {boil hold} other {{name} boil}} all along?',
  'dialogue.plain.canner.boilDropped':
    'Did the {name, select, none {boil drop} other {{name} stop boiling}}?',
  'dialogue.plain.canner.waterAdded': 'Did it keep boiling hard all the while?',
  'dialogue.plain.plate.held':
    'Does the {name, select, none {spoonful} other {{name}}} hold on the cold plate?',
  'dialogue.plain.jars.ready': 'Are the {name, select, none {} other {{name}}} jars hot and ready to fill?',
  'dialogue.plain.jars.out': 'Are the jars out of the {name, select, none {canner} other {{name}}}?',
  'dialogue.plain.seals.allHeld': 'Is every {name, select, none {} other {{name}}} lid down and firm?',
  'dialogue.plain.boil.droppedEarlier':
    'Did the {name, select, none {boil drop} other {{name} stop boiling}} before now?',
  'dialogue.plain.boil.saidTooEarly':
    'Was {name, select, none {it} other {the {name}}} not yet at a full boil?',
  'dialogue.plain.last.when': 'Was that at another time?',
  'dialogue.plain.told.when': 'Did that happen at another time?',
  'dialogue.plain.batch.mixedUp': 'Was that the {name, select, none {other batch} other {{name}}}?',
  'dialogue.plain.batch.stopped': 'Give up the {name, select, none {} other {{name}}} batch for good?',
  'dialogue.plain.takeBack.canner.boilDropped': 'Take that back: did the boil hold all along?',

  // Read back, so that a wrong one can be refused.
  'dialogue.readBack.plate.held': '{name, select, none {} other {{name}: }}plate test passed.',
  'dialogue.readBack.jars.out': '{name, select, none {} other {{name}: }}jars out.',
  'dialogue.readBack.seals.allHeld': '{name, select, none {} other {{name}: }}all jars sealed.',
  'dialogue.readBack.batch.stopped': '{name, select, none {} other {{name}: }}batch given up.',

  // A number is missing.
  'dialogue.count.jars.filled': 'How many jars? Say it like: nine jars filled.',
  'dialogue.count.seals.failed': 'How many did not seal? Say it like: one did not seal.',
  'dialogue.count.minutes.added': 'How many minutes? Say it like: add five minutes.',
  'dialogue.count.boil.droppedEarlier': 'How long ago? Say it like: it dropped two minutes ago.',
  'dialogue.count.reading.taken': 'How much? Say: it weighs four pounds. Or: it is at half.',

  // Answers to what the cook asks, for the kitchen to fill.
  'dialogue.left': '{name, select, none {} other {{name}: }}{minutes} left.',
  'dialogue.leftAbout': '{name, select, none {} other {{name}: }}{aboutMinutes} more.',
  'dialogue.overdue': '{name, select, none {} other {{name}: }}{minutes} over time.',
  'dialogue.noClock': '{name, select, none {} other {{name}: }}no clock is running.',
  'dialogue.nothingSaid': 'I have said nothing yet.',
  'dialogue.nothingToTakeBack': 'There is nothing to take back.',
  'dialogue.noWhy': 'I have no more to say on that.',
  'dialogue.lookingAt': 'Now the {name}.',
  'dialogue.quiet': 'Quiet.',
  'dialogue.nothingCooking': 'Nothing is cooking.',
} as const satisfies Record<string, string>;
