// A minute of reading aloud, sentence by sentence, from which the ear learns a voice.

import { useEffect, useState } from 'react';
import { READING_SENTENCES, type LearningEar } from '../../voice/learning.ts';
import type { AppProps } from '../actions.ts';
import { keepProfile } from '../learner.ts';

/** Twice not understood, a sentence is left out: the minute is not to become ten. */
const MOST_TRIES = 2;
/** A sentence is found and begun within this; a longer silence is told, for the cook may think of being heard. */
const SILENT_MS = 8_000;

type Stage =
  { kind: 'reading'; index: number; tries: number } | { kind: 'learning' } | { kind: 'over'; says: string };

interface ReadingAloudProps {
  learner: LearningEar;
  ear: AppProps['ear'];
  catalogue: AppProps['catalogue'];
}

export function ReadingAloud({ learner, ear, catalogue }: ReadingAloudProps) {
  const word = (key: string) => catalogue.text({ key });
  const stage = useReading(learner);
  const silent = useSilence(ear);
  if (stage.kind === 'learning') return <p className="lead">{word('screen.mic.learning')}</p>;
  if (stage.kind === 'over')
    return (
      <p className="lead" role="status">
        {word(stage.says)}
      </p>
    );
  const all = READING_SENTENCES.length;
  return (
    <>
      <p role="status">{word(silent ? 'screen.mic.reading.silent' : askingFor(stage.tries))}</p>
      <p className="read-this" role="status">
        {READING_SENTENCES[stage.index]}
      </p>
      <progress max={all} value={stage.index} aria-label={word('screen.mic.learn')} />
      <p>{catalogue.text({ key: 'screen.mic.reading.of', params: { now: stage.index + 1, all } })}</p>
    </>
  );
}

const askingFor = (tries: number) => (tries > 0 ? 'screen.mic.reading.again' : 'screen.mic.reading');

/** True once no word has come for a while; false again at the first one. */
function useSilence(ear: AppProps['ear']): boolean {
  const [silent, setSilent] = useState(false);
  useEffect(() => {
    let timer = 0;
    const waitOn = () => {
      window.clearTimeout(timer);
      timer = window.setTimeout(() => setSilent(true), SILENT_MS);
    };
    const stop = ear.subscribe(() => {
      const now = ear.now();
      if (now.kind !== 'listening' || !now.speech) return;
      setSilent(false);
      waitOn();
    });
    waitOn();
    return () => {
      stop();
      window.clearTimeout(timer);
    };
  }, [ear]);
  return silent;
}

function useReading(learner: LearningEar): Stage {
  const [stage, setStage] = useState<Stage>({ kind: 'reading', index: 0, tries: 0 });
  useEffect(() => {
    let here = true;
    const show = (next: Stage) => here && setStage(next);
    void readAll(learner, () => here, show).catch(() =>
      show({ kind: 'over', says: 'screen.mic.notLearned' }),
    );
    return () => {
      here = false;
      learner.stopReading();
    };
  }, [learner]);
  return stage;
}

async function readAll(
  learner: LearningEar,
  goesOn: () => boolean,
  show: (stage: Stage) => void,
): Promise<void> {
  for (let index = 0, tries = 0; index < READING_SENTENCES.length && goesOn();) {
    show({ kind: 'reading', index, tries });
    const reading = await learner.read(READING_SENTENCES[index] ?? '');
    if (reading === null) return show({ kind: 'over', says: 'screen.ear.refused' }); // the microphone went away
    const done = reading.kind === 'taken' || tries + 1 >= MOST_TRIES;
    index += done ? 1 : 0;
    tries = done ? 0 : tries + 1;
  }
  if (!goesOn()) return;
  show({ kind: 'learning' });
  const profile = await learner.learn();
  if (profile === null) return show({ kind: 'over', says: 'screen.mic.notLearned' });
  show({ kind: 'over', says: keepProfile(profile) ? 'screen.mic.learned' : 'screen.mic.learnedForNow' });
}
