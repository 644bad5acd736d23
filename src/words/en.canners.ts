// What is said where there are two canners, in English: each sentence says which of them it is about.

import type { OwnForm } from '../kitchen/ofTwo.ts';

const the = '{which, select, second {second canner} other {first canner}}';

export const twoCannersWords = {
  'two.any': `${the}: {words}`,
  'two.canner.fillIt': `${the}: half full, rack in, heat on.`,
  'two.bare.canner.fillIt': `${the} on, half full.`,
  'two.how.canner.fillIt': `Hot before the jars are full. Say: the ${the} is heating.`,
  'two.canner.heating': `${the} on. {aboutMinutes} to come hot.`,
  'two.canner.askIfHot': `Is the ${the} hot, just under a simmer?`,
  'two.canner.hot': `The ${the} is hot. Hold it there.`,
  'two.canner.loadNow': `Jars into the ${the} now. Cover by an inch.`,
  'two.how.canner.loadNow': `Straight down, not touching. Say: jars are in the ${the}.`,
  'two.canner.bringToFullBoil': `${the}: lid on, heat high. Bring to a full rolling boil.`,
  'two.how.canner.bringToFullBoil': `Say: the ${the} is at a full rolling boil.`,
  'two.canner.askIfFullBoil': `Is the ${the} at a full rolling boil?`,
  'two.canner.clockStarted': `${the}: {again, select, true {clock again from the start.} other {clock started.}} {minutes} boiling.`,
  'two.how.canner.clockStarted': `Stay close. Tell me at once: the ${the} stopped boiling.`,
  'two.canner.askIfItHolds': `{silences, plural, =0 {${the} still at a full boil? {minutes} to go.} one {Not confirmed. Look: is the ${the} at a full boil?} other {${the}: # unanswered. Unconfirmed time does not count. Full boil?}}`,
  'two.canner.clockVoid': `${the}: clock void. Full boil again, then the full {minutes}.`,
  'two.canner.served': `${the}: time is up. Heat off, lid off. Stand five minutes.`,
  'two.canner.askPlainly': `${the}: time up, unchecked. Did it boil hard the whole time?`,
  'two.canner.liftOut': `Lift straight up, never tilted. Say: out of the ${the}.`,
  'two.canner.addWater': `${the}: boiling water, not cold. Tell me if it kept boiling.`,
  'two.canner.jarBroke': `${the}: jar broke. Leave it till the end. Mind the glass.`,
  'two.canner.whileAway': `Away {awayMinutes}. Did the ${the} boil hard all along?`,
  'two.batch.toTheCanner': `{jars, plural, one {# jar} other {# jars}} to the ${the} now, hot.{short, plural, =0 {} one { Short one: fridge.} other { Short ones: fridge.}}`,
  'two.evening.wait.preheat': `The ${the} can wait {aboutMinutes}. I call you.`,
  'two.how.batch.toTheCanner': `Upright, on the rack. Say: the jars are in the ${the}.`,
} as const satisfies Record<'two.any' | OwnForm, string>;
