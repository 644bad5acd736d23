// The page begins here: opens the house, draws the screens, and hands what the cook does to the kitchen.

import { useSyncExternalStore } from 'react';
import { useInSlices } from './useInSlices.ts';
import { createRoot } from 'react-dom/client';
import type { Slots } from '../../machines/dialogue/commands.ts';
import { planBatch } from '../core/index.ts';
import { withLearned } from '../kitchen/learning.ts';
import { afterPaint } from './afterPaint.ts';
import { App } from './App.tsx';
import { earFeed, type Actions, type Answer } from './actions.ts';
import { openHouse } from './house.ts';
import { offerFile } from './offerFile.ts';
import { arrivalFromHash } from './plan/share.ts';
import { localVoiceNames } from '../sound/browserVoice.ts';
import { isLearner } from './learner.ts';
import { openPreferences } from './preferences.ts';
import { RehearsalCorner } from './rehearsal/RehearsalCorner.tsx';
import { openRehearsal } from './rehearsal/rehearsal.ts';
import { openStarting } from './starting.ts';
import { showStates } from './states.ts';
import './styles/index.css';
import { tongueOf } from './tongue.ts';
import { addressOf, whichKitchen } from './which.ts';

const preferences = openPreferences();
const which = whichKitchen(window.location.search);
const house = await openHouse(which, preferences);
const starting = openStarting(house);
const ear = earFeed(house.ear, { kind: 'off' });
const arrival = arrivalFromHash(window.location.hash);
const { live } = house;
// Every evening is another one: chance enters here and nowhere below.
const rehearsal = live.view.practice ? openRehearsal(() => Date.now() % 2 ** 31) : null;
if (rehearsal) house.onEntry((entry) => rehearsal.follow(entry));

const actions: Actions = {
  start: starting.start,
  plan: (request) => void live.plan(planBatch(withLearned(request, live.view.learned))),
  // The button itself answers first: what the kitchen makes of it is worked out once that has been painted.
  choose: (choice, answer) => byHand(() => live.choose(choice, slotsOf(answer), 'touch')),
  talk: (command) => byHand(() => live.ask(command, 'touch')),
  call: (how) => (how === 'touch' ? live.calling.touch() : live.calling.hold(how === 'down')),
  sound: (name) => void house.mouth.sound(name),
  tryVoice: () => live.trySaying({ key: 'kitchen.wish.sample' }),
  localVoices: () => localVoiceNames(globalThis.speechSynthesis, preferences.now().language),
  learner: () => (isLearner(house.ear) ? house.ear : null),
  focus: (on) => void afterPaint(() => live.focus(on)),
  set: (patch) => {
    if (!preferences.change(patch))
      live.trouble('settings', () => house.catalogue().text({ key: 'screen.says.notKept' }), false);
  },
  exportLog: () => void house.log().exportFile().then(offerFile),
  importLog: (file) => void importLog(file),
  takeOver: () => void house.lead.takeOver(),
  practice: (pace) => window.location.assign(addressOf(pace, window.location.href)),
};

function byHand(act: () => unknown): void {
  house.pacing?.acts();
  void afterPaint(() => void act());
}

showStates(live.view);
live.subscribe(() => showStates(live.view));
createRoot(document.getElementById('root') ?? document.body).render(<Page />);

function Page() {
  const view = useInSlices(live);
  const settings = useSyncExternalStore(preferences.subscribe, preferences.now);
  const started = useSyncExternalStore(starting.subscribe, () => starting.started);
  const catalogue = house.catalogue();
  return (
    <>
      <App
        view={view}
        actions={actions}
        settings={settings}
        catalogue={catalogue}
        ear={ear}
        started={started}
        arrival={arrival}
      />
      {rehearsal && (
        <RehearsalCorner
          view={view}
          rehearsal={rehearsal}
          catalogue={catalogue}
          ear={ear}
          pacing={tongueOf(settings).heard ? house.pacing : null}
          elsewhere={which.stove === 'elsewhere'}
          say={(message, of, urgency) => live.trySaying(message, of, urgency)}
        />
      )}
    </>
  );
}

async function importLog(file: File): Promise<void> {
  const { taken, trouble } = await house.log().importFile(file);
  for (const { kind, says } of trouble) live.trouble(`import-${kind}`, says, true);
  if (taken) window.location.reload();
}

function slotsOf(answer: Answer | undefined): Slots {
  switch (answer?.kind) {
    case 'count':
      return { n: answer.count, ...(answer.spare === undefined ? {} : { spare: answer.spare }) };
    case 'minutes':
      return { n: answer.minutes };
    case 'keptBoiling':
      return { keptBoiling: answer.keptBoiling };
    case 'whose':
      return { batch: answer.batch, fruit: answer.name };
    case 'jar':
      return { jar: answer.jar, n: 1 };
    case 'when':
      return { what: answer.what as NonNullable<Slots['what']>, agoMinutes: answer.agoMinutes };
    case 'reading': {
      const { kind: _, ...reading } = answer;
      return reading;
    }
    case undefined:
      return {};
  }
}
