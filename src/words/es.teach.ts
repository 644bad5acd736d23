// What the words of the trade mean, in Spanish: a short answer, and the rest for "tell me more".

import type { teachWords as english } from './en.teach.ts';

export const teachWords = {
  'teach.rollingBoil': 'Un hervor tan fuerte que no se corta al remover.',
  'teach.rollingBoil.more':
    'Grandes burbujas rompen por toda la superficie. En una olla pequeña el fuego lento se le parece: remueva y mire si para.',
  'teach.headspace': 'El espacio vacío bajo la tapa: {headspaceMm} para estas conservas.',
  'teach.headspace.more':
    'Si es poco, la comida rebosa bajo la tapa y estropea el sello. Si es mucho, queda aire dentro.',
  'teach.plateTest': 'Una cucharada en un plato helado. Mire si se sostiene.',
  'teach.plateTest.more':
    'Quite la olla del fuego. Deje el plato en frío unos minutos. Luego empuje la cucharada: debe sostenerse, sin borde mojado.',
  'teach.simmer': 'Burbujas pequeñas en el borde y, de vez en cuando, un borboteo.',
  'teach.simmer.more': 'El agua se va despacio y el azúcar no se quema. Sin tapa, o nada espesa.',
  'teach.scorch': 'Azúcar que se quema en el fondo de la olla.',
  'teach.scorch.more':
    'Apague el fuego y no raspe. Pase lo suelto a una olla limpia y pruébelo. Lo quemado, quemado queda.',
  'teach.fingertipTight': 'Gire el aro con las yemas hasta el primer tope.',
  'teach.fingertipTight.more':
    'El aire debe salir en la olla de conservas. Si se fuerza, la tapa se dobla y no sella.',
  'teach.pectin': 'Lo que tiene la fruta que hace cuajar la confitura.',
  'teach.pectin.more':
    'Manzanas ácidas, manzanas silvestres y ciruelas tienen mucha; peras, melocotones y fresas, poca. Necesita ácido y azúcar para cuajar.',
  'teach.butter': 'Pulpa de fruta cocida hasta quedar espesa y fina. No lleva leche.',
  'teach.butter.more':
    'La norma pide {butterSolids} por ciento de sólidos; muchas caseras son más sueltas. Está cuando forma montículo en la cuchara y en el plato no la rodea agua.',
  'teach.jam': 'Fruta machacada y azúcar, cocidas hasta cuajar.',
  'teach.jam.more':
    'La confitura acabada tiene {jamSolids} por ciento de sólidos o más, casi todo azúcar. Sin pectina añadida cuaja a unos cuatro grados y medio Celsius sobre el agua hirviendo.',
  'teach.canner': 'La olla grande con rejilla donde hierven los tarros llenos.',
  'teach.canner.more': 'Debe ser honda: {depthM} de agua sobre las tapas, y sitio para hervir.',
  'teach.seal': 'La tapa hundida en el centro. No se mueve.',
  'teach.seal.more':
    'Quite el aro con el tarro frío. Apriete el centro: no salta. Mire de lado: se hunde. Golpee: suena claro.',
  'teach.falseSeal': 'Una tapa que parece hundida y luego se suelta.',
  'teach.falseSeal.more':
    'Pasa si el tarro no se calentó bastante o había comida en el borde. Una tapa suelta en la despensa: tire la comida y no la pruebe.',
  'teach.ping': 'El sonido de una tapa que baja al enfriarse el tarro.',
  'teach.ping.more':
    'Buena señal, pero no prueba. Algunas sellan sin ruido. Compruebe cada tapa al acabar el reposo.',
  'teach.foam': 'Aire y trocitos de fruta encima. Espume una vez, al final.',
  'teach.foam.more': 'Se puede comer, pero mete aire en el tarro y lo enturbia.',
  'teach.mash': 'Aplastar la fruta hasta que nade en su jugo.',
  'teach.mash.more': 'Hágalo antes del fuego. El azúcar en una olla seca se quema.',
  'teach.process': 'Hervir los tarros llenos un tiempo fijo, para que duren.',
  'teach.process.more':
    'El tiempo sale de una tabla probada para este alimento, tarro y altitud. Cuenta solo en pleno hervor a borbotones, sin cortes.',
  'teach.rest': 'Tarros sin tocar, de {restLowHours} a {restHighHours} horas, mientras sellan.',
  'teach.rest.more':
    'Sobre un paño, separados {gapDepthM}, lejos de corrientes. No inclinar, apretar ni pulsar.',
  'teach.solids': 'Todo lo que no es agua: sobre todo azúcar. Más es más espeso.',
  'teach.solids.more':
    'Los sólidos quedan en la olla mientras el agua se va. Por eso el peso dice cuán espeso está.',
  'teach.settingPoint': 'El calor con el que la confitura cuajará al enfriarse.',
  'teach.settingPoint.more':
    'Ocho grados Fahrenheit, o cuatro y medio Celsius, sobre el agua hirviendo en su lugar, si no se añadió pectina. Las cremas no tienen ese punto: use el plato.',
  'teach.acid': 'La acidez. Impide crecer a los peores gérmenes.',
  'teach.acid.more':
    'Para la despensa, la fruta debe estar en p H {shelfPh} o menos. Algunas piden jugo de limón embotellado: embotellado, porque su fuerza es conocida.',
  'teach.sterileJar': 'Un tarro vacío hervido {minutes}, o más en altura.',
  'teach.sterileJar.more':
    'Hace falta si los tarros se procesan menos de {processMinutes}. Un minuto más por cada mil pies, unos trescientos metros.',
  'teach.reprocess': 'Repetirlo con un tarro que no selló.',
  'teach.reprocess.more':
    'Solo dentro de {withinHours} horas. Hierva la comida otra vez, tarro limpio y caliente, tapa nueva, el tiempo entero. O a la nevera.',
  'teach.altitude': 'Su altura sobre el mar. Arriba el agua hierve menos caliente.',
  'teach.altitude.more':
    'Agua menos caliente mata menos; por encima de {elevationM} los tarros piden más minutos.',
  'teach.rack': 'Separa los tarros del fondo de la olla de conservas.',
  'teach.rack.more': 'El agua debe correr por debajo, y el vidrio sobre metal caliente se raja.',
  'teach.airBubbles': 'Aire atrapado en el tarro. Pase una espátula fina por dentro.',
  'teach.airBubbles.more': 'Luego rellene otra vez hasta el espacio libre. No con metal: raya el vidrio.',
  'teach.foodMill': 'Un colador con manivela. Retiene pieles y semillas.',
  'teach.foodMill.more': 'Poca cantidad cada vez. Si salpica, deje enfriar un poco la fruta.',
  'teach.thermalShock': 'Vidrio que se raja cuando lo caliente toca lo frío.',
  'teach.thermalShock.more':
    'Fruta caliente en tarros calientes, tarros calientes en agua caliente, y un paño debajo al salir.',
  'teach.band': 'El aro de rosca. Sujeta la tapa solo hasta que sella.',
  'teach.band.more':
    'Quítelo al día siguiente, lávelo y guarde el tarro sin él. Se oxida y esconde un mal sello.',
  'teach.siphoning': 'Comida que sale del tarro por un cambio brusco de calor.',
  'teach.siphoning.more':
    'Deje los tarros {standMinutes} con fuego apagado y sin tapa antes de sacarlos. Un tarro sellado que perdió algo sigue bueno.',
  'teach.ventedLid': 'Una tapa de batidora con el agujero abierto, bajo un paño doblado.',
  'teach.ventedLid.more':
    'La fruta caliente hace vapor que revienta una tapa cerrada. Llene hasta la mitad y empiece despacio.',
  'teach.bestBy': 'Un año, procesado y sellado, en sitio fresco, oscuro y seco.',
  'teach.bestBy.more':
    'Escriba la fecha en el tarro. Tras {shelfMonths} meses oscurece y pierde sabor. Abierta, una confitura con todo su azúcar dura un mes en la nevera.',
  'teach.spoilage': 'Moho, tapa hinchada, gas o fugas. Tírelo todo.',
  'teach.spoilage.more': 'No lo pruebe ni raspe el moho: su veneno llega más hondo de lo que se ve.',

  // About the teaching itself.
  'teach.source':
    '{remembered, select, true {De memoria, sin comprobar: } other {}}{who, select, usda {lo dice la guía U S D A.} center {lo dice el National Center for Home Food Preservation.} law {lo dicen las normas alimentarias.} extension {lo dicen guías estatales.} you {eso viene de usted.} practice {práctica común; no tengo fuente.} other {una regla de manual.}}',
  'teach.hidden': 'El dibujo está quitado.',
  'teach.nothingToShow': 'No tengo dibujo de eso.',
  'teach.words':
    '{level, select, full {Todas las palabras desde ahora.} half {Menos palabras desde ahora.} other {Muy pocas palabras desde ahora.}}',
  'teach.neverLess': 'Este paso conserva sus palabras: de él depende la seguridad.',
} as const satisfies Record<keyof typeof english, string>;
