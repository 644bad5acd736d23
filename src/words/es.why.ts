// Why: of every step, every figure of a plan and every warning, in Spanish; in one breath, and two sentences more.

import type { whyWords as english } from './en.why.ts';

type Words<Start extends string> = Record<Extract<keyof typeof english, `why.${Start}.${string}`>, string>;

const batchWhys: Words<'batch'> = {
  'why.batch.settingUp': 'Cuando la olla hierve, ya no hay tiempo de buscar nada.',
  'why.batch.settingUp.more':
    'El plato debe estar helado para la prueba, y la olla de conservas tarda en calentarse. Un tarro con mella no sella: mire cada borde.',
  'why.batch.mashing': 'El azúcar se quema en una olla seca. La fruta machacada da jugo.',
  'why.batch.mashing.more':
    'El jugo lleva el calor y todo se calienta por igual. Machaque hasta que no quede azúcar seco en el fondo.',
  'why.batch.softening': 'El azúcar endurece la piel que aún no está blanda.',
  'why.batch.softening.more':
    'Cueza la piel en su agua, con tapa, hasta que el pulgar la aplaste. Luego va el azúcar.',
  'why.batch.melting': 'El azúcar seco en el fondo de la olla se quema.',
  'why.batch.melting.more': 'Remuévalo antes del fuego, hasta que no quede grano abajo. Así hierve parejo.',
  'why.batch.comingToBoil':
    'Por debajo del hervor a borbotones, la espuma y la fruta no están calientes del todo.',
  'why.batch.comingToBoil.more':
    'Un hervor a borbotones no se corta al remover. Desde ahí puedo decir cuán rápido se va el agua.',
  'why.batch.simmering': 'El agua se va, y el azúcar del fondo no se quema.',
  'why.batch.simmering.more':
    'Los sólidos quedan en la olla y el agua se va, así que el peso dice cuán espeso está. Cuanto más espeso, antes se pega.',
  'why.batch.boilingHard': 'Un hervor rápido cuaja antes de que se pierdan color y sabor.',
  'why.batch.boilingHard.more':
    'La cocción lenta rompe la pectina que lo hace cuajar. Remueva hasta el fondo: cuanto más espeso, antes se quema.',
  'why.batch.skimming': 'La espuma mete aire en el tarro y lo enturbia.',
  'why.batch.skimming.more': 'Espume una vez, al final: se pierde menos fruta. Lo que retira se puede comer.',
  'why.batch.straining': 'Salen pieles, semillas y huesos, para que quede fino.',
  'why.batch.straining.more':
    'Al cocer dan pectina, por eso siguen dentro hasta ahora. Poca cantidad cada vez, y cuidado con las salpicaduras.',
  'why.batch.blending': 'El vapor en una batidora cerrada le lanza fruta hirviendo.',
  'why.batch.blending.more':
    'Por eso, llena hasta la mitad, la tapa con respiro y un paño encima. Una batidora de mano en la olla es más segura.',
  'why.batch.spooning': 'La fruta caliente siempre parece líquida. El plato frío muestra cómo cuaja.',
  'why.batch.spooning.more':
    'El fuego se apaga durante la prueba, o se pasa del punto. Una cucharada pequeña se enfría antes.',
  'why.batch.cooling': 'Tibia, aún corre. Fría, dice la verdad.',
  'why.batch.cooling.more':
    'Unos minutos en frío muestran cómo estará en el tarro. Luego empújela con un dedo.',
  'why.batch.judging': 'Si la raya queda abierta y no corre jugo, se sostiene.',
  'why.batch.judging.more':
    'Líquida quiere decir que sobra agua: unos minutos más a fuego lento. Puede probar cuantas veces quiera.',
  'why.batch.loosening': 'Demasiado espesa, atrapa aire y se calienta mal en el tarro.',
  'why.batch.loosening.more':
    'Añada agua hirviendo a cucharadas y remueva. El agua fría enfriaría la olla antes de los tarros.',
  'why.batch.held': 'Fuera del fuego nada se quema mientras no está.',
  'why.batch.held.more': 'Vuelve a hervir antes de seguir. Una olla enfriada no debe ir a los tarros.',
  'why.batch.caught': 'Lo quemado se queda en el fondo si no se toca.',
  'why.batch.caught.more': 'Raspado, da sabor a toda la olla. Si sabe a quemado, deje esta tanda.',
  'why.batch.readyingJars': 'La fruta caliente raja un tarro frío.',
  'why.batch.readyingJars.more':
    'Los tarros que se procesan menos de diez minutos se hierven antes. En los demás lo hace la olla de conservas.',
  'why.batch.filling': 'El espacio libre atrae la tapa. La comida en el borde rompe el sello.',
  'why.batch.filling.more':
    'Demasiado lleno, rebosa bajo la tapa. Forzado, el aro retiene el aire y la tapa se dobla.',
  'why.batch.waitingForCanner': 'El tiempo probado vale solo para tarros calientes.',
  'why.batch.waitingForCanner.more':
    'Un tarro enfriado pediría más de lo que dice ninguna tabla. Y un tarro frío se raja en agua caliente.',
  'why.batch.processing': 'El tiempo entero en pleno hervor es lo que lo conserva.',
  'why.batch.processing.more':
    'Es el tiempo publicado para este alimento, este tarro y su altitud. Si el hervor baja, empieza de nuevo.',
  'why.batch.unprocessed': 'El tiempo no se cumplió, y nadie sabe si es seguro.',
  'why.batch.unprocessed.more':
    'En la nevera dura tres semanas como mucho. O hierva otra vez antes de un día: tarros limpios y calientes, tapas nuevas, el tiempo entero.',
  'why.batch.reheating': 'Procesar de nuevo es empezar de cero.',
  'why.batch.reheating.more':
    'Fruta caliente, tarros calientes, tapas nuevas, el tiempo entero. Nada de la primera vez cuenta.',
  'why.batch.resting': 'El sello se forma al enfriarse el tarro.',
  'why.batch.resting.more':
    'Déjelo de doce a veinticuatro horas, sin corrientes. Movido, inclinado o apretado, el sello blando puede romperse.',
  'why.batch.checkingSeals': 'Solo una tapa firme deja fuera el aire.',
  'why.batch.checkingSeals.more':
    'Apriete el centro: si está sellada no se mueve. Mire de lado: se hunde; golpéela: suena claro.',
  'why.batch.puttingAway': 'La etiqueta dice qué y cuándo. Un aro esconde un mal sello.',
  'why.batch.puttingAway.more':
    'Un tarro sellado dura un año, fresco y a oscuras. El que no selló va a la nevera, o de nuevo a la olla de conservas antes de un día.',
  'why.batch.putAway': 'Una tapa que se levanta después ha dejado entrar aire.',
  'why.batch.putAway.more': 'Entonces no lo pruebe: tírelo. Ni el aspecto ni el olor muestran si es seguro.',
  'why.batch.stopped': 'Lo que no se procesó no es para la despensa.',
  'why.batch.stopped.more':
    'Enfríelo, y a la nevera antes de dos horas. En la comida tibia los gérmenes crecen deprisa.',
};

