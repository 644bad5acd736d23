// When has enough been written? When all are done, or when one has succeeded and the rest took too long.

interface Outcome {
  ok: boolean;
}

/** The outcomes there are by then. A run must not reject. */
export async function settledEnough<T extends Outcome>(
  runs: readonly Promise<T>[],
  patienceMs: number,
): Promise<T[]> {
  const outcomes: T[] = [];
  let late = false;
  return new Promise((resolve) => {
    const look = () => {
      if (outcomes.length < runs.length && !(late && outcomes.some(({ ok }) => ok))) return;
      clearTimeout(timer);
      resolve([...outcomes]);
    };
    const timer = setTimeout(() => {
      late = true;
      look();
    }, patienceMs);
    for (const run of runs) {
      void run.then((outcome) => {
        outcomes.push(outcome);
        look();
      });
    }
    look();
  });
}
