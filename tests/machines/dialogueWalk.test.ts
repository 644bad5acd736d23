// Every way the talk can go: whatever is said, mumbled, left unsaid or answered, walked to the end.
//
// Breadth first over all states of the dialogue. Two states are the same when chart state, question,
// misses and everything that time decides (may it be answered, has it lapsed, ...) are the same.

import { describe, expect, it } from 'vitest';
import { vouching } from '../../machines/dialogue/certainty.ts';
import type { CommandId, Slots } from '../../machines/dialogue/commands.ts';
import type { Act, DialogueEffect, DialogueEvent, Heard, Situation } from '../../machines/dialogue/events.ts';
import { SOONEST_ANSWER_MS } from '../../machines/dialogue/questions.ts';
import { isAttentive, isLongSilent, REFUSAL_MS } from '../../machines/dialogue/rules.ts';
import { atRest, evening, open, step, type DialogueSnapshot } from './dialogueDriver.ts';

const situations: Situation[] = [
  {
    ...evening,
    choices: [
      open('plate.held', 'b1', true),
      open('plate.runny', 'b1'),
      open('seals.allHeld', 'b2', true),
      open('seals.failed', 'b2'),
      open('batch.stopped', 'b1'),
      open('batch.stopped', 'b2'),
      open('canner.boilHolds', 'c1', true),
      open('canner.boilDropped', 'c1'),
      open('canner.waterAdded', 'c1'),
    ],
    last: 'canner.boilDropped',
  },
  {
    ...evening,
    choices: [
      open('plate.held', 'b1', true),
      open('plate.held', 'b2', true),
      open('pot.rollingBoil', 'b2'),
      open('canner.fullBoil', 'c1', true),
    ],
    focus: 'b1',
    last: 'plate.runny',
  },
];

const spoken: [CommandId, Slots][] = [
  ['yes', {}],
  ['no', {}],
  ['no', { notYet: true }],
  ['next', {}],
  ['next', { fruit: 'plum' }],
  ['go.back', {}],
  ['hush', {}],
  ['switch.batch', { fruit: 'plum' }],
  ['switch.batch', { fruit: 'canner' }],
  ['plate.held', {}],
  ['seals.allHeld', {}],
  ['seals.failed', {}],
  ['batch.stopped', {}],
  ['canner.fullBoil', { either: true }],
  ['canner.boilHolds', {}],
  ['canner.boilDropped', {}],
  ['canner.waterAdded', {}],
];

const answers: CommandId[] = ['yes', 'no', 'switch.batch', 'canner.fullBoil'];

const hearings: Heard[] = [
  { kind: 'nothing' },
  ...spoken.flatMap(([command, slots]): Heard[] => {
    const understood = { command, slots };
    const heard = (confidence: number, kind: 'heard' | 'unsure'): Heard => ({
      kind,
      words: command,
      understood,
      confidence,
    });
    const between = answers.includes(command) ? [heard(0.62, 'heard')] : [];
    return [heard(0.9, 'heard'), ...between, heard(0.45, 'unsure')];
  }),
];

interface Place {
  snapshot: DialogueSnapshot;
  at: number;
}

function eventsFrom({ snapshot, at }: Place): DialogueEvent[] {
  const { question, situation } = snapshot.context;
  const soon = at + SOONEST_ANSWER_MS;
  const asked = question
    ? [{ type: 'saying', at: soon, message: question.message, about: null } as const]
    : [];
  return [
    ...hearings.map((hearing) => ({ type: 'heard', at: soon, hearing }) as const),
    ...asked,
    {
      type: 'saying',
      at: soon,
      message: { key: 'canner.askIfItHolds', params: { minutes: 3, silences: 0 } },
      about: 'c1',
    },
    {
      type: 'saying',
      at: soon,
      message: { key: 'dialogue.wasThat', params: { words: 'stale' } },
      about: null,
    },
    { type: 'saying', at: soon, message: { key: 'canner.itHolds' }, about: 'c1' },
    { type: 'spoke', at: soon },
    { type: 'hushed', at: soon },
    { type: 'touched', at: soon },
    ...[1, 16, 61].map((s) => ({ type: 'tick', at: at + s * 1000 }) as const),
    ...situations
      .filter((other) => other !== situation)
      .map((other) => ({ type: 'open', at: soon, situation: other }) as const),
  ];
}

