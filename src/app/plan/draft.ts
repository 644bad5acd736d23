// The planning page's memory: what the cook has chosen so far, in SI, and the request it makes.

import type { BatchRequest, BatchRequestInput } from '../../core/request.ts';
import { KG_PER_LB, M_PER_FT, M_PER_IN } from './units.ts';
import type { JarSize, Keep, Pectin, Product } from '../../core/types.ts';

export type AcidChoice = 'auto' | 'none' | 'bottled-lemon-juice' | 'citric-acid';

export interface Draft {
  fruit: string | null;
  product: Product;
  massKg: number | null;
  juiceMassKg: number | null;
  elevationM: number | null;
  jar: JarSize;
  keep: Keep;
  pectin: Pectin;
  /** null: what the plan advises. */
  sugarMassKg: number | null;
  acid: AcidChoice;
  acidVolumeMl: number | null;
  acidMassKg: number | null;
  solidsPct: number | null;
  potDiameterM: number | null;
  burnerW: number | null;
  /** What else the cook knows, as the request has it; what came with a link and has no field is kept, so that nothing is lost. */
  rest: Pick<BatchRequest, 'liquid' | 'measured' | 'alsoJars' | 'jarsPerLoad' | 'prices' | 'learned'> & {
    pot?: Omit<NonNullable<BatchRequest['pot']>, 'diameterM'>;
    burnerKind?: NonNullable<BatchRequest['burner']>['kind'];
  };
}

export const emptyDraft: Draft = {
  fruit: null,
  product: 'butter',
  massKg: null,
  juiceMassKg: null,
  elevationM: null,
  jar: 'half-pint',
  keep: 'shelf',
  pectin: 'none',
  sugarMassKg: null,
  acid: 'auto',
  acidVolumeMl: null,
  acidMassKg: null,
  solidsPct: null,
  potDiameterM: null,
  burnerW: null,
  rest: {},
};

/** What is still missing before there can be a plan, in the order of the page. */
export function missing(draft: Draft): ('fruit' | 'fruitMassKg' | 'elevationM')[] {
  return [
    ...(draft.fruit === null ? (['fruit'] as const) : []),
    ...(draft.massKg === null ? (['fruitMassKg'] as const) : []),
    ...(draft.elevationM === null ? (['elevationM'] as const) : []),
  ];
}

export function toRequest(draft: Draft): BatchRequestInput | null {
  if (draft.fruit === null || draft.massKg === null || draft.elevationM === null) return null;
  const { pot, burnerKind, ...rest } = draft.rest;
  return {
    fruit: draft.fruit,
    product: draft.product,
    fruitMassKg: draft.massKg,
    elevationM: draft.elevationM,
    jar: draft.jar,
    keep: draft.keep,
    pectin: draft.product === 'jam' || draft.product === 'jelly' ? draft.pectin : 'none',
    acid: acidOf(draft),
    ...(draft.sugarMassKg === null ? {} : { sugarMassKg: draft.sugarMassKg }),
    ...(draft.product === 'jelly' && draft.juiceMassKg !== null ? { juiceMassKg: draft.juiceMassKg } : {}),
    ...(draft.solidsPct === null ? {} : { targetSolubleSolidsPct: draft.solidsPct }),
    ...(draft.potDiameterM === null ? {} : { pot: { ...pot, diameterM: draft.potDiameterM } }),
    ...(draft.burnerW === null
      ? {}
      : { burner: { powerW: draft.burnerW, ...(burnerKind ? { kind: burnerKind } : {}) } }),
    ...rest,
  };
}

function acidOf(draft: Draft): NonNullable<BatchRequestInput['acid']> {
  switch (draft.acid) {
    case 'auto':
    case 'none':
      return { kind: draft.acid };
    case 'bottled-lemon-juice':
      return { kind: draft.acid, ...(draft.acidVolumeMl === null ? {} : { volumeMl: draft.acidVolumeMl }) };
    case 'citric-acid':
      return { kind: draft.acid, ...(draft.acidMassKg === null ? {} : { massKg: draft.acidMassKg }) };
  }
}

export function fromRequest(request: BatchRequest): Draft {
  const { pot, burner, liquid, measured, alsoJars, jarsPerLoad, prices, learned } = request;
  const acid = request.acid;
  const potRest = pot && {
    ...(pot.heightM === undefined ? {} : { heightM: pot.heightM }),
    ...(pot.emptyMassKg === undefined ? {} : { emptyMassKg: pot.emptyMassKg }),
  };
  return {
    fruit: request.fruit,
    product: request.product,
    massKg: request.fruitMassKg,
    juiceMassKg: request.juiceMassKg ?? null,
    elevationM: request.elevationM,
    jar: request.jar,
    keep: request.keep,
    pectin: request.pectin,
    sugarMassKg: request.sugarMassKg ?? null,
    acid: acid?.kind ?? 'auto',
    acidVolumeMl: acid?.kind === 'bottled-lemon-juice' ? (acid.volumeMl ?? null) : null,
    acidMassKg: acid?.kind === 'citric-acid' ? (acid.massKg ?? null) : null,
    solidsPct: request.targetSolubleSolidsPct ?? null,
    potDiameterM: pot?.diameterM ?? null,
    burnerW: burner?.powerW ?? null,
    rest: {
      ...(potRest && Object.keys(potRest).length > 0 ? { pot: potRest } : {}),
      ...(burner?.kind ? { burnerKind: burner.kind } : {}),
      ...Object.fromEntries(
        Object.entries({ liquid, measured, alsoJars, jarsPerLoad, prices, learned }).filter(
          ([, value]) => value !== undefined,
        ),
      ),
    },
  };
}

/** The September evening of the demo: one heap of damson plums, one of pears, one of crab apples, one kitchen. */
const kitchen = { elevationM: 1100 * M_PER_FT, potDiameterM: 11 * M_PER_IN, burnerW: 2500 };
export const examples: { name: 'damson' | 'pear' | 'crab-apple'; draft: Draft }[] = [
  {
    name: 'damson',
    draft: { ...emptyDraft, ...kitchen, fruit: 'damson', product: 'jam', massKg: 5.5 * KG_PER_LB },
  },
  {
    name: 'pear',
    draft: { ...emptyDraft, ...kitchen, fruit: 'pear', product: 'butter', massKg: 7 * KG_PER_LB },
  },
  {
    name: 'crab-apple',
    draft: { ...emptyDraft, ...kitchen, fruit: 'crab-apple', product: 'jelly', massKg: 4 * KG_PER_LB },
  },
];
