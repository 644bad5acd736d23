// Why the plan's plainer figures are what they are, in Spanish: those that need no more than the plan and the tables.

import type { reasonWords as english } from './en.screens.reasons.ts';

export const reasonWords = {
  'screen.why.startMass.says':
    'Todo lo que entra antes de calentar. Pese antes la olla vacía: así la balanza puede comprobarlo.',
  'screen.why.startMass.how':
    '{sugar} de azúcar, {acid} de ácido, {rest} de fruta limpia o jugo, con el agua y la pectina que lleve',
  'screen.why.startMass.withoutAcid':
    '{sugar} de azúcar, {rest} de fruta limpia o jugo, con el agua y la pectina que lleve; sin ácido añadido',
  'screen.why.startMass.sum': 'una suma',
  'screen.why.sugarBounds.says':
    'Dentro de estos límites la receta vale. Con menos azúcar puede cambiar el veredicto; con más cuajaría como un dulce.',
  'screen.why.liquid.own': 'Como dijo. Va con la fruta.',
  'screen.why.liquid.peel': 'En ella se ablanda la piel antes del azúcar, que la endurecería.',
  'screen.why.liquid.dried': 'La fruta seca se cuece antes en ella.',
  'screen.why.liquid.how': '{water} por {fruit} de fruta limpia',
  'screen.why.pectin.says': 'La dosis usual. Si el sobre dice otra cosa, haga lo que dice el sobre.',
  'screen.why.pectin.how':
    '{dose} por {fruit} de fruta o jugo y azúcar; menos si la fruta tiene mucha propia',
  'screen.why.sugarBounds.how':
    'de {low} a {high} partes de azúcar por una de fruta preparada o jugo ({fruit})',
  'screen.why.solidsBounds.says':
    'Más suelto que esto es un puré claro, que ninguna fila de crema cubre; más duro, se quema antes de estar.',
  'screen.why.solidsBounds.how':
    '{low} % es lo que implican los rendimientos caseros publicados, {high} % es donde una crema se vuelve pasta; el nombre pide 43 %',
  'screen.why.startDepth.says': 'Altura en el mango de una cuchara, antes de que se evapore nada.',
  'screen.why.waterBoils.says':
    'El agua hierve menos caliente cuanto más alto se vive. Para mayor certeza, hierva un poco y lea su termómetro.',
  'screen.why.waterBoils.how': 'línea de vapor del agua a la presión del aire de {elevation}',
  'screen.why.waterBoils.measured': 'leído en su termómetro en agua hirviendo',
  'screen.why.own': 'lo que usted escribió',
  'screen.why.headspace.says':
    'El hueco entre el contenido y el borde. Si es poco, rebosa bajo la tapa; si es mucho, el sello es débil.',
  'screen.why.headspace.how': 'una cifra para confitura, jalea, mermelada y crema, sea cual sea el tarro',
  'screen.why.headspace.freezer':
    'Este es el hueco para un tarro llenado en caliente. Al congelarse se hincha: deje más, como abajo.',
  'screen.why.sterilise.says':
    'El proceso es demasiado corto para esterilizar los tarros, así que se hierven vacíos antes.',
  'screen.why.sterilise.how':
    '{least} minutos, y uno más por cada {perFt} pies enteros; usted está a {elevation}',
  'screen.why.clean.says': 'El proceso es bastante largo para esterilizar los tarros por sí mismo.',
  'screen.why.clean.how': '{long} minutos; hervirlos antes hace falta por debajo de {under}',
  'screen.why.sugarPer100g.says':
    'Casi todo lo que se disuelve es azúcar: el de la fruta y el que usted añade.',
  'screen.why.sugarPer100g.how': '95 partes de cada 100 de los sólidos solubles, {solids} %',
  'screen.why.sugarPer100g.source': 'balance de sólidos solubles; las 95 partes: práctica común, sin fuente',
  'screen.why.fruitPer100g.says': 'Fruta limpia o jugo que entró por cada 100 g que salieron.',
  'screen.why.fruitPer100g.how': 'fruta preparada entre el peso acabado',
  'screen.why.pH.says':
    'Una estimación, para mirar y no para probar: {line} es la línea. El veredicto va por dosis probadas, nunca por esto.',
  'screen.why.pH.how': 'el margen de la fruta, bajado por el ácido añadido contra lo que la fruta amortigua',
  'screen.why.waterActivity.says':
    'Cuánta agua está libre, 1 para agua pura. No hace seguro el producto por sí sola.',
  'screen.why.waterActivity.how':
    'actividad del agua en una solución de azúcar de {solids} %, a 25 °C (77 °F)',
  'screen.why.bestBy.says': 'En su mejor punto este tiempo, contado desde el día en que se hace.',
  'screen.why.bestBy.how': 'el tiempo publicado para el sitio donde se guarda',
  'screen.why.cost.says': 'Lo que cuesta esta tanda, y cada tarro.',
  'screen.why.cost.how':
    'fruta, azúcar y ácido por peso, una tapa y lo que dijo por tarro para cada uno, y el fuego de {burner} durante {minutes}',
  'screen.why.cost.assumed': '2000 W, supuestos,',
  'screen.why.cost.source': 'los precios que usted escribió, en su moneda',
} as const satisfies Record<keyof typeof english, string>;
