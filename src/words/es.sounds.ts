// What each sound means, in Spanish: for the table of sounds and for the cook who asks.

import type { soundWords as english } from './en.sounds.ts';

export const soundWords = {
  'sound.heard': 'Una gota corta y aguda: se le ha entendido.',
  'sound.pardon': 'Un tono largo que baja: no se le ha entendido. Repítalo.',
  'sound.step': 'Tres tonos rápidos que suben: un paso está hecho y empieza el siguiente.',
  'sound.question': 'Dos tonos, el segundo sube: una pregunta espera su respuesta.',
  'sound.nudge': 'Dos golpes iguales: mire la olla. Remueva, compruebe o conteste.',
  'sound.clock-start': 'Cuatro tonos que suben, el último largo: corre el reloj de proceso.',
  'sound.clock-void':
    'Tres tonos lentos que bajan: el reloj de proceso ya no vale. Pleno hervor y tiempo entero otra vez.',
  'sound.time-up': 'Tres tonos agudos y seguidos: un reloj ha terminado.',
  'sound.danger': 'Diez pulsos rápidos y fuertes: actúe ya.',
} as const satisfies Record<keyof typeof english, string>;
