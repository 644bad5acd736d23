// Puts the house together: the edges into the kitchen, the kitchen onto the page.

import { readAnchor, writeAnchor } from '../kitchen/anchor.ts';
import { browserSources } from '../kitchen/clock-sources.ts';
import { KitchenClock } from '../kitchen/clock.ts';
import { openPlanner } from '../kitchen/evening/openPlanner.ts';
import { Journal, talkFrom } from '../kitchen/journal.ts';
import { LiveKitchen } from '../kitchen/live.ts';
import type { Catalogue, Ear, LogEntry } from '../kitchen/ports.ts';
import { createReminder } from '../notify/reminder.ts';
import type { SpeakingMouth } from '../sound/mouth.ts';
import { openMouth } from '../sound/openMouth.ts';
import { lead, type Lead, type Role } from '../store/lead.ts';
import type { DurableLog } from '../store/log.ts';
import { kitchenLog } from '../store/open-log.ts';
import { createEar } from '../voice/ear.ts';
import { handFirst } from './handFirst.ts';
import { tongueOf } from './tongue.ts';
import { isLearner, keptProfile } from './learner.ts';
import { mannersOf, granted, speakersOf } from './speech.ts';
import type { Preferences } from './preferences.ts';
import { inItsOwnTask } from './inItsOwnTask.ts';
import { openPacing, type Pacing } from './rehearsal/pacing.ts';
import { tieMouthToEar } from './speaking.ts';
import { isCapable } from '../solver/capable.ts';
import { openProver } from '../solver/openProver.ts';
import { openQuiet } from './quiet.ts';
import { eveningPreference } from './evening/preference.ts';
import type { Which } from './which.ts';

export interface House {
  live: LiveKitchen;
  ear: Ear;
  mouth: SpeakingMouth;
  catalogue: () => Catalogue;
  log: () => DurableLog;
  lead: Lead;
  /** Of a rehearsal that runs quicker than the wall; null where the clock keeps its pace. */
  pacing: Pacing | null;
  /** Hears every entry that has acted, from now on. */
  onEntry(listener: (entry: LogEntry) => void): void;
  /** Sound and microphone, from a gesture or where the browser lets us without one. */
  start(): Promise<void>;
  /** True when the page may sound already, without a gesture. */
  startIfAllowed(): Promise<boolean>;
}

