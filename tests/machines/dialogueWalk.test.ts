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

const hearings: Heard[] = [
  { kind: 'nothing' },
  ...spoken.flatMap(([command, slots]): Heard[] => {
    const words = command;
    const understood = { command, slots };
    return [
      { kind: 'heard', words, understood, confidence: 0.9 },
      { kind: 'heard', words, understood, confidence: 0.62 },
      { kind: 'unsure', words, understood, confidence: 0.45 },
    ];
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
      message: { key: 'canner.askIfItHolds', params: { minutes: 3 } },
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
  const { question, misses, actedAt, situation, more } = context;
  const pending = question && [
    question.message,
    [question.yes, question.no, question.silence, question.options],
    question.heard && [question.heard.kind, question.heard.understood, question.heard.confidence],
    question.begunAt !== null && at >= question.begunAt,
    question.saidToItsEnd,
    at >= question.until,
  ];
  const soon = at + SOONEST_ANSWER_MS;
  const clocks = [
    isAttentive(context, soon),
    isLongSilent(context, soon),
    actedAt !== null && soon - actedAt <= REFUSAL_MS,
  ];
  return JSON.stringify([value, pending, misses, situations.indexOf(situation), more, clocks]);
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

const describeEdge = (edge: Edge) =>
  `${String(edge.before.snapshot.value)} on ${JSON.stringify(edge.event)} did ${JSON.stringify(acts(edge))}`;

describe('every way the talk can go', () => {
  it('was walked through every state', () => {
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
    expect(edges.some((edge) => acts(edge).some((act) => isGrave(edge, act)))).toBe(true);
  });

  it('no silence, no lapse, no touch and no sound of ours ever does anything grave', () => {
    const quiet = edges.filter(({ event }) => event.type !== 'heard' || event.hearing.kind === 'nothing');
    expect(quiet.length).toBeGreaterThan(1000);
    for (const edge of quiet)
      expect(
        acts(edge).filter((act) => isGrave(edge, act)),
        describeEdge(edge),
      ).toEqual([]);
  });

  it('no "no" ever does anything grave', () => {
    const refusals = edges.filter((edge) => words(edge)?.understood.command === 'no');
    expect(refusals.length).toBeGreaterThan(1000);
    for (const edge of refusals)
      expect(
        acts(edge).filter((act) => isGrave(edge, act)),
        describeEdge(edge),
      ).toEqual([]);
  });

  it('nothing grave is done on words that were heard below the bar of safety', () => {
    const poorly = edges.filter(
      (edge) => (words(edge)?.confidence ?? 1) < 0.7 && words(edge)?.kind === 'unsure',
    );
    for (const edge of poorly) expect(acts(edge), describeEdge(edge)).toEqual([]);
    for (const edge of edges.filter(
      (one) => words(one)?.understood.command === 'yes' && (words(one)?.confidence ?? 0) < 0.7,
    ))
      expect(
        acts(edge).filter((act) => isGrave(edge, act)),
        describeEdge(edge),
      ).toEqual([]);
  });

  it('"next" never does anything grave', () => {
    for (const edge of edges.filter((one) => words(one)?.understood.command === 'next'))
      expect(
        acts(edge).filter((act) => isGrave(edge, act)),
        describeEdge(edge),
      ).toEqual([]);
  });

  it('a yes does only what the open question asked, once the mouth had begun to ask it', () => {
    for (const edge of edges.filter((one) => words(one)?.understood.command === 'yes')) {
      const { question } = edge.before.snapshot.context;
      for (const act of acts(edge)) {
        expect(act, describeEdge(edge)).toEqual(question?.yes);
        expect(question?.begunAt, describeEdge(edge)).not.toBeNull();
      }
    }
  });

  it('only what is open is ever done', () => {
    for (const edge of edges)
      for (const act of acts(edge)) {
        const { choices, last } = edge.before.snapshot.context.situation;
        const isOpen = choices.some(({ command, about }) => command === act.command && about === act.about);
        expect(isOpen || (act.command === 'go.back' && last !== null), describeEdge(edge)).toBe(true);
      }
  });

  it('every question lapses by itself, and no question is asked by time alone', () => {
    for (const edge of edges.filter(
      ({ event, before }) => event.type === 'tick' && event.at - before.at >= 16_000,
    )) {
      expect(edge.after.snapshot.context.question, describeEdge(edge)).toBeNull();
      expect(
        edge.effects.filter((effect) => effect.type === 'say'),
        describeEdge(edge),
      ).toEqual([]);
    }
  });

  it('never says two questions at once, and never says a thing on its own', () => {
    for (const edge of edges) {
      const questions = edge.effects.filter(
        (effect) => effect.type === 'say' && effect.slot === 'dialogue/question',
      );
      expect(questions.length, describeEdge(edge)).toBeLessThanOrEqual(1);
      if (edge.event.type !== 'heard' && edge.event.type !== 'tick' && edge.event.type !== 'saying')
        expect(
          edge.effects.filter((effect) => effect.type === 'say'),
          describeEdge(edge),
        ).toEqual([]);
    }
  });

  it('the cook can always be heard: a plain command acts from every state', () => {
    for (const edge of edges.filter((one) => words(one)?.understood.command === 'hush')) {
      expect(
        edge.effects.some((effect) => effect.type === 'query' && effect.command === 'hush'),
        describeEdge(edge),
      ).toBe(true);
    }
  });
});