const cannerWhys: Words<'canner'> = {
  'why.canner.empty': 'Tarda en calentarse, y debe estar caliente para los tarros.',
  'why.canner.empty.more':
    'Media llena basta, pues los tarros suben el agua. La rejilla separa el vidrio del fondo caliente.',
  'why.canner.filled': 'Debe estar caliente cuando los tarros estén llenos.',
  'why.canner.filled.more': 'Un tarro caliente se raja en agua fría. Y los tarros que esperan se enfrían.',
  'why.canner.heating': 'Los tarros calientes van en agua caliente, o el vidrio se raja.',
  'why.canner.heating.more': 'Justo antes de hervir está bien. Un hervor fuerte le salpicaría al cargar.',
  'why.canner.probablyHot': 'Según el reloj está caliente, pero solo usted puede verlo.',
  'why.canner.probablyHot.more':
    'Se nota por el vapor y las burbujas pequeñas en la pared. Un tarro caliente se raja en agua fría.',
  'why.canner.hot': 'Tarros calientes, agua caliente: así el vidrio no se raja.',
  'why.canner.hot.more': 'Manténgala cerca de 82 grados Celsius. Con la tapa puesta se pierde poca agua.',
  'why.canner.comingToFullBoil': 'El tiempo cuenta solo desde el pleno hervor a borbotones.',
  'why.canner.comingToFullBoil.more':
    'Antes, el centro del tarro no está bastante caliente. El frío de los propios tarros retrasa el hervor.',
  'why.canner.fullBoil': 'Sin cortes y en pleno hervor: solo así cuenta el tiempo.',
  'why.canner.fullBoil.more':
    'Es el tiempo publicado para este alimento, este tarro y su altitud. Pregunto porque solo usted ve el hervor.',
  'why.canner.boilLost': 'Sin hervor, el centro del tarro quizá no se caliente bastante.',
  'why.canner.boilLost.more':
    'Por eso el tiempo entero empieza de nuevo en el próximo pleno hervor. Los minutos de antes no cuentan.',
  'why.canner.unsureOfTheBoil': 'Nadie vio si hirvió todo el rato.',
  'why.canner.unsureOfTheBoil.more':
    'Si hirvió, el tiempo está cumplido. Si no es seguro, no lo está: pleno hervor, y otra vez el tiempo entero.',
  'why.canner.standing': 'Los tarros se calman y así no escupen.',
  'why.canner.standing.more':
    'Sacados enseguida pueden perder comida y el sello. Esta espera no es parte del tiempo.',
  'why.canner.ready': 'Inclinar o girar puede romper un sello aún blando.',
  'why.canner.ready.more':
    'Saque recto y deje el agua sobre las tapas: se seca sola. Separados dos dedos, sobre un paño, sin corrientes.',
};

