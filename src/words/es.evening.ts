// What is said of the evening's plan, in Spanish: ICU message format, one sentence or two, the verb first.

import type { eveningWords as english } from './en.evening.ts';

export const eveningWords = {
  'evening.words': '{words}',
  'evening.wait.heat': 'Espere con el fuego. Le aviso en {aboutMinutes}.',
  'evening.wait.heat.why':
    'Si se enciende ahora, estaría antes de que queden libres la olla de conservas y sus manos.',
  'evening.wait.fill':
    'Fuego mínimo, tapa puesta, remueva a menudo. La de conservas, libre en {aboutMinutes}.',
  'evening.wait.fill.why':
    'Una olla puede esperar caliente. Un tarro lleno no: debe ir a la olla de conservas enseguida.',
  'evening.wait.preheat': 'La olla de conservas puede esperar {aboutMinutes}. Le aviso.',
  'evening.wait.preheat.why': 'Solo debe estar caliente cuando se llenen los primeros tarros.',
  'evening.foresee': 'En dos minutos le llama {name}. Termine lo que hace.',
  'evening.gather': 'Cuando tenga las manos libres: {works}.',
  'evening.work.prepare': 'preparar {names}',
  'evening.work.skim': 'espumar {names}',
  'evening.work.strain': 'colar {names}',
  'evening.work.blend': 'triturar {names}',
  'evening.work.spoon': 'probar {names} en el plato',
  'evening.work.judge': 'mirar el plato de {names}',
  'evening.work.warmJars': 'calentar los tarros de {names}',
  'evening.work.jarsIn': 'meter los tarros de {names}',
  'evening.work.fill': 'llenar {names}',
  'evening.work.load': 'meter en agua {names}',
  'evening.work.unload': 'sacar {names}',

  'evening.and': 'y',
  'evening.then': 'luego',
  'evening.advice.startBatch':
    'Ponga al fuego {name} {soon, select, true {ahora} other {a las {time}}}{because}.',
  'evening.advice.cannerOn':
    'Encienda {canner, select, first {la primera olla de conservas} second {la segunda olla de conservas} third {la tercera olla de conservas} other {la olla de conservas}} {soon, select, true {ahora} other {a las {time}}}{because}.',
  'evening.advice.keepHot':
    'Mantenga {name} caliente a fuego bajo de {from} a {to}, antes de espesar{because}.',
  'evening.advice.shareLoad': '{names} van juntas a la olla de conservas, {minutes}.',
  'evening.advice.offTheHeat': 'Retire {name} del fuego a las {from}, hasta que vuelva a las {until}.',
  'evening.advice.tooMany':
    '{asked, plural, one {Esta tanda} other {Estas #}} {timed, select, true {no {asked, plural, one {cabe} other {caben}} antes de las {time}, por {narrow, select, canner {la olla de conservas} other {sus manos}}} other {{asked, plural, one {es} other {son}} demasiado para {narrow, select, canner {la olla de conservas} other {sus manos}}, algo esperaría de más}}: {fits, plural, =0 {no hay tiempo para ninguna} other {haga #, y deje {names} para otro día}}.',
  'evening.advice.crowded':
    'Hay {pots} ollas al fuego y usted dijo {rings, plural, one {un fuego} other {# fuegos}}: corríjalo abajo.',
  'evening.advice.late': '{name} llega tarde: {minutes} de más antes de «{step}».',
  'evening.advice.risky': 'La tarde va justa: algún paso puede llegar tarde.',
  'evening.because.hands':
    ': {known, select, true {hasta entonces {name} ocupa sus manos} other {sus manos no dan para más}}',
  'evening.because.canner':
    ': {known, select, true {hasta entonces {name} ocupa la olla de conservas} other {la olla de conservas no da para más}}',
  'evening.because.burner':
    ': {known, select, true {hasta entonces {name} ocupa el fuego} other {hasta entonces los fuegos están ocupados}}',
  'evening.because.jars': ': entonces están listos sus tarros',
  'evening.because.away': ': usted no está de {from} a {to}',
  'evening.because.longest': ': todo lo demás cabe al lado',
  'evening.because.readyFor': ': debe estar caliente para {name} a las {time}',
  'evening.because.finish': ': la tarde termina a las {time}',
  'evening.change.startMoved':
    '{canner, select, none {Ponga al fuego {names}} first {Encienda la primera olla de conservas} second {Encienda la segunda olla de conservas} third {Encienda la tercera olla de conservas} other {Encienda la olla de conservas}} {soon, select, true {ahora} other {a las {time}}}, no a las {was}.',
  'evening.change.added':
    '{names} {count, plural, one {va} other {van}} a la olla de conservas {soon, select, true {ahora} other {a las {time}}}.',
  'evening.change.dropped': '{names} no van juntas a la olla de conservas, al final.',
  'evening.change.noLongerFits': 'Ya no terminará antes de las {time}: ahora hacia las {finish}.',
  'evening.plan.line':
    '{soon, select, true {Ahora} other {A las {time}}}{canner, select, only {} first { la primera olla} second { la segunda olla} other { {names}}}: {step}.',
  'evening.plan.over': 'Fin hacia las {time}.',
  'evening.plan.by.own': 'El mejor hasta ahora, por búsqueda propia.',
  'evening.plan.by.solver': 'El mejor hasta ahora, por el optimizador.',
  'evening.plan.by.within': 'Demostrado: con estos tiempos ningún plan ahorra más de {minutes}.',
  'evening.plan.by.proven': 'Demostrado: con estos tiempos no hay plan mejor.',
  'evening.plan.alone': 'Con una tanda no hace falta plan. Va paso a paso.',
  'evening.away.noted': 'Usted no está de {from} a {to}. El plan lo tiene en cuenta.',
  'evening.away.over': 'Bien. Usted está aquí, el plan cuenta con usted.',
  'evening.away.cannot': 'Una tanda sola no tiene plan que cambiar. Diga: pausa para todo.',

  'screen.act.evening.wait.heat': 'Espere: sin fuego',
  'screen.act.evening.wait.fill': 'Olla caliente',
  'screen.act.evening.wait.preheat': 'Espere un rato',
  'screen.clock.evening.wait': 'de espera',
  'clock.evening.wait': 'de espera',

  'screen.evening.title': 'La tarde',
  'screen.evening.finish': 'Fin hacia las {likely}, entre {low} y {high}.',
  'screen.evening.print': 'Imprimirlo',
  'screen.evening.none':
    'Ningún plan cabe con lo que hay al fuego. Corrija abajo lo que tiene; cada olla sigue con su reloj.',
  'screen.evening.have': 'Lo que tiene esta tarde',
  'screen.evening.cooks': 'Personas',
  'screen.evening.rings': 'Fuegos para ollas',
  'screen.evening.canners': 'Ollas de conservas',
  'screen.evening.overBy': 'Terminar a las',
  'screen.evening.away': 'Sale a las',
  'screen.evening.awayMinutes': 'Durante',
  'screen.evening.row.canner': 'Conservas',
  'screen.evening.row.burner': 'Fuego',
  'screen.evening.row.cook': 'Manos',
  'screen.evening.step.preheat': 'calentar olla',
  'screen.evening.step.prepare': 'preparar',
  'screen.evening.step.heat': 'al hervor',
  'screen.evening.step.simmer': 'fuego lento',
  'screen.evening.step.keepHot': 'mantener',
  'screen.evening.step.reduce': 'espesar',
  'screen.evening.step.skim': 'espumar',
  'screen.evening.step.strain': 'colar',
  'screen.evening.step.blend': 'triturar',
  'screen.evening.step.spoon': 'plato',
  'screen.evening.step.cool': 'plato',
  'screen.evening.step.judge': 'prueba del plato',
  'screen.evening.step.warmJars': 'calentar tarros',
  'screen.evening.step.jarsIn': 'tarros dentro',
  'screen.evening.step.sterilise': 'hervir tarros',
  'screen.evening.step.fill': 'llenar',
  'screen.evening.step.load': 'cargar',
  'screen.evening.step.toFullBoil': 'a pleno hervor',
  'screen.evening.step.process': 'procesar',
  'screen.evening.step.stand': 'esperar',
  'screen.evening.step.unload': 'sacar',
} as const satisfies Record<keyof typeof english, string>;