function keyOf({ snapshot: { value, context }, at }: Place): string {
  const { question, misses, actedAt, situation } = context;
  const place = [value, misses, situations.indexOf(situation)];
  const soon = at + SOONEST_ANSWER_MS;
  // While a question is open it alone decides; how long ago we spoke or acted matters only without one.
  if (question === null)
    return JSON.stringify([
      ...place,
      isAttentive(context, soon),
      isLongSilent(context, soon),
      actedAt !== null && soon - actedAt <= REFUSAL_MS,
    ]);
  const { message, yes, no, silence, options, heard } = question;
  const gaveRise = heard && [heard.kind, heard.understood, heard.confidence];
  const clocks = [question.begunAt !== null && at >= question.begunAt, at >= question.until];
  return JSON.stringify([...place, message, yes, no, silence, options, gaveRise, clocks]);
}

interface Edge {
  before: Place;
  event: DialogueEvent;
  after: Place;
  effects: DialogueEffect[];
}

function walk(): { edges: Edge[]; places: number; states: Set<string> } {
  const edges: Edge[] = [];
  const [first] = situations;
  if (!first) throw new Error('no situation to start from');
  const start = { snapshot: step(atRest(), { type: 'open', at: 0, situation: first })[0], at: 0 };
  const seen = new Set([keyOf(start)]);
  const queue: Place[] = [start];
  for (let before = queue.shift(); before; before = queue.shift()) {
    for (const event of eventsFrom(before)) {
      const [snapshot, effects] = step(before.snapshot, event);
      const after = { snapshot, at: event.at };
      edges.push({ before, event, after, effects });
      const key = keyOf(after);
      if (seen.has(key)) continue;
      seen.add(key);
      queue.push(after);
    }
  }
  return {
    edges,
    places: seen.size,
    states: new Set(edges.map(({ after }) => String(after.snapshot.value))),
  };
}

const { edges, places, states } = walk();
const acts = ({ effects }: Edge) => effects.filter((effect): effect is Act => effect.type === 'act');
const words = ({ event }: Edge) =>
  event.type === 'heard' && event.hearing.kind !== 'nothing' ? event.hearing : null;

/** Acts by which an unsafe jar could come to the shelf, or a batch be lost. */
function isGrave(edge: Edge, act: Act): boolean {
  const reopens =
    act.command === 'go.back' && edge.before.snapshot.context.situation.last === 'canner.boilDropped';
  return (
    vouching.has(act.command) || act.command === 'batch.stopped' || act.slots.keptBoiling === true || reopens
  );
}

function told(edge: Edge): string {
  return `${String(edge.before.snapshot.value)} on ${JSON.stringify(edge.event)} did ${JSON.stringify(acts(edge))}`;
}

/** Those of the edges that break a rule, told so that they can be followed. */
function breaking(
  which: (edge: Edge) => boolean,
  breaks: (edge: Edge) => boolean,
): { of: number; told: string[] } {
  const those = edges.filter(which);
  return { of: those.length, told: those.filter(breaks).map(told) };
}

const doesSomethingGrave = (edge: Edge) => acts(edge).some((act) => isGrave(edge, act));
const says = ({ effects }: Edge) => effects.filter((effect) => effect.type === 'say');
const isCommand = (command: CommandId) => (edge: Edge) => words(edge)?.understood.command === command;