const saidWhys: Words<'said'> = {
  'why.said.canner.addWater': 'Las tapas deben quedar bajo el agua, o arriba no se calienta.',
  'why.said.canner.addWater.more':
    'El agua fría cortaría el hervor y rajaría un tarro. Si el hervor baja, el tiempo empieza de nuevo.',
  'why.said.canner.jarBroke': 'Su fruta se ha perdido, pero los otros pueden seguir.',
  'why.said.canner.jarBroke.more':
    'Las manos cerca del vidrio se cortan. Saque el resto al final, y los vidrios cuando el agua esté fría.',
  'why.said.canner.askPlainly': 'El tiempo solo no prueba nada: debe haber hervido todo el rato.',
  'why.said.canner.askPlainly.more':
    'Diga no si no tiene certeza. Repetir cuesta minutos; un tarro malo cuesta más.',
  'why.said.canner.whileAway': 'No pude verlo, y el tiempo cuenta solo sin cortes.',
  'why.said.canner.whileAway.more':
    'Si estaba allí y hirvió fuerte, diga sí. Si no, diga no, y el tiempo empieza de nuevo.',
  'why.said.batch.simmeredUnwatched': 'Una olla sigue hirviendo mientras no estoy, y el final llega deprisa.',
  'why.said.batch.simmeredUnwatched.more':
    'Remueva antes hasta el fondo: si está áspero, se ha pegado. Luego mire cuán espeso está.',
  'why.said.batch.wentCold': 'El tiempo probado vale solo para tarros calientes.',
  'why.said.batch.wentCold.more':
    'Antes de un día puede hervirlo otra vez: tarros limpios y calientes, tapas nuevas, el tiempo entero. O comerlo de la nevera en tres semanas.',
  'why.said.batch.notServed': 'El tiempo se cortó, y nadie sabe si es seguro.',
  'why.said.batch.notServed.more':
    'Hierva otra vez antes de un día, con tarros limpios y calientes y tapas nuevas, el tiempo entero. O guárdelo en la nevera.',
  'why.said.batch.discard': 'Dejó entrar aire, y nadie sabe cuánto tiempo.',
  'why.said.batch.discard.more':
    'Ni aspecto, ni olor, ni sabor muestran si es seguro. Probarlo basta para hacer daño.',
  'why.said.kitchen.clockVoid': 'Un hervor perdido no cuenta, se diga cuando se diga.',
  'why.said.kitchen.clockVoid.more':
    'Sin hervor, el centro del tarro se enfría. Por eso el tiempo entero empieza de nuevo.',
  'why.said.kitchen.notServed': 'Según lo que me dice ahora, el tiempo se cortó.',
  'why.said.kitchen.notServed.more':
    'Así que estos tarros no son seguros en la despensa. A la nevera ya, o el tiempo entero otra vez antes de un día.',
  'why.said.kitchen.clockReopened': 'Según lo que me dice ahora, el tiempo no fue entero.',
  'why.said.kitchen.clockReopened.more':
    'Los tarros siguen en la olla de conservas, así que se puede repetir. Pleno hervor, y luego el tiempo entero.',
  'why.said.kitchen.didItSleep': 'Mientras dormía, nadie vigiló el reloj ni el hervor.',
  'why.said.kitchen.didItSleep.more':
    'Si dormí, pregunto qué pasó. Si solo se cambió la hora, todo queda como estaba.',
};

