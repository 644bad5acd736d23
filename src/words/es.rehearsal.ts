// A kitchen without fruit, in Spanish: what you would see, smell and weigh, what hands can do, and the review.

import type { rehearsalWords as english } from './en.rehearsal.ts';

export const rehearsalWords = {
  'sense.pot.still': 'La superficie está quieta y lisa. Aún no está caliente.',
  'sense.pot.steaming': 'Sale vapor. La superficie está quieta, sin burbujas.',
  'sense.pot.simmer': 'Unas pocas burbujas suben por la pared. La superficie apenas tiembla.',
  'sense.pot.boil': 'Rompen burbujas en muchos sitios. Pasa la cuchara y detrás de ella queda plano.',
  'sense.pot.rolling':
    'Grandes burbujas rompen por todas partes. Toda la superficie se agita y sigue hirviendo tras la cuchara.',
  'sense.pot.foam': 'Tiene espuma clara encima.',
  'sense.pot.catching': 'Huele un poco a quemado y la cuchara nota áspero el fondo.',
  'sense.pot.burnt': 'Huele a azúcar quemado. Hay una costra oscura en el fondo.',
  'sense.pot.ranOver': 'Una parte ha rebosado.',
  'sense.spoonful.thin': 'Gotas claras caen de la cuchara una a una.',
  'sense.spoonful.coats': 'Cubre la cuchara, y aún corre jugo por el borde.',
  'sense.spoonful.mounds': 'Una cucharada forma montículo y se queda. Del borde cuelga una lámina ancha.',
  'sense.scale': 'En la olla hay {massKg}.',
  'sense.spoon': 'En la cuchara la altura es {depthM}.',
  'sense.plate.cold': 'El plato está helado y vacío.',
  'sense.plate.warm': 'El plato no está frío.',
  'sense.plate.hot': 'La cucharada sigue caliente. Aún no dice nada.',
  'sense.plate.held': 'La raya queda abierta. El borde está limpio, sin cerco mojado.',
  'sense.plate.runny': 'Un charco plano y ancho. La raya se ha cerrado, y corre jugo claro por el borde.',
  'sense.plate.tooThick': 'Está como una pasta y apenas se mueve bajo el dedo.',
  'sense.canner.still': 'El agua está quieta. Aún no está caliente.',
  'sense.canner.steaming': 'Sale vapor del agua, a punto de hervir, sin burbujas.',
  'sense.canner.simmer': 'Suben unas pocas burbujas. El agua apenas tiembla.',
  'sense.canner.boil': 'Rompen burbujas en muchos sitios, y entre ellas el agua queda plana.',
  'sense.canner.rolling':
    'Grandes burbujas rompen por todas partes, y toda la superficie se agita. Hierve sin parar.',
  'sense.canner.flat': 'El agua sobre las tapas está plana, con una o dos burbujas pequeñas.',
  'sense.canner.covered': 'El agua cubre las tapas.',
  'sense.canner.low': 'El agua no cubre las tapas ni dos centímetros y medio.',
  'sense.canner.broken': 'Se ha roto un tarro ahí dentro.',
  'sense.jars.none': 'No hay tarros sobre el paño.',
  'sense.jars.hot':
    '{jars, plural, one {Un tarro} other {# tarros}} sobre el paño, aún en caliente. Las tapas todavía no dicen nada.',
  'sense.jars.lids':
    '{down, plural, =0 {} one {Una tapa está hundida y no se mueve. } =21 {Veintiuna tapas están hundidas y no se mueven. } other {# tapas están hundidas y no se mueven. }}{up, plural, =0 {} one {Una tapa sobresale y salta.} =21 {Veintiuna tapas sobresalen y saltan.} other {# tapas sobresalen y saltan.}}',
  'sense.jars.broken': '{jars, plural, one {Se rompió un tarro} other {Se rompieron # tarros}}.',

  'rehearse.title': 'El fuego, sin fruta',
  'rehearse.open': 'El fuego',
  'rehearse.pot': 'La olla',
  'rehearse.canner': 'La olla de conservas',
  'rehearse.plate': 'El plato',
  'rehearse.jars': 'Los tarros',
  'rehearse.scale': 'Pesarla',
  'rehearse.spoon': 'Meter la cuchara',
  'rehearse.stir': 'Remover',
  'rehearse.heat.pot': 'Fuego bajo la olla',
  'rehearse.heat.canner': 'Fuego bajo la olla de conservas',
  'rehearse.heat.off': 'Apagado',
  'rehearse.heat.warm': 'Mínimo',
  'rehearse.heat.low': 'Lento',
  'rehearse.heat.high': 'Fuerte',
  'rehearse.says':
    'Sin fruta ni calor, pero hierve y se quema como de verdad. Lo que diga a la página se hace aquí también. Mire usted antes de decirlo.',
  'rehearse.review': 'Cómo fue',
  'rehearse.grave': 'No es seguro:',
  'rehearse.tell': 'Dígame en voz alta lo que vería, oiría y olería',
  'rehearse.told': '{where}: {what}',
  'rehearse.toldGrave': 'No es seguro: {what}',
  'rehearse.time': '{pace} veces más rápido. Mientras hablamos, el tiempo es real.',
  'rehearse.nothing':
    'La olla de mentira de una tanda está aquí desde su plan, hasta que la página se abre de nuevo.',

  'review.notYet': 'Aún no hay nada que contar. Lo que llegue tarde o se olvide saldrá aquí.',
  'review.cleanSoFar': 'Hasta ahora nada llegó tarde y nada se olvidó.',
  'review.clean': 'Nada llegó tarde y nada se olvidó.',
  'review.boilTooEarly':
    'Dijo hervor a borbotones antes de que lo fuera. La espuma y la fruta no habrían estado calientes del todo.',
  'review.boilLate': 'Hirvió a borbotones {minutes} antes de que lo dijera. Quizá rebosó entretanto.',
  'review.unstirred': 'La olla estuvo {minutes} sin remover. Lo que queda quieto en el fondo se quema.',
  'review.caught': 'Empezó a pegarse. Un poco más, y toda la olla habría sabido a quemado.',
  'review.burnt': 'Se quemó. Esa tanda habría ido a la basura.',
  'review.ranOver': 'Rebosaron {massKg}: un tarro perdido y un fogón que fregar.',
  'review.tooDry': 'Hirvió más allá de su punto: {percent} partes de cien menos en los tarros, y duro.',
  'review.heatLeftOn': 'El fuego bajo la olla vacía quedó encendido.',
  'review.plateWarm': 'El plato no estaba frío, así que no podía decir nada.',
  'review.heldRunny': 'El plato aún estaba líquido cuando dijo que se sostenía. No habría cuajado.',
  'review.heldThick':
    'Estaba demasiado espeso cuando dijo que se sostenía: un chorro de agua caliente habría ayudado.',
  'review.clockTooEarly':
    'Dijo pleno hervor antes de que lo fuera. El tiempo no habría contado: no es seguro fuera de la nevera.',
  'review.clockLate':
    'La olla de conservas hirvió {minutes} antes de que lo dijera. Seguro, y más blando de lo debido.',
  'review.boilLostUnsaid':
    'El hervor se perdió y nadie lo dijo. Ese tiempo no cuenta: no es seguro fuera de la nevera.',
  'review.unserved':
    'Los tarros tuvieron {minutes, plural, one {# minuto} other {# minutos}} de pleno hervor sin cortes, y se publican {wanted}. No es seguro fuera de la nevera.',
  'review.broken':
    '{jars, plural, one {Se rompió un tarro} other {Se rompieron # tarros}}: vidrio frío y fruta caliente.',
  'review.lidsUpUnsaid':
    '{jars, plural, one {Una tapa sobresalía} =21 {Veintiuna tapas sobresalían} other {# tapas sobresalían}} cuando dijo que todo selló. En la despensa podría haber enfermado a alguien.',
} as const satisfies Record<keyof typeof english, string>;