describe('every way the talk can go', () => {
  it('was walked through every state, and something grave was done on the way', () => {
    expect([...states].sort()).toEqual(
      [
        'answering',
        'askingBack',
        'choosingBatch',
        'confirming',
        'listening',
        'offeringChoices',
        'offeringTouch',
      ].sort(),
    );
    expect(places).toBeGreaterThan(200);
    expect(edges.some(doesSomethingGrave)).toBe(true);
  });

  it('no silence, no lapse, no touch and no sound of ours ever does anything grave', () => {
    const quiet = breaking((edge) => words(edge) === null, doesSomethingGrave);
    expect(quiet.of).toBeGreaterThan(500);
    expect(quiet.told).toEqual([]);
  });

  it('no "no" ever does anything grave', () => {
    const refusals = breaking(isCommand('no'), doesSomethingGrave);
    expect(refusals.of).toBeGreaterThan(500);
    expect(refusals.told).toEqual([]);
  });

  it('nothing grave is done on words heard in doubt, nor on a yes heard less surely than safety asks', () => {
    expect(breaking((edge) => words(edge)?.kind === 'unsure', doesSomethingGrave).told).toEqual([]);
    const weakYes = breaking(
      (edge) => isCommand('yes')(edge) && words(edge)?.confidence === 0.62,
      doesSomethingGrave,
    );
    expect(weakYes.of).toBeGreaterThan(200);
    expect(weakYes.told).toEqual([]);
  });

  it('what a jar goes to the shelf by is done only in answer to a question about it, heard in full or a yes', () => {
    const asksFirst = (act: Act) =>
      ['canner.fullBoil', 'canner.boilHolds', 'plate.held', 'seals.allHeld'].includes(act.command);
    const done = breaking(
      (edge) => acts(edge).some(asksFirst),
      (edge) => {
        const { question } = edge.before.snapshot.context;
        return typeof question?.begunAt !== 'number' || question.inFull?.command !== acts(edge)[0]?.command;
      },
    );
    expect(done.of).toBeGreaterThan(50);
    expect(done.told).toEqual([]);
  });

  it('"next" never does anything grave', () => {
    expect(breaking(isCommand('next'), doesSomethingGrave).told).toEqual([]);
  });

  it('a yes does only what the open question asked, once the mouth had begun to ask it', () => {
    const wrong = breaking(isCommand('yes'), (edge) => {
      const { question } = edge.before.snapshot.context;
      const asked = JSON.stringify(question?.yes);
      return acts(edge).some((act) => JSON.stringify(act) !== asked || typeof question?.begunAt !== 'number');
    });
    expect(wrong.told).toEqual([]);
  });

  it('only what is open is ever done', () => {
    const wrong = breaking(
      () => true,
      (edge) => {
        const { choices, last } = edge.before.snapshot.context.situation;
        const isOpen = (act: Act) =>
          choices.some((one) => one.command === act.command && one.about === act.about);
        return !acts(edge).every((act) => isOpen(act) || (act.command === 'go.back' && last !== null));
      },
    );
    expect(wrong.told).toEqual([]);
  });

  it('every question lapses by itself, in silence', () => {
    const late = breaking(
      ({ event, before }) => event.type === 'tick' && event.at - before.at >= 16_000,
      (edge) => edge.after.snapshot.context.question !== null || says(edge).length > 0,
    );
    expect(late.of).toBeGreaterThan(100);
    expect(late.told).toEqual([]);
  });

  it('asks one question at a time, and speaks only when spoken to', () => {
    const doubled = breaking(
      () => true,
      (edge) =>
        edge.effects.filter((effect) => effect.type === 'say' && effect.slot === 'dialogue/question').length >
        1,
    );
    expect(doubled.told).toEqual([]);
    const unbidden = breaking(
      ({ event }) => ['spoke', 'hushed', 'touched', 'open', 'tick', 'saying'].includes(event.type),
      (edge) => says(edge).length > 0,
    );
    expect(unbidden.told).toEqual([]);
  });

  it('"hush" is heard in every state', () => {
    const deaf = breaking(
      isCommand('hush'),
      ({ effects }) => !effects.some((effect) => effect.type === 'query' && effect.command === 'hush'),
    );
    expect(deaf.of).toBeGreaterThan(100);
    expect(deaf.told).toEqual([]);
  });
});
