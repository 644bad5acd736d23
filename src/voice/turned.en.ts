// The same sentence turned into a question, a no or a not yet: it must not pass for the statement.
//
// Who asks "is it at a rolling boil" has not said that it is. What is said must sound more like the statement than
// like these, or it is asked back. Common practice, no source: ways in which people do turn a statement.

/** Said before any statement, these turn it. */
const BEFORE = [
  'is',
  'is it',
  'is that',
  'are',
  'has',
  'not',
  'do not',
  'no',
  'when',
  'if',
  'almost',
  'nearly',
  'wait for',
  'until',
];
/** Said after the verb, these take it back. */
const AFTER_VERB = ['not', 'almost', 'nearly', 'never', 'not quite'];

const turns: readonly (readonly [statement: RegExp, turned: readonly string[]])[] = [
  [/^(?:it is|it's|that was) (.+)$/, ['is it $1', 'is that $1', 'was it $1', 'was that $1', 'it will be $1']],
  [/^(?:it is|it's) at (an? .+)$/, ['is that $1', 'is this $1', 'what about $1', 'if that is $1']],
  [
    /^(?:an? )?((?:full )?rolling boil|full boil)$/,
    ['is that a $1', 'is it a $1', 'what is a $1', 'no $1 yet'],
  ],
  [
    /^(.+?) (is|are|has|have|was|went) (.+)$/,
    ['$2 $1 $3', '$1 will be $3', '$1 is to be $3', '$1 should be $3'],
  ],
  [
    /^(all .*jars|they all|every \w+) sealed$/,
    ['are $1 sealed', 'is $1 sealed', 'did $1 seal', 'have $1 sealed'],
  ],
  [/^(?:the )?plate test passed$/, ['did the plate test pass', 'will the plate test pass']],
  [/^(.+?) passed the plate test$/, ['did $1 pass the plate test', 'has $1 passed the plate test']],
  [
    /^(.+?) holds?( its shape)?$/,
    ['does $1 hold$2', 'will $1 hold$2', '$1 never holds$2', '$1 hardly holds$2'],
  ],
  [/^(.+?) held( its shape)?$/, ['did $1 hold$2', 'has $1 held$2', '$1 never held$2', '$1 hardly held$2']],
  [/^(.+?) wrinkles$/, ['does $1 wrinkle', '$1 never wrinkles']],
  [/^(.+?) stays open$/, ['does $1 stay open']],
  [/^(.+?) (dropped|stopped)$/, ['did $1 drop', 'did $1 stop', '$1 did not drop', '$1 did not stop']],
  [/^we have (.+)$/, ['do we have $1', 'we will have $1']],
  [/^i took (.+)$/, ['did i take $1', 'have you taken $1', 'i will take $1']],
];

/** The turned forms of a statement; some are no good English, and fit nothing that is said. */
export function turned(statement: string): string[] {
  const forms = turns.flatMap(([pattern, replaced]) =>
    replaced.flatMap((form) => (pattern.test(statement) ? [statement.replace(pattern, form)] : [])),
  );
  const taken = /^(.+? (?:is|are)|it's) (.+)$/.exec(statement);
  return [
    ...forms,
    ...BEFORE.map((words) => `${words} ${statement}`),
    ...(taken ? AFTER_VERB.map((words) => `${taken[1]} ${words} ${taken[2]}`) : []),
  ];
}

const whole: readonly (readonly [statement: RegExp, parts: readonly string[]])[] = [
  [
    /^all (?:the )?(.+)$/,
    ['half the $1', 'half of the $1', 'most $1', 'most of the $1', 'some $1', 'some of the $1'],
  ],
  [
    /^every (jar|lid)(?: is)? (.+)$/,
    [
      'half the $1s are $2',
      'most $1s are $2',
      'most of the $1s are $2',
      'some $1s are $2',
      'some of the $1s are $2',
    ],
  ],
  [
    /^they all (.+)$/,
    ['half of them $1', 'most of them $1', 'some of them $1', 'they nearly all $1', 'they almost all $1'],
  ],
];

/** What says it of a part only, where a statement says it of all or every one; "nearly all" and "not all" are among `turned`. */
export function parts(statement: string): string[] {
  return whole.flatMap(([pattern, replaced]) =>
    replaced.flatMap((form) => (pattern.test(statement) ? [statement.replace(pattern, form)] : [])),
  );
}
