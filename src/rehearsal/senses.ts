// What would you see, hear and smell now? As messages: the words are the language's.

import type { Message } from '../../machines/kitchen/effects.ts';
import { coversJars, depthM, massKg, smells, solubleSolidsPct } from '../stove/index.ts';
import type { Scene } from './scene.ts';
import { cannerSurfaceOf, surfaceOf } from './surface.ts';

/** Where to look. */
export const places = ['pot', 'scale', 'spoon', 'plate', 'canner', 'jars'] as const;
export type Place = (typeof places)[number];

export const isPlace = (name: string | undefined): name is Place =>
  (places as readonly string[]).includes(name ?? '');

/** A spoonful takes so long on the plate to tell. */
const TELLS_AFTER_MS = 90_000;

export function look(scene: Scene, place: Place): Message[] {
  switch (place) {
    case 'pot':
      return inThePot(scene);
    case 'scale':
      return [{ key: 'sense.scale', params: { massKg: massKg(scene.stove.pot.contents) } }];
    case 'spoon':
      return [{ key: 'sense.spoon', params: { depthM: depthM(scene.stove.pot) } }];
    case 'plate':
      return onThePlate(scene);
    case 'canner':
      return inTheCanner(scene);
    case 'jars':
      return onTheTowel(scene);
  }
}

/** Something to be noticed, where, and what it is about: the newer word about the same replaces the older. */
export interface Noticed {
  place: Place;
  of: string;
  message: Message;
}

/** What a cook in the room would notice: how pot and canner boil, how it falls from the spoon, a burnt smell, a mishap, the plate, the lids. */
export function news(scene: Scene): Noticed[] {
  const cooking = scene.hands.potDial > 0;
  const canning = scene.hands.cannerDial > 0;
  const [surface, spoonful, ...mishaps] = look(scene, 'pot');
  const [water, ...underIt] = look(scene, 'canner');
  const [lids] = look(scene, 'jars');
  const each = (place: Place, of: string, message: Message | undefined): Noticed[] =>
    message ? [{ place, of, message }] : [];
  return [
    ...(cooking ? each('pot', 'pot', surface) : []),
    ...(cooking && spoonful?.key !== 'sense.spoonful.thin' ? each('pot', 'spoonful', spoonful) : []),
    ...mishaps.filter(({ key }) => key !== 'sense.pot.foam').flatMap((one) => each('pot', one.key, one)),
    ...(canning ? each('canner', 'canner', water) : []),
    ...(canning ? underIt.flatMap((one) => each('canner', one.key, one)) : []),
    ...(scene.plate ? each('plate', 'plate', look(scene, 'plate')[0]) : []),
    ...(lids?.key === 'sense.jars.none' ? [] : each('jars', 'jars', lids)),
  ];
}

/** Foam this high is worth a word. */
const FOAM_M = 0.015;

function inThePot({ stove }: Scene): Message[] {
  const smell = smells(stove.pot);
  const share = solubleSolidsPct(stove.pot.contents) / stove.setsAtPct;
  const thickness = share >= 1 ? 'mounds' : share >= 0.88 ? 'coats' : 'thin';
  return [
    { key: `sense.pot.${surfaceOf(stove)}` },
    { key: `sense.spoonful.${thickness}` },
    ...(stove.pot.foamM > FOAM_M ? [{ key: 'sense.pot.foam' }] : []),
    ...(smell === 'good' ? [] : [{ key: `sense.pot.${smell}` }]),
    ...(stove.pot.spilledKg > 0 ? [{ key: 'sense.pot.ranOver' }] : []),
  ];
}

function onThePlate({ plate, at, stove }: Scene): Message[] {
  if (plate === null) return [{ key: stove.plateC < 5 ? 'sense.plate.cold' : 'sense.plate.warm' }];
  if (at - plate.at < TELLS_AFTER_MS) return [{ key: 'sense.plate.hot' }];
  const verdict = plate.verdict === 'holds' ? 'held' : plate.verdict === 'too thick' ? 'tooThick' : 'runny';
  return [{ key: `sense.plate.${verdict}` }];
}

function inTheCanner({ stove }: Scene): Message[] {
  const jarsIn = stove.jars.some(({ place }) => place === 'canner');
  return [
    { key: `sense.canner.${cannerSurfaceOf(stove)}` },
    ...(jarsIn ? [{ key: coversJars(stove.canner) ? 'sense.canner.covered' : 'sense.canner.low' }] : []),
    ...(stove.jars.some(({ place, state }) => place === 'canner' && state === 'broken')
      ? [{ key: 'sense.canner.broken' }]
      : []),
  ];
}

function onTheTowel({ stove }: Scene): Message[] {
  const out = stove.jars.filter(
    ({ place, filledL, state }) => place === 'out' && filledL > 0 && state === 'sound',
  );
  const down = out.filter(({ seal }) => seal === 'sealed').length;
  const broken = stove.jars.filter(({ state }) => state === 'broken').length;
  const hot = out.some(({ seal }) => seal === 'not yet');
  const lids: Message =
    out.length === 0
      ? { key: 'sense.jars.none' }
      : hot
        ? { key: 'sense.jars.hot', params: { jars: out.length } }
        : { key: 'sense.jars.lids', params: { down, up: out.length - down } };
  return [lids, ...(broken > 0 ? [{ key: 'sense.jars.broken', params: { jars: broken } }] : [])];
}
