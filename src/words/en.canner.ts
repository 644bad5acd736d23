// What the canner says, in English: ICU message format, one sentence or two, the verb first.
//
// Quantities come as SI numbers in parameters named by their unit and are written plainly, {minutes};
// the catalogue says them in the cook's units: ...Kg, depthM, ...TempC, minutes, ...Minutes, volumeL,
// headspaceMm, elevationM, seconds. {aboutMinutes} rounds to what a person can hold and says "about".
// Plain numbers and the # of a plural are said in words up to ninety-nine.

export const cannerWords = {
  'canner.fillIt': 'Fill the canner half full. Rack in. Put the heat on.',
  'canner.fillIt.why': 'It must be hot when the jars are full: hot jars crack in cold water.',
  'canner.heating': 'Canner on. {aboutMinutes} to come hot.',
  'canner.askIfHot': 'Is the canner hot, just under a simmer?',
  'canner.hot': 'The canner is hot. Hold it there.',
  'canner.hot.why':
    'Hot jars go into hot water, near 180 degrees Fahrenheit, so that the glass does not crack.',
  'canner.loadNow': 'Jars into the canner now. Cover them by an inch or two.',
  'canner.loadNow.why': 'The fruit must go in hot. Water over the lids heats the whole jar evenly.',
  'canner.bringToFullBoil': 'Lid on, heat high. Bring it to a full rolling boil.',
  'canner.bringToFullBoil.why':
    'The time counts only from a full rolling boil, not from when the jars go in.',
  'canner.askIfFullBoil': 'Is the canner at a full rolling boil?',
  'canner.clockStarted':
    '{again, select, true {Clock again from the start.} other {Clock started.}} {minutes} at a full boil.',
  'canner.clockStarted.why':
    'The time is the published one for this food, this jar and your altitude. It must not be broken.',
  'canner.askIfItHolds':
    '{silences, plural, =0 {Still at a full boil? {minutes} to go.} one {Not confirmed. Look now: is the canner at a full boil?} other {# questions unanswered. Unconfirmed, the time does not count. Full boil?}}',
  'canner.itHolds': 'Good. {minutes} to go.',
  'canner.clockVoid': 'The clock is void. Full boil again, then the full {minutes}.',
  'canner.clockVoid.why':
    'Below a boil the middle of the jar may not get hot enough. So the whole time starts over.',
  'canner.served': 'Time is up. Heat off, lid off. Stand five minutes.',
  'canner.served.why':
    'Standing lets the pressure in the jars settle, so that they do not spit or lose their seal.',
  'canner.askPlainly': 'Time is up, unchecked. Did it boil hard the whole time?',
  'canner.liftOut': 'Lift jars straight up, never tilted. Say: the jars are out.',
  'canner.liftOut.why': 'Tilting or tightening can break the seal while it is still soft.',
  'canner.addWater': 'Add boiling water, not cold. Tell me if it kept boiling.',
  'canner.waterIn': 'Good. The clock runs on.',
  'canner.jarBroke': 'A jar broke. Leave it there till the end. Mind the glass.',
  'canner.jarBroke.why': 'Its fruit is lost. Pick the glass out when the water is cold.',
  'canner.whileAway': 'Away {awayMinutes}. Did it boil hard all along?',
} as const satisfies Record<string, string>;
