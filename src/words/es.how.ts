// What full words add to a prompt, in Spanish, and what is left of it for a cook who asks for fewer.

import type { howWords as english } from './en.how.ts';

export const howWords = {
  'how.batch.setUp': 'Lave los tarros; tapas, cucharón y espumadera cerca. Diga: todo listo.',
  'how.batch.mash':
    '{acid, select, none {{pectin, select, powdered {Sin grumos secos. Diga: ya está machacada.} other {{into, select, peel {Se aplasta con el pulgar. Después el azúcar. Diga: todo está en la olla.} juice {Sin azúcar seco abajo. Diga: todo está en la olla.} other {Sin azúcar seco abajo. Diga: ya está machacada.}}}}} other {{acidVolumeMl, plural, =0 {Ácido cítrico: {acidMassKg}.} other {Jugo de limón embotellado: {acidVolumeMl}.}} {pectin, select, powdered {Sin grumos secos.} other {Sin azúcar seco abajo.}}}}',
  'how.batch.bringToBoil': 'Remueva sin parar. Sigue hirviendo mientras remueve.',
  'how.batch.simmer':
    '{hard, select, true {Burbujas grandes, sin tapa. Remueva a menudo, hasta el fondo.} other {Burbujas pequeñas y lentas, sin tapa, remueva hasta el fondo.}}',
  'how.batch.stir': 'Arrastre la cuchara por todo el fondo, también las esquinas.',
  'how.batch.nearlyThick': 'Ya borbotea espeso. Una cucharada forma montículo y se queda.',
  'how.batch.skim': 'Llévela a un lado y retírela. Fuera las bolsas de especias.',
  'how.batch.strain': 'Poca cantidad cada vez. Pieles y semillas se quedan. Diga: ya está colado.',
  'how.batch.blend': 'Un paño sobre la tapa, empiece despacio. Diga: ya está triturado.',
  'how.batch.spoonOnPlate': 'Pequeña, en el centro. Diga: está en el plato.',
  'how.batch.waitForPlate': 'De vuelta al frío con él. La olla sigue apagada.',
  'how.batch.loosen': 'Una o dos cucharadas cada vez, hirviendo, removiendo.',
  'how.batch.fill':
    '{tooMany, select, true {Saque burbujas. Solo {fits}: tape el resto. Diga cuántos.} other {Saque burbujas y rellene. Tapas nuevas. Diga cuántos, también los incompletos.}}',
  'how.batch.readyJars': 'Mire cada borde: sin mellas. Diga: los tarros están listos.',
  'how.batch.toTheCanner': 'Derechos, en la rejilla, sin tocarse. Diga: los tarros están dentro.',
  'how.batch.rest':
    '{more, select, true {Sobre un paño, separados. Diga: hay más en la olla.} other {Sobre un paño, separados dos dedos, sin corrientes.}}',
  'how.batch.checkSeals': 'Diga: todos los tarros sellaron. O diga cuántos no.',
  'how.batch.putAway': 'Qué y cuándo en la etiqueta. Diga: todo está guardado.',
  'how.canner.fillIt':
    'Caliente antes de que se llenen los tarros. Diga: la olla de conservas está al fuego.',
  'how.canner.loadNow': 'Rectos hacia abajo, sin tocarse. Diga: los tarros están dentro.',
  'how.canner.bringToFullBoil': 'Que hierva toda. Diga: está en pleno hervor a borbotones.',
  'how.canner.clockStarted': 'Quédese cerca. Avíseme enseguida: bajó el hervor.',
  'how.canner.served': 'Abra la tapa hacia el lado contrario: el vapor quema.',
  'how.canner.liftOut': 'Agarre bajo el aro. Sobre un paño, separados dos dedos.',

  'bare.batch.setUp': 'Prepare: {fruitMassKg}, {jars, plural, one {un tarro} other {# tarros}}.',
  'bare.batch.mash':
    '{pectin, select, powdered {Machaque, con {pectinMassKg} de pectina.} other {{into, select, fruit {Machaque, con {sugarMassKg} de azúcar.} juice {Deshaga {sugarMassKg} de azúcar.} other {Agua, {liquidMassKg}; luego azúcar, {sugarMassKg}.}}}}',
  'bare.batch.bringToBoil': 'A hervor a borbotones.',
  'bare.batch.simmer': '{hard, select, true {A hervor fuerte.} other {A fuego lento.}} {aboutMinutes}.',
  'bare.batch.stir': 'Remueva.',
  'bare.batch.nearlyThick': 'Casi.',
  'bare.batch.skim': 'Fuera del fuego, espume.',
  'bare.batch.strain': 'Apague y cuele.',
  'bare.batch.waitForPlate': 'Dos minutos.',
  'bare.batch.loosen': 'Apague y aligere.',
  'bare.canner.fillIt': 'Olla de conservas al fuego, a la mitad.',
} as const satisfies Record<keyof typeof english, string>;
