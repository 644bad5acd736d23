// What the dialogue itself says, in Spanish: asking back, offering, answering.

import type { dialogueWords as english } from './en.dialogue.ts';

export const dialogueWords = {
  'dialogue.wasThat': '¿Dijo: {words}?',
  'dialogue.which':
    '¿Cuál: {count, plural, =2 {{first} o {second}} =3 {{first}, {second} o {third}} other {{first}, {second}, {third} o {fourth}}}?',
  'dialogue.clearAnswer': 'Diga: sí, así es. O: no, está mal.',
  'dialogue.haveThat': 'Ya lo tengo. Pregunte: qué sigue.',
  'dialogue.notNow': 'Ahora no. Pregunte: qué sigue.',
  'dialogue.takenBack': 'Deshecho.',
  'dialogue.noted': 'Anotado.',
  'dialogue.pardon': 'Repítalo, por favor.',
  'dialogue.offer':
    'Puede decir: {count, plural, =0 {estado, o ayuda} =1 {{first}} =2 {{first}; o {second}} other {{first}; {second}; o {third}}}.',
  'dialogue.touch': 'No le oigo bien. Use la pantalla.',
  'dialogue.noSuchWord': 'No conozco esa palabra.',

  // Asked before something weighty is believed.
  'dialogue.plain.canner.fullBoil':
    '¿Está en pleno hervor a borbotones {name, select, none {la olla de conservas} other {la olla de {name}}}?',
  // Only English is heard, so that in Spanish nobody is asked of which canner: a name would stand here in English.
  'dialogue.plain.canner.boilHolds':
    '¿Se mantuvo el hervor {name, select, none {} other {en esa olla}} todo el rato?',
  'dialogue.plain.canner.boilDropped': '¿Bajó el hervor{name, select, none {} other { en esa olla}}?',
  'dialogue.plain.canner.waterAdded': '¿Siguió hirviendo fuerte todo el tiempo?',
  'dialogue.plain.plate.held':
    '¿Se sostiene en el plato frío {name, select, none {la cucharada} other {la cucharada de {name}}}?',
  'dialogue.plain.jars.ready':
    '¿Están los tarros{name, select, none {} other { de {name}}} calientes y listos para llenar?',
  'dialogue.plain.jars.out':
    '¿Están los tarros fuera de {name, select, none {la} other {esa}} olla de conservas?',
  'dialogue.plain.seals.allHeld':
    '¿Está hundida y firme cada tapa{name, select, none {} other { de {name}}}?',
  'dialogue.plain.boil.droppedEarlier':
    '¿Bajó el hervor {name, select, none {} other {en esa olla}} antes de ahora?',
  'dialogue.plain.boil.saidTooEarly':
    '¿No estaba {name, select, none {} other {esa olla}} aún en pleno hervor?',
  'dialogue.plain.last.when': '¿Fue en otro momento?',
  'dialogue.plain.told.when': '¿Ocurrió eso en otro momento?',
  'dialogue.plain.batch.mixedUp': '¿Era {name, select, none {la otra tanda} other {la tanda de {name}}}?',
  'dialogue.plain.batch.stopped':
    '¿Abandonar la tanda{name, select, none {} other { de {name}}} para siempre?',
  'dialogue.plain.takeBack.canner.boilDropped': 'Deshacer: ¿se mantuvo el hervor todo el rato?',

  // Read back, so that a wrong one can be refused.
  'dialogue.readBack.plate.held': '{name, select, none {} other {{name}: }}prueba del plato superada.',
  'dialogue.readBack.jars.out': 'Tarros fuera{name, select, none {} other { de esa olla}}.',
  'dialogue.readBack.seals.allHeld': '{name, select, none {} other {{name}: }}todos los tarros sellados.',
  'dialogue.readBack.batch.stopped': '{name, select, none {} other {{name}: }}tanda abandonada.',

  // A number is missing.
  'dialogue.count.jars.filled': '¿Cuántos tarros? Diga, por ejemplo: nueve tarros llenos.',
  'dialogue.count.seals.failed': '¿Cuántos no sellaron? Diga, por ejemplo: uno no selló.',
  'dialogue.count.minutes.added': '¿Cuántos minutos? Diga, por ejemplo: añade cinco minutos.',
  'dialogue.count.boil.droppedEarlier': '¿Hace cuánto? Diga, por ejemplo: bajó hace dos minutos.',
  'dialogue.count.reading.taken': '¿Cuánto? Diga: pesa dos kilos. O bien: está a la mitad.',

  // Answers to what the cook asks, for the kitchen to fill.
  'dialogue.left': '{name, select, none {} other {{name}: }}{minutes} por delante.',
  'dialogue.leftAbout': '{name, select, none {} other {{name}: }}{aboutMinutes} más.',
  'dialogue.overdue': '{name, select, none {} other {{name}: }}{minutes} de retraso.',
  'dialogue.noClock': '{name, select, none {} other {{name}: }}ningún reloj en marcha.',
  'dialogue.nothingSaid': 'Todavía no he dicho nada.',
  'dialogue.nothingToTakeBack': 'No hay nada que deshacer.',
  'dialogue.noWhy': 'No tengo más que decir de eso.',
  'dialogue.lookingAt': 'Ahora, {name}.',
  'dialogue.quiet': 'Silencio.',
  'dialogue.nothingCooking': 'No hay nada al fuego.',
} as const satisfies Record<keyof typeof english, string>;