export async function openHouse(which: Which, preferences: Preferences): Promise<House> {
  const settings = preferences.now;
  const tabs = lead(which.name);
  const role = await tabs.settled;
  let log = kitchenLog(which.name, role === 'leading' ? 'cook' : 'look');
  const kept = Promise.all([log.readNote('anchor'), log.readNote('talk')]);
  log.readAhead();
  const [keptAnchor, keptTalk] = await kept;
  const anchor = readAnchor(keptAnchor);
  const clock = new KitchenClock({
    sources: browserSources,
    pace: which.pace,
    anchor,
    keepAnchor: (tie) => void log.writeNote('anchor', writeAnchor(tie)),
  });
  clock.setPace(which.pace); // the time away went by at the pace it was left at
  const ear = createEar();
  const pacing: Pacing | null =
    which.practice && which.pace > 1 && which.stove === 'here'
      ? openPacing({
          clock,
          pace: which.pace,
          asked: () => live.view.question !== null,
          wall: () => performance.now(),
          after: (ms, call) => void setTimeout(call, ms),
        })
      : null;
  const mouth = openMouth({
    voice: which.voice,
    speaker: () => speakersOf(settings().speech).bundled,
    settings: { language: settings().language },
  });
  const quiet = openQuiet({ ear, mouth, after });
  const tongue = () => tongueOf(settings());
  const catalogue = () => tongue().catalogue;
  const word = (key: string) => catalogue().text({ key });
  const reminder = createReminder((says) => live.trouble('reminder', says, false));
  const entryListeners = new Set<(entry: LogEntry) => void>();
  const journal = journalOf(() => log, keptTalk);
  const live = new LiveKitchen({
    clock: handFirst(clock),
    wall: () => performance.timeOrigin + performance.now(), // a clock that is set moves no question and no repeat
    ear,
    mouth: pacing?.over(mouth) ?? mouth,
    reminder,
    catalogue,
    units: () => settings().units,
    phrases: (open, fruits, bounds) => tongue().openPhrases(open, fruits, bounds),
    sayIt: (command, canner) => tongue().sayIt(command, canner),
    pace: () => which.pace,
    practice: which.practice,
    madeBy: import.meta.env['VITE_MADE_BY'] as string | undefined,
    onEntry: (entry) => {
      tabs.post(entry);
      for (const listener of entryListeners) listener(entry);
    },
    planner: openPlanner(
      isCapable(navigator, WebAssembly)
        ? openProver({ leave: quiet, after, failed: solverFailed })
        : undefined,
    ),
    later: inItsOwnTask(),
    eveningSettings: eveningPreference.now,
    setAway: (away) => eveningPreference.change({ away }),
    manners: () => mannersOf(settings().speech),
    journal,
    wish(wish) {
      const { speech } = settings();
      const { patch, says } = granted(speech, wish);
      preferences.change({ speech: { ...speech, ...patch } });
      return says;
    },
  });
  tieMouthToEar(mouth, ear, preferences);
  mouth.onState((state) =>
    state.kind === 'mute' ? live.trouble('mute', () => whyMute(state.why), false) : live.calm('mute'),
  );
  ear.onState((state) => pacing?.hears(state));
  ear.onHearing((hearing) => pacing?.heard(hearing));
  ear.onState((state) =>
    state.kind === 'refused'
      ? live.trouble('ear', () => word(`screen.says.ear.${state.why}`), false)
      : live.calm('ear'),
  );

  tellOfOldProfile(ear, live, word);

  eveningPreference.subscribe(() => live.replan());
  let started = false;
  let heard = tongue().heard;
  let worded = catalogue();
  document.documentElement.lang = settings().language;
  preferences.subscribe(() => {
    document.documentElement.lang = settings().language;
    if (worded !== catalogue()) {
      worded = catalogue();
      live.reworded();
    }
    if (heard === tongue().heard) return;
    heard = tongue().heard;
    if (!heard) ear.stop();
    else if (started && tabs.role === 'leading') void ear.start();
  });
  tabs.onEntry((entry) => live.follow(entry));
  if (role === 'leading') pacing?.waits(true); // until a touch lets it speak
  await live.open(log, role === 'leading');
  showRole(role);
  tabs.onRole(async (next) => {
    await changeRole(next);
    showRole(next);
  });

  function whyMute(why: 'sound' | 'voice'): string {
    if (why === 'sound') return word('screen.says.noSound');
    return word(tongue().bundledVoice ? 'screen.says.voiceNotLoaded' : 'screen.says.noVoice');
  }

  function showRole(now: Role): void {
    if (now === 'leading') live.calm('readonly-mirroring');
    else live.trouble('readonly-mirroring', () => word('screen.says.mirroring'), true);
  }

  async function changeRole(next: Role): Promise<void> {
    live.close();
    live.calm('store-readonly'); // what a tap was answered while this tab only looked on
    if (next === 'mirroring') ear.stop();
    await log.close();
    log = kitchenLog(which.name, next === 'leading' ? 'cook' : 'look');
    await live.open(log, next === 'leading');
  }

  async function start(): Promise<void> {
    started = true;
    const sounding = mouth.unlock(); // both begin inside the gesture
    reminder.onHeadsetPress(() => live.calling.touch());
    const hearing = tabs.role === 'leading' && tongue().heard ? ear.start() : Promise.resolve();
    await sounding;
    live.startSpeaking();
    pacing?.waits(false);
    const profile = keptProfile();
    if (profile && isLearner(ear)) ear.useProfile(profile);
    await hearing;
  }

  async function startIfAllowed(): Promise<boolean> {
    if (tabs.role !== 'leading' || (tongue().heard && !(await mayHear())) || !(await maySound()))
      return false;
    await start();
    return true;
  }

  return {
    live,
    ear,
    mouth,
    catalogue,
    log: () => log,
    lead: tabs,
    pacing,
    onEntry: (listener) => void entryListeners.add(listener),
    start,
    startIfAllowed,
  };
}

/** Nothing the cook need hear of: our own search has the last word. */
function solverFailed(why: string): void {
  console.warn(`The solver does not run here, so no plan is proven by it. ${why}`);
}

function after(ms: number, call: () => void): () => void {
  const timer = setTimeout(call, ms);
  return () => clearTimeout(timer);
}

/** A voice that was learnt on another network is not known: its cook is asked to read anew. */
function tellOfOldProfile(ear: Ear, live: LiveKitchen, word: (key: string) => string): void {
  if (!isLearner(ear)) return;
  let told = false;
  ear.onState(() => {
    const old = ear.voice === 'other network';
    if (old === told) return;
    told = old;
    if (old) live.trouble('new-ear', () => word('screen.says.ear.newEar'), false);
    else live.calm('new-ear');
  });
}

async function mayHear(): Promise<boolean> {
  try {
    const permission = await navigator.permissions.query({ name: 'microphone' });
    return permission.state === 'granted';
  } catch {
    return false; // a browser that does not say is asked again, by a touch
  }
}

/** Whether a sound may start without a touch: a context that runs by itself says so. */
async function maySound(): Promise<boolean> {
  const context = new AudioContext();
  const patience = new Promise((resolve) => setTimeout(resolve, 500));
  await Promise.race([context.resume().catch(() => undefined), patience]);
  const runs = context.state === 'running';
  await context.close();
  return runs;
}

/** Written down this long after a word, and then all at once: words are no state, a lost one costs nothing. */
const TALK_KEPT_MS = 3_000;

function journalOf(log: () => DurableLog, kept: string | null): Journal {
  let waiting = false;
  const journal: Journal = new Journal(talkFrom(kept), () => {
    if (waiting) return;
    waiting = true;
    setTimeout(() => {
      waiting = false;
      void log().writeNote('talk', JSON.stringify(journal.lines));
    }, TALK_KEPT_MS);
  });
  return journal;
}
