// What the batch says, in Spanish: ICU message format, one sentence or two, the verb first, addressed as "usted".

import type { batchWords as english } from './en.batch.ts';

export const batchWords = {
  'batch.setUp':
    '{juice, select, none {Pese la fruta: {fruitMassKg}.} weighed {Pese el jugo: {fruitMassKg}.} other {Cuele el jugo y péselo.}} {jars, plural, one {Un tarro} other {# tarros}}. Un plato al congelador.',
  'batch.setUp.why': 'Cuando la olla hierve, ya no hay tiempo de buscar nada.',
  'batch.mash':
    '{pectin, select, powdered {Pectina, {pectinMassKg};{acid, select, none {} other { ácido;}} {into, select, juice {jugo. Remueva.} other {fruta. Machaque.}} El azúcar espera.} liquid {Azúcar, {sugarMassKg};{acid, select, none {} other { ácido;}} {into, select, juice {jugo. Remueva.} other {fruta. Machaque.}} La pectina espera.} other {{into, select, peel {Agua, {liquidMassKg}: cueza la piel. Azúcar, {sugarMassKg}.} stewed {Agua, {liquidMassKg}; azúcar, {sugarMassKg}{acid, select, none {} other {; ácido}}: machaque.} juice {Azúcar, {sugarMassKg};{acid, select, none {} other { ácido;}} jugo. Remueva hasta que se deshaga.} other {Azúcar, {sugarMassKg};{acid, select, none {} other { ácido;}} fruta. Machaque hasta que nade en su jugo.}}}}',
  'batch.mash.why':
    '{into, select, peel {El azúcar endurece la piel que aún no está blanda.} juice {El azúcar seco en el fondo de la olla se quema.} other {El azúcar se quema en una olla seca. La fruta machacada da el jugo que hace falta.}}',
  'batch.bringToBoil': 'Encienda el fuego, hasta el hervor a borbotones. {aboutMinutes}.',
  'batch.bringToBoil.why':
    'Un hervor a borbotones no se corta al remover. Por debajo, la espuma y la fruta no están calientes del todo.',
  'batch.intoTheBoil':
    '{pectin, select, powdered {Eche el azúcar: {sugarMassKg}.} other {Eche la pectina: {pectinMassKg}.}} De nuevo a borbotones.',
  'batch.intoTheBoil.why':
    '{pectin, select, powdered {El polvo se disuelve solo con poco azúcar. Va primero.} other {La pectina líquida se estropea si hierve mucho. Va al final.}}',
  'batch.askIfRollingBoil': '¿Hierve a borbotones, sin cortarse al remover?',
  'batch.simmer':
    '{timed, select, true {A hervor fuerte un minuto. Remueva sin parar.} other {{hard, select, true {{again, select, true {Fuego otra vez, a hervor fuerte.} other {Siga a hervor fuerte.}}} other {{again, select, true {De nuevo a fuego lento.} other {Baje a fuego lento.}}}} {aboutMinutes} más.}}',
  'batch.simmer.why':
    '{hard, select, true {Un hervor rápido cuaja antes de que se pierdan color y sabor.} other {El agua se va, y el azúcar del fondo no se quema.}}',
  'batch.stir': '{near, select, true {Remueva ya, hasta el fondo.} other {Remueva la olla.}}',
  'batch.stir.why': 'Al espesar, lo que queda quieto en el fondo se quema.',
  'batch.stirred': 'Bien. {aboutMinutes} más.',
  'batch.reading':
    '{done, select, true {Ese es el punto. ¿Está bien espeso?} other {{far, select, true {Eso está lejos del plan. Mídalo otra vez, por favor.} other {Anotado. {aboutMinutes} más.}}}}',
  'batch.readingFarOff.why':
    'Apenas cuento con ello. El peso es sin la olla. «A la mitad» es media altura del principio.',
  'batch.minutesAdded': 'Añadido. {aboutMinutes} más.',
  'batch.nearlyThick': 'Ya casi. Quédese junto a la olla y remueva a menudo.',
  'batch.nearlyThick.why':
    'Los últimos minutos quitan más agua con menos fruta. En uno de ellos se puede pegar.',
  'batch.askIfThick': 'Ya debería estar espeso. ¿Está bien espeso?',
  'batch.askIfThick.why':
    'Levante una cucharada fuera del vapor. Debe formar montículo, sin jugo claro en el borde.',
  'batch.askIfBoiled': '¿Hirvió fuerte el minuto entero?',
  'batch.askIfBoiled.why': 'La pectina cuaja por reloj. Aún está líquida, y hervir más la estropea.',
  'batch.simmeredUnwatched':
    '{over, select, true {Ausente {awayMinutes}. Remueva ya. ¿Está espeso?} other {Ausente {awayMinutes}. Remueva ya. Aún no está espeso.}}',
  'batch.skim': 'Olla fuera del fuego. Retire la espuma. Diga: la espuma está retirada.',
  'batch.skim.why':
    'La espuma mete aire en el tarro y lo enturbia. Espume una vez, al final: se pierde menos fruta.',
  'batch.strain':
    '{needed, select, true {Apague el fuego. Páselo por el pasapurés o colador. Cuidado: salpica.} other {Apague el fuego. Cuélelo si quiere, o diga: sin colar.}}',
  'batch.strain.why': 'Aquí salen pieles, semillas y huesos, para que quede fino.',
  'batch.mustStrain': 'Este hay que colarlo. Páselo por el pasapurés.',
  'batch.blend': 'Apague el fuego. Triture fino, tapa con respiro, llena hasta la mitad.',
  'batch.blend.why':
    'El vapor en una batidora cerrada le lanza fruta hirviendo. Una batidora de mano es más segura.',
  'batch.spoonOnPlate':
    '{cold, select, true {Olla fuera del fuego. Ponga una cucharada en el plato frío.} other {Olla fuera del fuego. Plato aún no frío: {minutes} más. Luego, una cucharada.}}',
  'batch.spoonOnPlate.why':
    'La fruta caliente siempre parece líquida. El plato frío muestra cómo quedará en el tarro.',
  'batch.waitForPlate': 'Espere dos minutos. Luego empuje con el dedo.',
  'batch.askIfItHolds': 'Empuje la cucharada. ¿Se sostiene o está líquida?',
  'batch.askIfItHolds.why': 'Si la raya queda abierta y no corre jugo en el borde, se sostiene.',
  'batch.loosen': 'Demasiado espeso: apague el fuego. Añada agua caliente. Diga: ya lo aligeré.',
  'batch.loosen.why': 'Agua hirviendo, una o dos cucharadas cada vez. Luego pruebe de nuevo.',
  'batch.held': 'En pausa. Fuego apagado, tapa puesta. Diga: sigamos, cuando vuelva.',
  'batch.askIfStillHeld': 'En pausa {minutes}. ¿Seguimos o lo dejamos?',
  'batch.itCaught': 'Apague el fuego. No raspe. Pase a una olla limpia.',
  'batch.itCaught.why': 'Lo quemado se queda en el fondo si no se toca. Si sabe a quemado, deje esta tanda.',
  'batch.jarsNoted': 'Bien. Deje los tarros en el agua caliente.',
  'batch.readyJars':
    '{sterile, select, true {Hierva los tarros vacíos {minutes}. Olla fuera del fuego, tapada.} other {{shelf, select, true {Olla fuera del fuego. Tarros limpios y calientes. Diga: los tarros están listos.} other {Tarros limpios junto a la olla. Diga: los tarros están listos.}}}}',
  'batch.readyJars.why':
    'La fruta caliente raja un tarro frío. Los tarros que se procesan menos de diez minutos se hierven antes.',
  'batch.fill':
    '{keep, select, shelf {Llene tarros calientes, con {headspaceMm} libres. Limpie bordes, tapas sin forzar.} freezer {Deje enfriar y llene, con {headspaceMm} libres. Ponga las tapas.} other {Llene los tarros, con {headspaceMm} libres. Ponga las tapas.}}',
  'batch.fill.why': 'El espacio libre atrae la tapa. La comida en el borde rompe el sello.',
  'batch.toTheCanner':
    '{jars, plural, one {Un tarro} other {# tarros}} a la olla de conservas ya, calientes.{short, plural, =0 {} one { El incompleto, a la nevera.} other { Los incompletos, a la nevera.}}',
  'batch.toTheCanner.why':
    'Un tarro enfriado pediría más que el tiempo publicado, y el frío se raja en agua caliente.',
  'batch.wentCold': 'Tarros demasiado fríos. No es seguro fuera de la nevera: refrigere o recaliente.',
  'batch.wentCold.why':
    'El tiempo publicado vale solo para tarros calientes. Puede hervirlo de nuevo antes de un día.',
  'batch.notServed': 'Salieron antes de tiempo. No es seguro fuera de la nevera: refrigere o recaliente.',
  'batch.notServed.why': 'No cumplieron el tiempo en pleno hervor sin cortes, y nadie sabe si es seguro.',
  'batch.reheat': 'Pleno hervor otra vez, sin parar de remover. Diga: hierve a borbotones.',
  'batch.reheat.why':
    'Procesar de nuevo es empezar de cero: fruta caliente, tarros calientes, tapas nuevas, el tiempo entero.',
  'batch.nextLoad': 'Hierva el resto, sin parar de remover. Diga: hierve a borbotones.',
  'batch.nextLoad.why': 'Cada carga va caliente a tarros calientes y recibe el tiempo entero.',
  'batch.rest': 'Deje reposar los tarros un día. No tocar, inclinar ni apretar.',
  'batch.rest.why': 'El sello se forma al enfriarse el tarro. De 12 a 24 horas, sin corrientes de aire.',
  'batch.ping':
    '{pings, plural, one {Una tapa ha bajado. Buena señal, pero no prueba.} other {# chasquidos. Compruebe todas mañana.}}',
  'batch.restLonger':
    'Demasiado pronto. Déjelos {hours, plural, one {una hora más} =21 {veintiuna horas más} other {# horas más}}.',
  'batch.tooEarlyToJudge':
    'Es pronto para juzgar. No apriete. Mire otra vez en {hours, plural, one {una hora} =21 {veintiuna horas} other {# horas}}.',
  'batch.tooEarlyToJudge.why': 'En las primeras doce horas una tapa todavía puede bajar.',
  'batch.mayCheckSeals': 'Doce horas de reposo. Ya puede comprobar los sellos.',
  'batch.checkSeals':
    'Compruebe {jars, plural, one {el tarro} other {los # tarros}}. Quite el aro. ¿Tapa hundida y firme?',
  'batch.checkSeals.why':
    'Apriete el centro de la tapa: si está sellada no se mueve. Se ve hundida y suena clara.',
  'batch.tooManyFailed': 'Solo hay {jars, plural, one {un tarro} other {# tarros}}. ¿Cuántos no sellaron?',
  'batch.putAway':
    '{sealed, plural, =0 {} one {Etiquete un tarro para la despensa. } other {Etiquete # tarros para la despensa. }}{cold, plural, =0 {} one {{keep, select, freezer {{cold} al congelador.} other {{cold} a la nevera ya.}}} other {{keep, select, freezer {{cold} al congelador.} other {{cold} a la nevera ya.}}}}',
  'batch.putAway.why': 'Un tarro sellado dura un año, fresco y a oscuras. Uno sin sellar no es seguro allí.',
  'batch.done':
    '{shelf, plural, =0 {} one {Un tarro en la despensa. } other {# tarros en la despensa. }}{cold, plural, =0 {} one {Un tarro en frío. } other {# tarros en frío. }}Buen trabajo.',
  'batch.discard': 'Perdió el sello en la despensa: no lo pruebe. Tírelo.',
  'batch.discard.why': 'Entró aire no se sabe cuánto tiempo. Ni el aspecto ni el olor muestran si es seguro.',
  'batch.jarsMoved':
    '{jars, plural, one {Un tarro} other {# tarros}}: {what, select, eaten {comido. Buen provecho} givenAway {regalado} discarded {a la basura. Que nadie lo pruebe} intoFridge {a la nevera. Tres semanas como mucho} other {al congelador. Un tarro lleno puede rajarse}}. {left, plural, =0 {No queda ninguno.} one {Queda uno.} other {Quedan #.}}',
  'batch.stopped':
    '{raw, select, true {Parado. Nada está cocido: la fruta aguanta en la nevera.} other {{jars, plural, =0 {Apague el fuego. A la nevera antes de dos horas. No a la despensa.} other {Apague el fuego. Olla y tarros: a la nevera antes de dos horas. No a la despensa.}}}}',
  'batch.whereWeAre': 'He estado ausente {awayMinutes}.',
} as const satisfies Record<keyof typeof english, string>;
