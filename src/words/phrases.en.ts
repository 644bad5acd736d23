// The many ways a cook says each command, in English.
//
// Chosen to sound apart: a wrong "full boil" costs a jar its safety. So there is no "it is still
// boiling" beside "it stopped boiling", no "boil lost" beside "rolling boil", no "that is right" without
// its "yes"; and "not at a full boil yet" is in the book, or the ear would hear its last four words.

import type { Term } from '../../machines/dialogue/answers.ts';
import type { CommandId } from '../../machines/dialogue/commands.ts';
import { upTo } from './gaps.ts';
import { counted, numberWords } from './numbers.en.ts';
import { expand, type Filling, type Pattern } from './pattern.ts';
import { createPhraseBook, type PhraseLanguage } from './phrasebook.ts';
import {
  agoFillings,
  awayFillings,
  clockFillings,
  correctionPhrases,
  pastFillings,
} from './phrases.corrections.en.ts';
import { cannerFillings, ofTwoCanners } from './phrases.canners.en.ts';
import { jarPhrases } from './phrases.jars.en.ts';
import { depths, shares, sharesGone, temperatures, weights } from './readings.en.ts';
import { englishFigures, englishQuestions, englishSights } from './questions.en.ts';
import { englishTerms } from './terms.en.ts';

const fullBoil: Pattern[] = [
  '(rolling|full|full rolling) boil',
  "(it is|it's) at a (rolling|full|full rolling) boil",
  "(it is|it's) boiling hard",
  'we have a (rolling|full|full rolling) boil',
];
const notBoiling = ["(it is|it's) not boiling", "(it is|it's) not at a (rolling|full|full rolling) boil"];

const notThick = ["(it is|it's) not thick enough [yet]", 'not thick enough [yet]'];
const notYet: Pattern[] = [
  '[no] not yet',
  'not at a (rolling|full|full rolling) boil [yet]',
  "(it is|it's) not (boiling|at a (rolling|full|full rolling) boil) yet",
  "(the jars are|it is|it's) not ready yet",
  "(it is|it's) not done yet",
  ...notThick,
  ...notBoiling,
].map((pattern) => [pattern, { notYet: true }]);

