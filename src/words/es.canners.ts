// What is said where there are two canners, in Spanish: each sentence says which of them it is about.

import type { twoCannersWords as english } from './en.canners.ts';

const la = '{which, select, second {segunda olla de conservas} other {primera olla de conservas}}';

export const twoCannersWords = {
  'two.any': `${la}: {words}`,
  'two.canner.fillIt': `${la}: agua a la mitad, rejilla, fuego.`,
  'two.bare.canner.fillIt': `${la} al fuego, a la mitad.`,
  'two.how.canner.fillIt': `Caliente antes de llenar los tarros. Diga: la ${la} está al fuego.`,
  'two.canner.heating': `${la} al fuego. {aboutMinutes} hasta calentarse.`,
  'two.canner.askIfHot': `¿Está caliente la ${la}, a punto de hervir?`,
  'two.canner.hot': `La ${la} está caliente. Manténgala así.`,
  'two.canner.loadNow': `Tarros a la ${la} ya. Cúbralos con agua.`,
  'two.how.canner.loadNow': `Rectos, sin tocarse. Diga: los tarros están en la ${la}.`,
  'two.canner.bringToFullBoil': `${la}: tapa, fuego fuerte. A pleno hervor, a borbotones.`,
  'two.how.canner.bringToFullBoil': `Diga: la ${la} hierve a borbotones.`,
  'two.canner.askIfFullBoil': `¿Está la ${la} en pleno hervor, a borbotones?`,
  'two.canner.clockStarted': `${la}: {again, select, true {reloj desde el principio.} other {reloj en marcha.}} {minutes}.`,
  'two.how.canner.clockStarted': `Quédese cerca. Dígame enseguida: la ${la} dejó de hervir.`,
  'two.canner.askIfItHolds': `{silences, plural, =0 {¿Sigue la ${la} en pleno hervor? {minutes}.} one {Sin confirmar. Mire: ¿hierve fuerte la ${la}?} other {${la}: # sin respuesta. Así no vale. ¿Pleno hervor?}}`,
  'two.canner.clockVoid': `${la}: reloj nulo. Pleno hervor, y {minutes} enteros.`,
  'two.canner.served': `${la}: tiempo cumplido. Fuego y tapa fuera. Cinco minutos.`,
  'two.canner.askPlainly': `${la}: tiempo cumplido, sin comprobar. ¿Hirvió fuerte siempre?`,
  'two.canner.liftOut': `Saque rectos los tarros. Diga: fuera de la ${la}.`,
  'two.canner.addWater': `${la}: agua hirviendo, no fría. Diga si siguió hirviendo.`,
  'two.canner.jarBroke': `${la}: se rompió un tarro. Déjelo hasta el final.`,
  'two.canner.whileAway': `Ausente {awayMinutes}. ¿Hirvió fuerte siempre la ${la}?`,
  'two.batch.toTheCanner': `{jars, plural, one {# tarro} other {# tarros}} a la ${la} ya.{short, plural, =0 {} other { Los no llenos: nevera.}}`,
  'two.evening.wait.preheat': `La ${la} puede esperar {aboutMinutes}. Le aviso.`,
  'two.how.batch.toTheCanner': `Rectos, en la rejilla. Diga: los tarros están en la ${la}.`,
} as const satisfies Record<keyof typeof english, string>;
