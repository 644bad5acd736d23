// The voice that is always there: sentences from the bundled synthesiser, played one after another.

import type { FliteVoice } from './flite.ts';
import type { Player, Playing } from './player.ts';
import type { Synthesiser } from './synthesiser.ts';
import type { Manner, Saying, Voice } from './voice.ts';

/** The recogniser understood every word of this one in trials (slt 96 %), so people are likely to as well. */
export const BEST_UNDERSTOOD: FliteVoice = 'rms';

export function createBundledVoice(
  synthesiser: Synthesiser,
  player: Player,
  speaker: () => FliteVoice = () => BEST_UNDERSTOOD,
): Voice {
  const make = (text: string, { rate, pitch }: Manner) =>
    synthesiser.make({ text, voice: speaker(), rate, pitch });

  function say(text: string, manner: Manner, onSound: () => void): Saying {
    let cut = false;
    let playing: Playing | null = null;
    let { loudness } = manner;

    async function run(): Promise<'spoken' | 'cut' | 'failed'> {
      const sentences = sentencesOf(text);
      let next = sentences[0] === undefined ? null : make(sentences[0], manner);
      for (let i = 0; next !== null; i++) {
        const made = await next;
        if (cut) return 'cut';
        if (made === null) return 'failed';
        playing = player.playBytes(made.wav, loudness, made.lastsMs);
        void playing.started.then(onSound);
        const following = sentences[i + 1];
        next = following === undefined ? null : make(following, manner); // made while this one sounds
        const played = await playing.done;
        if (cut || played === 'stopped') return 'cut';
        if (played === 'failed') return 'failed';
      }
      return 'spoken';
    }

    let settle: (outcome: 'cut') => void = () => {};
    const cutShort = new Promise<'cut'>((resolve) => (settle = resolve));
    return {
      done: Promise.race([run().catch(() => 'failed' as const), cutShort]),
      cut() {
        cut = true;
        playing?.stop();
        settle('cut');
      },
      loudness(to) {
        loudness = to;
        playing?.fade(to);
      },
    };
  }

  return {
    name: 'bundled',
    async load(onProgress = () => {}) {
      const stop = synthesiser.onLoading((news) => news.kind === 'loading' && onProgress(news.fraction));
      const can = await synthesiser.load();
      stop();
      return can;
    },
    say,
    prepare(text, manner) {
      for (const sentence of sentencesOf(text)) void make(sentence, manner);
    },
  };
}

/** The first sentence is heard while the second is still being made. */
export function sentencesOf(text: string): string[] {
  return text
    .split(/(?<=[.!?])\s+/)
    .map((sentence) => sentence.trim())
    .filter((sentence) => /[a-z0-9]/i.test(sentence));
}
