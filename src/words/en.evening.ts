// What is said of the evening's plan, in English: ICU message format, one sentence or two, the verb first.

export const eveningWords = {
  'evening.words': '{words}',
  'evening.wait.heat': 'Wait with the heat. I call you in {aboutMinutes}.',
  'evening.wait.heat.why': 'Put on now, it would be ready before the canner and your hands are free.',
  'evening.wait.fill': 'Keep the pot hot. The canner is free in {aboutMinutes}.',
  'evening.wait.fill.why': 'A pot can wait hot. A filled jar cannot: it must go into the canner at once.',
  'evening.wait.preheat': 'The canner can wait {aboutMinutes}. I call you.',
  'evening.wait.preheat.why': 'It need only be hot when the first jars are full.',
  'evening.foresee': 'In two minutes the {name} will want you. Finish what you do.',

  'screen.act.evening.wait.heat': 'Wait: no heat',
  'screen.act.evening.wait.fill': 'Keep pot hot',
  'screen.act.evening.wait.preheat': 'Wait a while',
  'screen.clock.evening.wait': 'to wait',
  'clock.evening.wait': 'to wait',
} as const satisfies Record<string, string>;