// One command a line, like a table, however wide.
// prettier-ignore
const patterns: Record<CommandId, readonly Pattern[]> = {
  // The batch, in the order of the work.
  'setup.ready': ['everything is ready', 'all set', 'all is ready', 'setup is done', 'i have everything', 'everything is laid out'],
  'mash.done': ['(the fruit is|it is) (mashed|crushed)', 'the mash is done', 'i mashed it', 'the {f} is mashed', 'everything is in the pot'],
  'heat.on': ['[the] heat is on', '[the] heat is on (under|for) the {f}', '[the] burner is on', 'i turned on the heat', "(it is|it's) on the stove"],
  'heat.off': ['[the] heat is off', '[the] heat is off (under|for) the {f}', '[the] burner is off', 'i turned off the heat', "(it is|it's) off the stove"],
  'pot.rollingBoil': [...fullBoil, 'the (pot|{f}) is at a (rolling|full|full rolling) boil', 'i can not stir it down', 'the (pot|{f}) is boiling hard'],
  'pot.stirred': ['i stirred [it]', 'i stirred the (pot|{f})', 'stirring is done', 'just stirred'],
  'pot.thick': ["(it is|it's) thick enough", 'thick enough', 'the {f} is thick enough', 'it mounds on the spoon', 'the {f} is at its weight', 'the minute is up'],
  'pot.tooThick': ["[it is|it's] too thick", 'the {f} is too thick', "(it is|it's) much too stiff"],
  'pot.caught': ["(it is|it's) (scorching|burning)", 'it caught on the bottom', 'the {f} is (scorching|burning)', "(it is|it's) sticking to the bottom", 'it scorched', 'something burned'],
  'pot.changed': ['i changed pots', "(it is|it's) in a clean pot", 'moved to a clean pot', 'the {f} is in a clean pot'],
  'reading.taken': ['it weighs {weight}', 'depth {depth}', 'temperature {temp}', "(it is|it's) (at|down to) {share}", 'the {f} is (at|down to) {share}', 'it has boiled down to {share}', '{share} of it is left', '{gone} of it has boiled away'],
  'minutes.added': ['add {minutes:minute}', '{thirty:more minute}', 'give it {few:more minute}', 'add {few:minute} to the {f}'],
  'skim.done': ['[the] foam is off', 'i skimmed it', 'skimming is done', 'the {f} is skimmed'],
  'strain.done': ['i strained it', 'straining is done', "(it is|it's) strained", 'the {f} is strained', "(it is|it's) through the (mill|sieve)", 'the seeds are out'],
  'strain.skipped': ['skip the straining', 'no straining today', 'leave the skins in', 'leave the seeds in'],
  'blend.done': ["(it is|it's) (smooth|blended)", 'i blended it', 'blending is done', 'the {f} is (smooth|blended)'],
  'blend.skipped': ['skip the blending', 'no blending today', 'leave it chunky'],
  'plate.cold': ['the plate is cold', 'the plate is ready', 'i have a cold plate'],
  'plate.spooned': ['a spoonful is on the plate', "(it is|it's) on the plate", 'the {f} is on the plate', 'i put it on the plate'],
  'plate.held': ['[the] plate test passed', 'it (holds|held) [its shape]', 'the {f} holds its shape', 'the {f} passed the plate test', 'it passed the plate test', 'the line stays open', 'it wrinkles', "(it is|it's) thick enough", 'thick enough', 'the {f} is thick enough'],
  'plate.runny': ["[it is|it's] [still|too] runny", 'the {f} is [still|too] runny', "[it is|it's] [still] too thin", 'it (does|did) not hold', '[the] plate test failed', 'it runs together', 'the line closed', '[the] plate test did not pass', ...notThick],
  'plate.tooThick': ["[it is|it's] too thick", 'the {f} is too thick', "(it is|it's) much too stiff"],
  'pot.loosened': ['i loosened it', "(it is|it's) looser now", 'i thinned it', 'the {f} is loosened'],
  'jars.ready': ['the jars are ready', 'the jars are hot and ready', 'the jars are sterile', 'the jars have boiled their minutes'],
  'jars.filled': ['{jars:jar} filled', 'i filled {jars:jar}', '{jars:jar} of {f}', ['{jars:jar} and a small one', { spare: 1 }], ['{jars:jar} filled and a small one', { spare: 1 }], ['(only|just) a small one', { n: 0, spare: 1 }], ['no whole jar', { n: 0, spare: 1 }]],
  'pot.more': ['there is more in the pot', 'there is [more] {f} left in the pot', 'i have another load', 'now the second load'],
  'ping.heard': ['i heard a ping', 'a (lid|jar) (popped|pinged)', 'that was a ping', 'a lid went down'],
  'rest.over': ['the rest is over', 'the rest is done', 'the jars have rested', 'the jars have cooled down'],
  'seals.allHeld': ['all [the] jars sealed', 'all [the] jars are sealed', 'every jar sealed', 'every jar is sealed', 'every lid is down', 'all the {f} jars sealed', 'they all sealed'],
  'seals.failed': ['{jars} did not seal', '{jars:jar} did not seal', '{jars:lid} did not seal', ['not all [the] jars sealed', {}], ['not every jar sealed', {}], ['only {some:jar} sealed', {}], ['{some:jar} sealed', {}]],
  'jars.putAway': ['[the] jars are put away', 'everything is put away', 'they are on the shelf', 'all labelled and put away', 'the {f} is put away'],
  'jars.emptied': ['back into the pot', 'i emptied the jars', 'the {f} is back in the pot', 'start the filling again'],
  'jars.toFridge': ['put them in the fridge', 'they go in the fridge', 'the {f} goes in the fridge', 'keep this load in the fridge'],
  ...jarPhrases,
  'batch.held': ['hold everything', 'hold the (batch|{f})', 'pause everything', 'pause the {f}', 'someone is at the door', 'i have to leave the kitchen'],
  'batch.resumed': ['carry on', 'i am back', 'resume the (batch|{f})', 'carry on with the {f}'],
  'batch.stopped': ['give up on (this|the {f}) batch', 'abandon (this|the {f}) batch', 'throw (this batch|the {f}) away'],

  // The canner.
  'canner.filled': ['the canner is filled', 'the canner is half full', 'the water is in the canner', 'the rack is in'],
  'canner.heatOn': ['[the] heat is on', '[the] burner is on', 'i turned on the heat', '[the] heat is on under the canner', 'the canner is (on|heating)'],
  'canner.hot': ['the canner is hot', 'the canner is ready', 'the canner is simmering', 'the water is hot'],
  'jars.in': ['[the] jars are in', 'all [the] jars are in', 'the jars are in the (canner|water)', 'the {f} jars are in', 'the jars are covered'],
  'canner.fullBoil': [...fullBoil, 'the (canner|water) is at a (rolling|full|full rolling) boil', 'the (canner|water) is boiling hard'],
  'canner.boilDropped': ['the boil [has] (dropped|stopped)', 'boil dropped', 'the boil died down', 'it stopped boiling', "(it is|it's) not boiling any more", 'it went off the boil', 'the (water|canner) stopped boiling', 'no longer boiling', ...notBoiling],
  'canner.boilHolds': [...fullBoil, 'still at a (rolling|full|full rolling) boil', "(it is|it's) still at a (rolling|full|full rolling) boil", 'a full boil all along', 'the full boil is holding', 'the (canner|water) is [still] at a (rolling|full|full rolling) boil'],
  'canner.waterLow': ['[the] water is [getting] low', 'the canner is low on water', 'the jars are not covered', 'i can see the lids'],
  'canner.waterAdded': ['i added [boiling] water', 'i topped up the water', 'i topped up the canner', ['i added water and it kept boiling', { keptBoiling: true }], ['i added water and the boil dropped', { keptBoiling: false }]],
  'jar.broke': ['a jar (broke|cracked|burst)', 'a {f} jar (broke|cracked)', 'a jar of {f} (broke|cracked)', 'one jar broke', 'i have a broken jar'],
  'jars.out': ['[the] jars are out', 'all [the] jars are out', 'the {f} jars are out', 'i took the jars out', 'the jars are on the towel'],
  'canner.off': ['[the] heat is off', '[the] burner is off', 'i turned off the heat', '[the] heat is off under the canner', 'the canner is off', 'i turned off the canner'],

  // What was told before, put right.
  ...correctionPhrases,

  // The assistant itself.
  next: ['next', 'next step', 'next one please', 'done', "(that is|that's) done", "(i am|i'm) done", 'ready for the next step', 'i have finished', '[the] {f} is done', 'done with the {f}'],
  yes: ['yes', 'yes [that is|it is|it does|they are|i am] right', 'yes (that is|it is|it does|it did)', 'yes please', 'correct', 'yes i am sure'],
  no: ['no', 'no [that is|it is] wrong', 'no (it is|it does|it did) not', 'that is wrong', "that's wrong", 'no thank you', ...notYet],
  'go.back': ['go back', 'go back one step', 'undo that', 'take that back', 'that was a mistake', 'i did not say that'],
  repeat: ['say that again', 'repeat that', 'repeat', 'tell me again', 'what did you say', 'say it again [please]', 'again please'],
  'how.long': ['how long', 'how much time is left', 'how much longer', 'how long is left', 'how much time left', 'how much time do i have', 'how many minutes are left', 'how (long|much longer|much time is left) for the {f}', 'when will it be done', 'when will the {f} be done'],
  'what.next': ['what is next', "what's next", 'what do i do now', 'what comes next', 'what (should|do) i do next', 'what should i do', 'what is next for the {f}'],
  status: ['status', 'status of all batches', 'status report', 'where are we', 'how is everything', 'which batch [is this]', 'how is the {f}', 'status of the {f}'],
  plan: ['what is the plan', "what's the plan", 'tell me the plan', 'what is the plan for the evening'],
  'cook.away': ['i am away for {away}', 'i leave for {away}', 'i leave at {leave} for {away}'],
  'cook.here': ['i am here again', 'i am home again', 'i am not leaving'],
  help: ['help', 'help me', 'what can i say', 'what can you do', 'i need help'],
  why: ['why', 'why is that', 'tell me why', 'why should i do that'],
  'what.is': ['what is {term}'],
  ask: ['{question}', 'why (the|this) {figure}'],
  show: ['show me {sight}', 'what does {sight} look like', 'show me', 'show me how', 'what does it look like', ['hide the picture', { term: 'nothing' }]],
  'tell.more': ['tell me more', 'more about that', 'go on'],
  'say.more': ['say more', 'more words please', 'tell me every step'],
  'say.less': ['say less', 'fewer words please', 'i know this step'],
  'speak.slower': ['speak slower', 'speak more slowly', 'talk slower', 'not so fast please'],
  'speak.faster': ['speak faster', 'talk faster'],
  'speak.louder': ['speak louder', 'talk louder', 'speak up please', 'i can not hear you'],
  'speak.softer': ['speak softly', 'speak softer', 'not so loud please'],
  hush: ['hush', 'hush now', 'stop talking', 'be quiet', 'quiet please', 'please stop [talking]', 'shut up'],
  'switch.batch': ['switch to [the] {f}', 'start the {f} [batch]', '[the] {f} next', '[the] {f}', ['the canner', { fruit: 'canner' }], ['switch to the canner', { fruit: 'canner' }]],
};

