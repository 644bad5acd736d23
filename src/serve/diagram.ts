// A statechart as text that a code host draws: its states and moves, read off the machine itself.

import type { AnyStateMachine, AnyStateNode } from 'xstate';

type Transition = AnyStateNode['transitions'] extends Map<string, (infer One)[]> ? One : never;

/** A page in Markdown: the moves as a Mermaid state diagram, then every state with its reason, in the chart's order. */
export function diagramPage(machine: AnyStateMachine, title: string): string {
  const states = statesBelow(machine.root);
  const names = namesOf(states);
  const nameOf = (node: AnyStateNode) => names.get(node) ?? ANY_STATE;
  const diagram = [
    'stateDiagram-v2',
    ...outline(machine.root, nameOf, '    '),
    ...(movesOf(machine.root, nameOf).length > 0 ? [`    ${ANY_STATE}: in any state`] : []),
    ...[...states, machine.root].flatMap((state) => movesOf(state, nameOf)).map((line) => `    ${line}`),
  ];
  return (
    [
      `# ${title}`,
      '<!-- Drawn from the chart by `npm run diagrams`. Change the chart, not this page. -->',
      ['```mermaid', ...diagram, '```'].join('\n'),
      ...anywhere(machine.root, states, nameOf),
      '## The states',
      states.map((state) => describe(state, nameOf)).join('\n'),
      '',
    ]
      .join('\n\n')
      .trimEnd() + '\n'
  );
}

function statesBelow(node: AnyStateNode): AnyStateNode[] {
  return Object.values(node.states).flatMap((state) => [state, ...statesBelow(state)]);
}

/** A state goes by its own name; two of one name by their whole path. */
function namesOf(states: readonly AnyStateNode[]): Map<AnyStateNode, string> {
  const isAlone = ({ key }: AnyStateNode) => states.filter((state) => state.key === key).length === 1;
  return new Map(states.map((state) => [state, isAlone(state) ? state.key : state.path.join('_')]));
}

const ANY_STATE = 'inAnyState';

type NameOf = (node: AnyStateNode) => string;

/** Which state holds which, and where each begins and ends. */
function outline(node: AnyStateNode, nameOf: NameOf, indent: string): string[] {
  const first = node.initial?.target[0];
  const inside = Object.values(node.states).flatMap((state) => {
    const name = nameOf(state);
    if (state.type === 'history') return [`${indent}${name}: where it was`];
    if (state.type === 'final') return [`${indent}${name} --> [*]`];
    if (Object.keys(state.states).length === 0) return [`${indent}${name}`];
    return [`${indent}state ${name} {`, ...outline(state, nameOf, `${indent}    `), `${indent}}`];
  });
  return first ? [`${indent}[*] --> ${nameOf(first)}`, ...inside] : inside;
}

function movesOf(state: AnyStateNode, nameOf: NameOf): string[] {
  return transitionsOf(state).flatMap((one) =>
    (one.target ?? []).map((target) => `${nameOf(state)} --> ${nameOf(target)}: ${label(one)}`),
  );
}

/** What may happen in any state, after the state's own rules for it. */
function anywhere(root: AnyStateNode, states: readonly AnyStateNode[], nameOf: NameOf): string[] {
  const lines = [...root.transitions].flatMap(([event, transitions]) => {
    const ownRule = states.filter((state) => state.transitions.has(event)).map(nameOf);
    const own = `- \`${event}\` meets a rule of its own first in ${ownRule.join(', ')}`;
    return [...transitions.map((one) => `- ${outcome(one, nameOf)}`), ...(ownRule.length > 0 ? [own] : [])];
  });
  return lines.length > 0 ? ['## In any state', lines.join('\n')] : [];
}

function describe(state: AnyStateNode, nameOf: NameOf): string {
  const staying = transitionsOf(state).filter((one) => !one.target?.length);
  const inside = state.parent?.parent ? `, in ${nameOf(state.parent)}` : '';
  const head = `- **${nameOf(state)}**${inside}${state.description ? `: ${state.description}` : ''}`;
  return [head, ...staying.map((one) => `  - ${outcome(one, nameOf)}`)].join('\n');
}

/** One thing that can happen and what comes of it, as a line of the list. */
function outcome(one: Transition, nameOf: NameOf): string {
  const targets = (one.target ?? []).map((target) => `to **${nameOf(target)}**`);
  const acts = one.actions.map((action) => `\`${nameIn(action)}\``);
  const what = [...targets, ...acts];
  return `\`${label(one)}\` → ${what.length > 0 ? what.join(', ') : 'nothing'}`;
}

/** In the order in which the chart lists them. */
function transitionsOf(state: AnyStateNode): Transition[] {
  return [...state.transitions.values()].flat();
}

function label(one: Transition): string {
  const others = one.source.transitions.get(one.eventType) ?? [];
  const guard = one.guard ? nameIn(one.guard) : others.length > 1 ? 'else' : null;
  return guard === null ? one.eventType : `${one.eventType} [${guard}]`;
}

/** @throws where a guard or an action has no name: then nobody could read it in the chart either */
function nameIn(named: unknown): string {
  if (typeof named === 'string') return named;
  const type = (named as { type?: unknown }).type;
  if (typeof type === 'string') return type;
  throw new Error('A guard or an action without a name cannot be drawn: name it in the vocabulary.');
}
