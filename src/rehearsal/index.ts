// The public face of a rehearsal: a kitchen without fruit on the simulated stove.

export { act, filledOf, followed, runTo, told, type Act, type Heat } from './hands.ts';
export { review, type Finding } from './review.ts';
export { layOut, type RehearsedBatch, type Scene } from './scene.ts';
export { isPlace, look, news, places, type Noticed, type Place } from './senses.ts';
export { isUnhurried, nobodySpeaks, talked, type Talk, type TalkInput } from './unhurried.ts';
export { cannerSurfaceOf, surfaceOf, type Surface } from './surface.ts';