const english: PhraseLanguage = {
  patterns: ofTwoCanners(patterns),
  numbered,
  gaps(name, noun, bounds) {
    switch (name) {
      case 'canner':
      case 'aCanner':
        return cannerFillings(name, bounds);
      case 'thirty':
        return upTo(30).map((n) => numbered(n, noun));
      case 'ago':
        return agoFillings();
      case 'past':
        return pastFillings(bounds.told);
      case 'clock':
        return clockFillings(bounds.clock);
      case 'away':
        return awayFillings();
      case 'leave':
        return clockFillings(bounds.leave);
      case 'some': // a number that means nothing certain: "four jars sealed" must never pass for "all"
        return upTo(bounds.jars).map((n) => ({ ...numbered(n, noun), slots: {} }));
      case 'term':
        return (Object.entries(englishTerms) as [Term, readonly string[]][]).flatMap(([term, forms]) =>
          forms.map((words) => ({ words, slots: { term } })),
        );
      case 'question':
        return asked(englishQuestions);
      case 'figure':
        return asked(englishFigures);
      case 'sight':
        return asked(englishSights);
      case 'weight':
        return weights(bounds);
      case 'depth':
        return depths(bounds);
      case 'temp':
        return temperatures(bounds);
      case 'share':
        return shares();
      case 'gone':
        return sharesGone();
      default:
        throw new Error(`The English phrase book knows no gap {${name}}.`);
    }
  },
};

/** What is asked after, by the key of its answer; each form may itself be a pattern. */
function asked(forms: Readonly<Record<string, readonly string[]>>): Filling[] {
  return Object.entries(forms).flatMap(([term, patterns]) =>
    patterns.flatMap((pattern) => expand(pattern, () => []).map(({ words }) => ({ words, slots: { term } }))),
  );
}

function numbered(n: number, noun: string | undefined): Filling {
  return { words: noun === undefined ? numberWords(n) : counted(n, noun), slots: { n } };
}

export const { allPhrases, openPhrases } = createPhraseBook(english);