const figureWhys: Words<'figure'> = {
  'why.figure.sugar': 'Tanto para esta fruta: endulza, espesa y ayuda a conservar.',
  'why.figure.sugar.more':
    'En la confitura, el azúcar la hace cuajar. En una crema puede elegir menos, y queda más suelta.',
  'why.figure.acid': 'El ácido la hace segura en la despensa, o la ayuda a cuajar.',
  'why.figure.acid.more':
    'La línea es p H 4.6, y algunas frutas pueden pasarla. Use jugo embotellado: su fuerza es conocida.',
  'why.figure.pectin': 'La dosis usual. Si el sobre dice otra cosa, haga lo que dice.',
  'why.figure.pectin.more':
    'El polvo va antes del fuego, y el azúcar al hervir. La líquida va al final, al hervir.',
  'why.figure.liquid': 'La piel y la fruta seca se cuecen antes en agua.',
  'why.figure.liquid.more': 'Luego va el azúcar. El azúcar endurece la piel que aún no está blanda.',
  'why.figure.targetMass': 'Solo se va el agua. Así el peso dice cuándo está espesa.',
  'why.figure.targetMass.more':
    'Todo el azúcar y los sólidos quedan en la olla. Pésela con la olla y reste la olla vacía.',
  'why.figure.solubleSolids': 'Todo lo que no es agua, casi todo azúcar: más es más espeso.',
  'why.figure.solubleSolids.more':
    'Una crema acaba entre un tercio y la mitad. La confitura sigue hasta unos dos tercios.',
  'why.figure.targetDepth': 'La altura en el mango de la cuchara, cuando está espesa.',
  'why.figure.targetDepth.more':
    'Sale del peso y del ancho de su olla. Baje la espuma removiendo y léala cerca del final: ahí dice más.',
  'why.figure.finishTemp': 'Con azúcar hierve más caliente, y el calor dice cuán espesa está.',
  'why.figure.finishTemp.more':
    'Sirve para confitura y jalea sin pectina añadida. Una crema apenas se calienta más: fíese de la balanza y del plato.',
  'why.figure.heatMinutes': 'De frío a hervor a borbotones, según su fuego y el peso.',
  'why.figure.heatMinutes.more':
    'Es un margen, pues no hay dos fuegos iguales. Tras unas tandas aquí conozco mejor el suyo.',
  'why.figure.simmerMinutes': 'Tanta agua debe irse, y su fuego la hace irse.',
  'why.figure.simmerMinutes.more':
    'Es un margen, no una promesa: cuatro tandas de cada cinco acaban en él. Cada pesada lo estrecha.',
  'why.figure.stirInterval': 'Cuanto más espesa, antes se pega.',
  'why.figure.stirInterval.more': 'Por eso los ratos se acortan. Cerca del final, quédese junto a la olla.',
  'why.figure.yield': 'Lo que queda en la olla, menos lo que se le pega.',
  'why.figure.yield.more': 'Es el peso final entre su densidad. Un poco se queda en olla, cuchara y plato.',
  'why.figure.jars': 'El rendimiento, entre lo que cabe en un tarro bajo el espacio libre.',
  'why.figure.jars.more':
    'Prepare más de los que cree: un tarro frío no sirve. El incompleto va a la nevera.',
  'why.figure.canner': 'El agua sobre las tapas calienta por igual todo el tarro.',
  'why.figure.canner.more':
    'Debe estar caliente cuando los tarros estén llenos, así que se enciende pronto. Solo caben unos cuantos a la vez.',
  'why.figure.shelf': 'Una tabla publicada debe cubrir alimento, tarro y altitud.',
  'why.figure.shelf.more':
    'También debe ser bastante ácido y espeso. Donde ninguna tabla vale, es para nevera o congelador.',
  'why.figure.process': 'Los minutos publicados para este alimento, este tarro y su altitud.',
  'why.figure.process.more':
    'Arriba el agua hierve menos caliente, y los minutos crecen por escalones. Cuentan solo en pleno hervor sin cortes.',
  'why.figure.strain': 'Pieles, semillas y huesos quedan en el pasapurés.',
  'why.figure.strain.more': 'Una crema debe ser fina. Lo que queda atrás se resta del rendimiento.',
  'why.figure.standard': 'Cómo se puede llamar depende de su fruta y sus sólidos.',
  'why.figure.standard.more': 'Es una regla para tiendas. En casa le dice cómo la hacen otros.',
  'why.figure.pots': 'Demasiado honda, hierve demasiado y pierde color y sabor.',
  'why.figure.pots.more': 'También necesita sitio para la espuma. Mejor dos ollas anchas que una honda.',
  'why.figure.startMass': 'Todo lo que entra: fruta, azúcar, ácido y el agua que lleve.',
  'why.figure.startMass.more': 'Es una suma, ya sin huesos ni piel. Pésela en la olla para comprobarme.',
  'why.figure.startDepth': 'La altura que tiene antes de evaporarse nada.',
  'why.figure.startDepth.more': 'Márquela en el mango de la cuchara. La segunda marca es donde parar.',
  'why.figure.waterBoils': 'Arriba el aire aprieta menos, y el agua hierve menos caliente.',
  'why.figure.waterBoils.more':
    'Lo calculo con su altitud. Para mayor certeza, hierva agua y lea su termómetro.',
  'why.figure.headspace': 'El hueco deja salir el aire y atrae la tapa.',
  'why.figure.headspace.more': 'Si es poco, rebosa bajo la tapa. Si es mucho, el sello es débil.',
  'why.figure.sterilise': 'El proceso es demasiado corto para esterilizar los tarros.',
  'why.figure.sterilise.more':
    'Hiérvalos vacíos antes: diez minutos, y uno más por cada mil pies, unos trescientos metros. Téngalos calientes hasta llenarlos.',
  'why.figure.clean': 'El proceso es bastante largo para esterilizar los tarros.',
  'why.figure.clean.more':
    'Lávelos y téngalos calientes. Solo un proceso de menos de diez minutos pide tarros hervidos.',
  'why.figure.sugarPer100g': 'Casi todo lo que se disuelve es azúcar, también el de la fruta.',
  'why.figure.sugarPer100g.more':
    'Se calcula de los sólidos. Es bueno saberlo, pero no es una etiqueta analizada.',
  'why.figure.fruitPer100g': 'La fruta que entró por cada parte que sale.',
  'why.figure.fruitPer100g.more':
    'El agua se evaporó, así que puede ser más que el peso del tarro. Dice cuánto es fruta y cuánto azúcar.',
  'why.figure.pH': 'Cuán ácido acaba: 4.6 es la línea para la despensa.',
  'why.figure.pH.more':
    'Es una estimación de la fruta y del ácido añadido. Ninguna tira casera es bastante segura: siga la cantidad probada.',
  'why.figure.waterActivity': 'Cuánta agua queda libre para que vivan gérmenes.',
  'why.figure.waterActivity.more':
    'El azúcar retiene agua, y lo dulce aguanta mejor abierto. No hace seguro un tarro por sí sola.',
  'why.figure.bestBy': 'Pasado esto ya no está en su mejor punto.',
  'why.figure.bestBy.more':
    'Oscurece y pierde sabor. Un tarro con la tapa levantada es malo a cualquier edad.',
  'why.figure.cost': 'Fruta, azúcar, tapas y fuego, a sus propios precios.',
  'why.figure.cost.more':
    'Dividido entre los tarros, es lo que le cuesta uno. El fuego se cuenta todo el tiempo.',
};

export const whyWords = {
  ...batchWhys,
  ...cannerWhys,
  ...saidWhys,
  ...figureWhys,
} satisfies Record<keyof typeof english, string>;
