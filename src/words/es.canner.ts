// What the canner says, in Spanish: ICU message format, one sentence or two, the verb first, addressed as "usted".

import type { cannerWords as english } from './en.canner.ts';

export const cannerWords = {
  'canner.fillIt': 'Llene la olla de conservas hasta la mitad. Ponga la rejilla. Encienda el fuego.',
  'canner.fillIt.why':
    'Debe estar caliente cuando los tarros estén llenos: un tarro caliente se raja en agua fría.',
  'canner.heating': 'Olla de conservas al fuego. {aboutMinutes} hasta calentarse.',
  'canner.askIfHot': '¿Está caliente la olla de conservas, a punto de hervir?',
  'canner.hot': 'La olla de conservas está caliente. Manténgala así.',
  'canner.hot.why':
    'Los tarros calientes van en agua caliente, cerca de 82 grados Celsius, para que el vidrio no se raje.',
  'canner.loadNow': 'Tarros a la olla de conservas ya. Cúbralos con tres a cinco centímetros de agua.',
  'canner.loadNow.why':
    'La fruta debe entrar caliente. El agua sobre las tapas calienta por igual todo el tarro.',
  'canner.bringToFullBoil': 'Ponga la tapa, fuego fuerte. Llévela a pleno hervor, a borbotones.',
  'canner.bringToFullBoil.why':
    'El tiempo cuenta solo desde el pleno hervor a borbotones, no desde que entran los tarros.',
  'canner.askIfFullBoil': '¿Está la olla de conservas en pleno hervor, a borbotones?',
  'canner.clockStarted':
    '{again, select, true {Reloj otra vez desde el principio.} other {Reloj en marcha.}} {minutes} en pleno hervor.',
  'canner.clockStarted.why':
    'Es el tiempo publicado para este alimento, este tarro y su altitud. No debe cortarse.',
  'canner.askIfItHolds':
    '{silences, plural, =0 {¿Sigue en pleno hervor? {minutes} por delante.} one {Sin confirmar. Mire ahora: ¿hierve fuerte la olla de conservas?} other {# preguntas sin respuesta. Sin confirmar, el tiempo no vale. ¿Pleno hervor?}}',
  'canner.itHolds': 'Bien. {minutes} por delante.',
  'canner.clockVoid': 'El reloj ya no vale. Pleno hervor otra vez, y luego {minutes} enteros.',
  'canner.clockVoid.why':
    'Sin hervor, el centro del tarro quizá no se caliente bastante. Por eso el tiempo empieza de nuevo.',
  'canner.served': 'Tiempo cumplido. Apague el fuego, quite la tapa. Espere cinco minutos.',
  'canner.served.why':
    'La espera deja bajar la presión de los tarros, para que no escupan ni pierdan el sello.',
  'canner.askPlainly': 'Tiempo cumplido, sin comprobar. ¿Hirvió fuerte todo el rato?',
  'canner.liftOut': 'Saque los tarros rectos, sin inclinar. Diga: los tarros están fuera.',
  'canner.liftOut.why': 'Inclinar o apretar puede romper el sello mientras está blando.',
  'canner.addWater': 'Añada agua hirviendo, no fría. Dígame si siguió hirviendo.',
  'canner.waterIn': 'Bien. El reloj sigue.',
  'canner.jarBroke': 'Se rompió un tarro. Déjelo hasta el final. Cuidado con el vidrio.',
  'canner.jarBroke.why': 'Su fruta se ha perdido. Saque los vidrios cuando el agua esté fría.',
  'canner.whileAway': 'Ausente {awayMinutes}. ¿Hirvió fuerte todo el rato?',
} as const satisfies Record<keyof typeof english, string>;
