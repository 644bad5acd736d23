// What each drawing shows, in Spanish: its name, what is said of it in one breath, and the words in place of
// the picture, from which a person who sees nothing learns the same.

import type { sightWords as english } from './en.sights.ts';

export const sightWords = {
  'see.simmer': 'Fuego lento',
  'see.simmer.said': 'Burbujas pequeñas en el borde, una a una. La superficie apenas se mueve.',
  'see.simmer.alt':
    'Una olla cortada, a fuego bajo. Unas pocas burbujas suben por la pared y la superficie apenas tiembla. Se oye un borboteo suave de vez en cuando.',
  'see.boil': 'Un hervor que se corta al remover',
  'see.boil.said': 'Burbujas por todas partes, pero la cuchara las para. Aún no es a borbotones.',
  'see.boil.alt':
    'Una olla a fuego fuerte con burbujas en muchos sitios. Por donde pasa la cuchara, la superficie queda plana. Si remover lo para, no es un hervor a borbotones.',
  'see.rollingBoil': 'Pleno hervor a borbotones',
  'see.rollingBoil.said': 'Toda la superficie se agita, y remover no lo para.',
  'see.rollingBoil.alt':
    'Una olla a fuego fuerte. Grandes burbujas rompen por todas partes y toda la superficie se agita. Una cuchara la remueve, y sigue hirviendo detrás de la cuchara. Suena como lluvia constante.',
  'see.cannerBoil': 'Pleno hervor en la olla de conservas',
  'see.cannerBoil.said': 'Burbujas grandes por toda el agua, y no paran.',
  'see.cannerBoil.alt':
    'La olla de conservas con fuego fuerte, los tarros en la rejilla muy por debajo del agua. Burbujas grandes rompen por todas partes y toda la superficie se agita y salta. Hierve sin parar y la tapa golpea. Solo ahora empieza el tiempo.',
  'see.boilLost': 'El hervor se ha perdido',
  'see.boilLost.said': 'La superficie se aplanó sobre los tarros. El tiempo empieza de nuevo.',
  'see.boilLost.alt':
    'La olla de conservas con tarros en la rejilla. El agua sobre las tapas está plana, con una o dos burbujas. Eso no es hervor: el tiempo de antes no cuenta. Recupere el pleno hervor, y luego el tiempo entero.',
  'see.foam': 'Retirar la espuma',
  'see.foam.said': 'Lleve la espuma clara a un lado y retírela.',
  'see.foam.alt':
    'Una olla con espuma clara reunida a un lado. Una cuchara plana entra debajo y la retira, y deja la fruta limpia. Hágalo una vez, al final.',
  'see.spoonCoats': 'Cubre la cuchara',
  'see.spoonCoats.said': 'Levante una cuchara fuera del vapor. La fruta espesa la cubre y cuelga.',
  'see.spoonCoats.alt':
    'Dos cucharas de lado. De la primera caen gotas claras una a una: no está. La segunda lleva una capa gruesa y del borde cuelga una lámina ancha: está. Sáquela del vapor para verlo.',
  'see.plateHeld': 'Prueba del plato: se sostiene',
  'see.plateHeld.said': 'Una raya hecha en ella queda abierta. No corre jugo.',
  'see.plateHeld.alt':
    'Un plato frío con un montón redondo de fruta. Un dedo ha hecho una raya por el medio, y queda abierta. El borde está limpio, sin cerco mojado. Se sostiene: llene los tarros.',
  'see.plateWrinkled': 'Prueba del plato: se arruga',
  'see.plateWrinkled.said': 'Empuje: la piel se arruga ante el dedo. Ha cuajado.',
  'see.plateWrinkled.alt':
    'Un plato frío con una cucharada de confitura. Un dedo empuja de lado, y la piel de delante forma arrugas pequeñas. Las arrugas dicen que ha cuajado.',
  'see.plateRunny': 'Prueba del plato: líquida',
  'see.plateRunny.said': 'La raya se cierra, y corre jugo por el borde. Siga hirviendo.',
  'see.plateRunny.alt':
    'Un plato frío con un charco plano y ancho. La raya se ha cerrado, y un cerco de jugo claro sale del borde. Está líquida: otra vez a fuego lento.',
  'see.headspace': 'Espacio libre',
  'see.headspace.said': 'Deje vacío lo alto del tarro, hasta la marca.',
  'see.headspace.alt':
    'Lo alto de un tarro, de cerca. La fruta acaba bajo el borde, y una llave marca el espacio vacío: un cuarto de pulgada, unos seis milímetros, como un lápiz. Por ahí debe salir el aire, y la tapa baja.',
  'see.wipeRim': 'Limpiar el borde',
  'see.wipeRim.said': 'Limpie todo el borde con un paño limpio y húmedo.',
  'see.wipeRim.alt':
    'Un tarro lleno sin tapa. Un paño húmedo y doblado da la vuelta al borde y quita una gota de fruta. Una gota bajo la tapa rompe el sello.',
  'see.fingertipTight': 'Apretar sin forzar',
  'see.fingertipTight.said': 'Gire el aro con las yemas. Pare en el primer tope.',
  'see.fingertipTight.alt':
    'Un tarro visto desde arriba. Solo las yemas sujetan el aro, lo giran a la derecha y paran en el primer tope. No lo fuerce con el puño: el aire debe salir.',
  'see.waterOverJars': 'Agua sobre los tarros',
  'see.waterOverJars.said': 'Tarros en la rejilla, de tres a cinco centímetros de agua sobre las tapas.',
  'see.waterOverJars.alt':
    'La olla de conservas cortada. Tres tarros derechos en la rejilla, sin tocarse. Una llave marca el agua sobre las tapas: de una a dos pulgadas, unos dos dedos. Encima queda sitio para hervir.',
  'see.lidUp': 'Sin sellar: tapa levantada',
  'see.lidUp.said': 'El centro salta al apretar. Sin sellar: a la nevera. Después: tírelo.',
  'see.lidUp.alt':
    'Un tarro de lado, con la tapa abombada en el centro. Un dedo aprieta y la tapa salta con un clic. No selló: a la nevera ya. Si se levantó después, en la despensa, tírelo.',
  'see.lidDown': 'Sellado: tapa hundida',
  'see.lidDown.said': 'El centro se hunde y no se mueve. Está sellado.',
  'see.lidDown.alt':
    'Un tarro de lado, sin aro, con la tapa hundida en el centro como un plato llano. Un dedo aprieta y nada se mueve, sin clic. Está sellado.',
  'see.scorch': 'Se quema',
  'see.scorch.said': 'Costra oscura en el fondo, olor a quemado, cuchara áspera. Apague el fuego.',
  'see.scorch.alt':
    'Una olla cortada con una costra oscura en el fondo y un hilo de humo. Huele a azúcar quemado, la cuchara nota áspero el fondo y sisea donde había silencio. Apague el fuego, no raspe, pase a una olla limpia.',
  'see.steamBurns': 'Dónde quema el vapor',
  'see.steamBurns.said': 'El vapor sale por el borde. Manos y cara, a un lado.',
  'see.steamBurns.alt':
    'Una olla con la tapa entreabierta. El vapor sale por el lado abierto y recto hacia arriba: ahí quema. La mano sujeta la tapa por el otro lado, fuera del vapor.',
  'see.mash': 'Machacar hasta que nade',
  'see.mash.said': 'Aplaste hasta que la fruta nade en su jugo.',
  'see.mash.alt':
    'Una olla cortada, sin fuego. Un machacador aplasta la fruta. El jugo cubre el fondo y llena los huecos, y abajo no queda azúcar seco. Ahora el calor no la quema.',
  'see.stirIn': 'Remover hasta que no quede',
  'see.stirIn.said': 'Remueva sin fuego hasta que la cuchara no note granos ni grumos.',
  'see.stirIn.alt':
    'Una olla de jugo cortada, sin fuego. Caen granos mientras una cuchara remueve. Cuanto más bajan, más pequeños son, y en el fondo no queda ninguno. Cuando la cuchara no raspa granos ni quedan grumos, el calor no lo quema.',
  'see.coldPlate': 'El plato frío',
  'see.coldPlate.said': 'Un plato en el congelador, un cuarto de hora antes de la prueba.',
  'see.coldPlate.alt':
    'Un plato pequeño en el congelador, con estrellas de escarcha. Tarda un cuarto de hora en enfriarse. La fruta caliente siempre parece líquida, y solo un plato frío muestra cómo cuajará.',
  'see.hotJars': 'Tarro caliente, fruta caliente',
  'see.hotJars.said': 'Fruta caliente en tarro caliente. Un tarro frío se raja.',
  'see.hotJars.alt':
    'Dos tarros. A la izquierda, un tarro caliente con vapor recibe fruta caliente y queda entero. A la derecha, uno frío recibe fruta caliente, y una raja sube por el vidrio. Deje los tarros en agua caliente hasta llenarlos.',
  'see.ventedBlender': 'Triturar con respiro',
  'see.ventedBlender.said': 'Fuego apagado, media llena, la tapa entreabierta, un paño encima.',
  'see.ventedBlender.alt':
    'Una batidora llena hasta la mitad. El tapón de la tapa está quitado, y un paño doblado cubre el agujero para que salga el vapor. Una tapa cerrada reventaría y lanzaría fruta hirviendo.',
  'see.funnel': 'Llenar con embudo',
  'see.funnel.said': 'Un embudo ancho en el tarro caliente deja limpio el borde.',
  'see.funnel.alt':
    'Un embudo ancho en la boca de un tarro caliente. Un cucharón vierte la fruta, y ninguna gota cae en el borde. Pare en el espacio libre.',
  'see.bubblesOut': 'Fuera burbujas',
  'see.bubblesOut.said': 'Pase una espátula fina por dentro, todo alrededor, y rellene.',
  'see.bubblesOut.alt':
    'Un tarro lleno cortado, con burbujas de aire en la fruta. Una herramienta fina y plana baja entre la fruta y el vidrio, y las burbujas suben. Luego rellene hasta el espacio libre.',
  'see.liftUpright': 'Sacar recto',
  'see.liftUpright.said': 'Agarre bajo el aro. Recto hacia arriba, sin inclinar.',
  'see.liftUpright.alt':
    'Unas pinzas agarran el tarro por el cuello, bajo el aro, y lo sacan recto del agua. El tarro sigue derecho. No lo incline para tirar el agua de la tapa: eso rompe el sello.',
  'see.restStill': 'Dejar reposar',
  'see.restStill.said': 'Sobre un paño, separados dos dedos, sin corrientes. No tocar.',
  'see.restStill.alt':
    'Tres tarros derechos sobre un paño, separados dos dedos, bajo una luna: ahí pasan la noche. Nadie los toca, inclina ni aprieta de doce a veinticuatro horas.',
  'see.label': 'La etiqueta',
  'see.label.said': 'Sin aro, tarro lavado, luego qué es y la fecha.',
  'see.label.alt':
    'Un tarro sellado sin aro, con una etiqueta. Una línea dice qué hay dentro, la otra la fecha. Sin aro vería enseguida si la tapa se levanta.',
  'see.potDepth': 'Altura en la cuchara',
  'see.potDepth.said': 'Apoye la cuchara en el fondo. Lea la marca mojada del mango.',
  'see.potDepth.alt':
    'Una cuchara de madera derecha en el fondo de la olla. La fruta llega a la más baja de dos marcas del mango. La de arriba fue el principio, y la de abajo es donde parar.',
  'see.stirBottom': 'Remover hasta el fondo',
  'see.stirBottom.said': 'Arrastre la cuchara por todo el fondo, también las esquinas.',
  'see.stirBottom.alt':
    'Una olla cortada. Una cuchara plana recorre el fondo de pared a pared y levanta la fruta que está ahí. Lo que queda quieto en el fondo se quema.',
  'see.strain': 'Por el pasapurés',
  'see.strain.said': 'Gire la manivela. Pieles y semillas quedan, cae fruta fina.',
  'see.strain.alt':
    'Un pasapurés sobre un cuenco. La manivela gira una pala sobre un colador, y pieles y semillas quedan arriba. La fruta fina cae en el cuenco.',
  'see.nickedRim': 'Mirar el borde',
  'see.nickedRim.said': 'Un borde entero sella. Una mella, y el tarro no sirve.',
  'see.nickedRim.alt':
    'Dos bordes de tarro. El de la izquierda es redondo y entero: úselo. El de la derecha tiene una mella y una raja: no puede sellar y quizá se rompa; apártelo.',
  'see.lidAway': 'La tapa, al otro lado',
  'see.lidAway.said': 'Levante antes el lado lejano, y el vapor se va lejos de usted.',
  'see.lidAway.alt':
    'La olla de conservas de lado. La tapa se inclina y se abre primero por el borde lejano, como un escudo. El vapor sale lejos de quien cocina. El lado cercano, al final.',
  'see.coolStand': 'Cinco minutos de espera',
  'see.coolStand.said': 'Fuego apagado, sin tapa. Cinco minutos en el agua quieta.',
  'see.coolStand.alt':
    'La olla de conservas sin fuego y sin tapa. Los tarros están en agua quieta mientras un reloj pequeño marca cinco minutos. Se calman, y así no escupen al sacarlos.',
} as const satisfies Record<keyof typeof english, string>;
