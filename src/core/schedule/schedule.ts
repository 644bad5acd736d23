/**
 * Our own scheduler: a first answer at once, better ones as long as there is
 * time, and the proof when nothing better is possible.
 */

import { encode } from './encode.ts';
import { problemOf } from './problem.ts';
import { Thinking } from './thinking.ts';
import type { Effort, Project, Schedule } from './types.ts';

export function schedule(project: Project, effort: Effort): Schedule {
  const began = effort.now();
  const problem = problemOf(project);
  const encoded = encode(problem);
  if (!encoded?.engine.begin()) return { kind: 'none', proven: true, by: 'own' };
  const thinking = new Thinking(problem, encoded, effort, began);
  thinking.begin();
  thinking.improve();
  return thinking.answer;
}
