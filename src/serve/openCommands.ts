// Which commands a state of the charts leaves open, by its name: what the chart itself accepts there.

import { batchMachine } from '../../machines/batch/chart.ts';
import { cannerMachine } from '../../machines/canner/chart.ts';
import {
  batchCommands,
  cannerCommands,
  talkCommands,
  type CommandId,
} from '../../machines/dialogue/commands.ts';

interface ChartNode {
  key: string;
  parent?: ChartNode | undefined;
  states: Record<string, ChartNode>;
  ownEvents: readonly string[];
}

const ALL = Object.keys({ ...batchCommands, ...cannerCommands, ...talkCommands }) as CommandId[];
const TALK = Object.keys(talkCommands) as CommandId[];
const CHARTS: readonly ChartNode[] = [batchMachine.root, cannerMachine.root];

export function stateNames(): string[] {
  return CHARTS.flatMap((chart) => within(chart).map(({ key }) => key));
}

/** The commands open in every state of that name, and talk, which always is; null if no chart has such a state. */
export function openCommandsIn(state: string): CommandId[] | null {
  const nodes = CHARTS.flatMap((chart) => within(chart)).filter(({ key }) => key === state);
  if (nodes.length === 0) return null;
  const accepted = new Set(nodes.flatMap(acceptedIn));
  return ALL.filter((command) => accepted.has(command) || TALK.includes(command));
}

function within(chart: ChartNode): ChartNode[] {
  return Object.values(chart.states).flatMap((state) => [state, ...within(state)]);
}

/** Its own events, those of the states around it, and those of the states within it. */
function acceptedIn(node: ChartNode): readonly string[] {
  const around: string[] = [];
  for (let at: ChartNode | undefined = node; at; at = at.parent) around.push(...at.ownEvents);
  return [...around, ...within(node).flatMap(({ ownEvents }) => ownEvents)];
}
