// The whole walk: a canner is empty but once in the life of a kitchen, so each way to begin with it has a kitchen.

import { openPage } from './openedPage.ts';
import { requests } from './requests.ts';
import { everyEdge, everyState, walk, type Walked, type WalkOptions } from './walk.ts';

const otherBeginning = (edge: string) => edge === 'canner: empty canner.heatOn';

export async function walkAll(
  folder: string,
  { goals = () => true, ...options }: Omit<WalkOptions, 'requests'>,
): Promise<Walked> {
  const kitchens = [
    (edge: string) => goals(edge) && otherBeginning(edge),
    (edge: string) => goals(edge) && !otherBeginning(edge),
  ];
  const walks: Walked[] = [];
  for (const wanted of kitchens) {
    const page = await openPage(folder);
    try {
      walks.push(await walk(page, { requests, ...options, goals: wanted }));
    } finally {
      await page.close();
    }
  }
  return together(walks, goals);
}

function together(walks: readonly Walked[], goals: (edge: string) => boolean): Walked {
  const states = new Set(walks.flatMap((one) => one.states.visited));
  const edges = new Set(walks.flatMap((one) => one.edges.visited));
  const sum = (of: (one: Walked) => number) => walks.reduce((total, one) => total + of(one), 0);
  return {
    states: { visited: [...states], left: everyState().filter((state) => !states.has(state)) },
    edges: { visited: [...edges], left: everyEdge().filter((edge) => goals(edge) && !edges.has(edge)) },
    steps: sum(({ steps }) => steps),
    batches: sum(({ batches }) => batches),
    wrong: walks.flatMap(({ wrong }) => wrong),
  };
}
