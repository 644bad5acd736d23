// What the kitchen as a whole says, in Spanish: answers, corrections, and what happened while it was away.

import type { kitchenWords as english } from './en.kitchen.ts';

export const kitchenWords = {
  'kitchen.wish.slower': 'Más despacio, así.',
  'kitchen.wish.faster': 'Más rápido, así.',
  'kitchen.wish.louder': 'Más alto, así.',
  'kitchen.wish.softer': 'Más bajo, así.',
  'kitchen.wish.atTheEnd': 'No puedo ir más allá.',
  'kitchen.wish.sample': 'Remueva la olla. Unos veinte minutos más.',
  'kitchen.whileQuiet': 'De las horas de silencio:',
  'kitchen.nothingOn': 'No hay nada al fuego.',
  'kitchen.howLong.up': 'Tiempo cumplido.',
  'kitchen.howLong.hours':
    '{hours, plural, one {Una hora más.} =21 {Veintiuna horas más.} other {# horas más.}}',
  'kitchen.howLong.minutes': '{minutes} más.',
  'kitchen.howLong.anyMoment': 'De un momento a otro.',
  'kitchen.howLong.about': '{aboutMinutes} más.',
  'kitchen.howLong.since': '{minutes} hasta ahora.',
  'kitchen.howLong.noClock': 'Ningún reloj en marcha. Sin prisa.',
  'kitchen.status':
    '{canner, select, only {La olla de conservas: {state}.} first {La primera olla de conservas: {state}.} second {La segunda olla de conservas: {state}.} other {{name}: {state}.}}{timed, select, true { {aboutMinutes} más.} other {}}',
  'kitchen.whatNext': '{doing}',
  'kitchen.noReason': 'No tengo más que decir sobre eso.',
  'kitchen.takenBack': 'Deshecho. {doing}.',
  'kitchen.nothingToTakeBack': 'No hay nada que deshacer.',
  'kitchen.putRight': 'Corregido. {doing}.',
  'kitchen.tooLongAgo': 'Eso fue hace demasiado. Puedo retroceder una hora.',
  'kitchen.beforeItBegan': 'Eso fue antes de empezar esta tanda. Diga cuándo fue desde entonces.',
  'kitchen.notThen': 'Eso no encaja con lo que me dijo antes. No cambia nada.',
  'kitchen.clockVoid': 'El reloj ya no vale. {doing}. El tiempo entero empieza de nuevo.',
  'kitchen.notServed': 'Tiempo no cumplido. No es seguro fuera de la nevera: refrigere o recaliente.',
  'kitchen.clockReopened': 'Entonces el tiempo no se cumplió. {doing}.',
  'kitchen.clockRunsOn': 'Entonces el tiempo no se cumplió. {doing}. {minutes} más en pleno hervor.',
  'kitchen.clockMoved': 'Corregido. {minutes} más en pleno hervor.',
  'kitchen.whenWasIt': '¿Hace cuánto fue? Diga: eso fue hace cinco minutos.',
  'kitchen.nowWith': '{name}. {doing}.',
  'kitchen.nowWithCanner':
    'La {which, select, first {primera olla de conservas} second {segunda olla de conservas} other {olla de conservas}}. {doing}.',
  'kitchen.named': '{name}: {words}',
  'kitchen.namedItself': '{words}',
  'kitchen.help': 'Puede decir: {sentences}.',
  'kitchen.helpNothing': 'Planee primero una tanda. Entonces podré ayudar.',
  'kitchen.didItSleep': 'El reloj saltó {awayMinutes}. ¿Se durmió este aparato?',
} as const satisfies Record<keyof typeof english, string>;
