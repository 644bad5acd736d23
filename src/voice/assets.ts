// Which files the ear needs, and how big they are, so that loading can say how far it is.

/** Name and size in bytes, as served before compression. */
export const EAR_FILES = {
  decoder: 213_870,
  modelDefinition: 2_953_980,
  means: 838_732,
  variances: 838_732,
  sendump: 1_969_024,
  transitions: 2_080,
  pronunciations: 3_273_722,
  runtime: 14_239_897,
  detector: 2_327_524,
  network: 3_339_914,
} as const;

export type EarFile = keyof typeof EAR_FILES;
/** Without the network the classic recogniser listens alone; without any of the others there is no ear. */
export type EarFiles = Record<Exclude<EarFile, 'network'>, ArrayBuffer> & { network: ArrayBuffer | Error };
