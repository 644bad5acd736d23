// Every transition of a chart, by name; and which of them an event takes.

import type { AnyStateNode, AnyTransitionDefinition } from 'xstate';
import { batchMachine } from '../../../machines/batch/chart.ts';
import { cannerMachine } from '../../../machines/canner/chart.ts';
import type { Charts } from '../../../machines/kitchen/kitchen.ts';

type Chart = Charts[keyof Charts];

export interface Edge {
  name: string;
  /** The innermost states that it can be taken from. */
  from: string[];
  /** The innermost state that it leads to; null where it only notes or speaks. */
  to: string | null;
  event: string;
}

export interface Drawn {
  edges: Edge[];
  states: string[];
  nameOf(transition: AnyTransitionDefinition): string | undefined;
}

/** The chart as its edges. One that neither moves nor does anything only closes a word there: no edge. */
function drawn(chart: Chart): Drawn {
  const names = new Map<AnyTransitionDefinition, string>();
  const edges: Edge[] = [];
  const states: string[] = [];
  const walk = (node: AnyStateNode): void => {
    if (node.type === 'atomic') states.push(node.key);
    for (const [event, transitions] of node.transitions)
      transitions.forEach((transition, i) => {
        if (!transition.target && transition.actions.length === 0) return;
        const choice = transitions.length > 1 ? `#${i + 1}` : '';
        const name = `${node.path.join('.') || node.key} ${event}${choice}`;
        names.set(transition, name);
        edges.push({ name, event, from: leavesOf(node), to: entered(transition.target?.[0]) });
      });
    for (const child of Object.values(node.states)) walk(child);
  };
  walk(chart.root as AnyStateNode);
  return { edges, states, nameOf: (transition) => names.get(transition) };
}

function leavesOf(node: AnyStateNode): string[] {
  const children = Object.values(node.states) as AnyStateNode[];
  if (node.type === 'atomic') return [node.key];
  return children.flatMap(leavesOf);
}

/** Where one lands; a history state may lead anywhere in its chapter, so it counts as its beginning. */
function entered(node: AnyStateNode | undefined): string | null {
  if (!node) return null;
  if (node.type === 'history') return node.parent ? entered(node.parent) : null;
  const first = node.initial?.target?.[0] as AnyStateNode | undefined;
  return first ? entered(first) : node.key;
}

export const drawings: Record<keyof Charts, Drawn> = {
  batch: drawn(batchMachine),
  canner: drawn(cannerMachine),
};

export type Taken = (chart: keyof Charts, edge: string) => void;

/** The charts in force, telling which edge each event takes. */
export function watchedCharts(onTaken: Taken): Charts {
  const watch = <One extends Chart>(which: keyof Charts, chart: One): One => {
    const watched = Object.create(chart) as One;
    watched.transition = ((...args: Parameters<One['transition']>) => {
      const [snapshot, event] = args;
      for (const transition of chart.getTransitionData(snapshot as never, event as never)) {
        const name = drawings[which].nameOf(transition);
        if (name !== undefined) onTaken(which, name);
      }
      return chart.transition(...(args as [never, never, never]));
    }) as One['transition'];
    return watched;
  };
  return { batch: watch('batch', batchMachine), canner: watch('canner', cannerMachine) };
}
