// What the kitchen as a whole says, in English: answers, corrections, and what happened while it was away.

export const kitchenWords = {
  'kitchen.nothingOn': 'Nothing is on the stove.',
  'kitchen.howLong.up': 'The time is up.',
  'kitchen.howLong.hours': '{hours, plural, one {One more hour.} other {# more hours.}}',
  'kitchen.howLong.minutes': '{minutes} more.',
  'kitchen.howLong.anyMoment': 'Any moment now.',
  'kitchen.howLong.about': '{aboutMinutes} more.',
  'kitchen.howLong.since': '{minutes} so far.',
  'kitchen.howLong.noClock': 'No clock is running. Take your time.',
  'kitchen.status':
    '{canner, select, true {The canner: {state}.} other {The {name}: {state}.}}{timed, select, true { {aboutMinutes} more.} other {}}',
  'kitchen.whatNext': '{doing}',
  'kitchen.noReason': 'I have no more to say about that.',
  'kitchen.takenBack': 'Taken back. {doing}.',
  'kitchen.nothingToTakeBack': 'There is nothing to take back.',
  'kitchen.putRight': 'Put right. {doing}.',
  'kitchen.tooLongAgo': 'That is too long ago. I can go back one hour.',
  'kitchen.beforeItBegan': 'That was before this batch began. Say when it was since then.',
  'kitchen.notThen': 'That does not fit what you told me before. Nothing is changed.',
  'kitchen.clockVoid': 'Then the clock does not count. {doing}. The full time starts over.',
  'kitchen.notServed':
    'Then the time was not served. These jars are not safe for the shelf: refrigerate, or empty and reheat.',
  'kitchen.clockReopened': 'Then the time was not served. {doing}.',
  'kitchen.nowWith': 'The {name}. {doing}.',
  'kitchen.nowWithCanner': 'The canner. {doing}.',
  'kitchen.named': '{name}: {words}',
  'kitchen.help': 'You can say: {sentences}.',
  'kitchen.helpNothing': 'Plan a batch first. Then I can help.',
  'kitchen.didItSleep': 'The clock jumped ahead {awayMinutes}. Did this device sleep? Say yes or no.',
  'kitchen.back': 'I was away {awayMinutes}.',
} as const satisfies Record<string, string>;
