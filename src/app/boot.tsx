// The page begins here: opens the house, draws the screens, and hands what the cook does to the kitchen.

import { useSyncExternalStore, useState, useEffect } from 'react';
import { createRoot } from 'react-dom/client';
import { planBatch } from '../core/index.ts';
import { App } from './App.tsx';
import { earFeed, type Actions, type Answer, type Arrival, type Settings } from './actions.ts';
import { openHouse, type House } from './house.ts';
import { arrivalFromHash } from './plan/share.ts';
import { keepSettings, readSettings } from './preferences.ts';
import './styles/index.css';
import { addressOf, whichKitchen } from './which.ts';
import type { Slots } from '../../machines/dialogue/commands.ts';

let settings = readSettings();
const root = createRoot(document.getElementById('root') ?? document.body);
const house = await openHouse(whichKitchen(window.location.search), () => settings);
const ear = earFeed(house.ear, { kind: 'off', says: 'The microphone is off.' });
const arrival = arrivalFromHash(window.location.hash);
root.render(<Page house={house} arrival={arrival} />);

function Page({ house, arrival }: { house: House; arrival: Arrival | undefined }) {
  const { live } = house;
  const view = useSyncExternalStore(
    (listener) => live.subscribe(listener),
    () => live.view,
  );
  const [chosen, setChosen] = useState(settings);
  const [started, setStarted] = useState(false);
  const start = () => {
    if (started) return;
    setStarted(true);
    void house.start();
  };
  useEffect(() => wakeUp(house, () => setStarted(true), start), []);
  const change = (patch: Partial<Settings>) => {
    settings = { ...settings, ...patch };
    setChosen(settings);
    if (!keepSettings(settings)) live.trouble('settings', 'This browser does not keep your settings.', false);
  };
  return (
    <App
      view={view}
      actions={actionsOf(house, start, change)}
      settings={chosen}
      catalogue={house.catalogue()}
      ear={ear}
      started={started}
      arrival={arrival}
    />
  );
}

/** A page opened again in the middle of a batch speaks at once where it may; else at the first touch or key. */
function wakeUp(house: House, onStarted: () => void, start: () => void): () => void {
  const busy = house.live.view.batches.some((batch) => batch.state !== 'putAway');
  if (!busy) return () => {};
  const onTouch = () => {
    stop();
    house.live.calm('touch');
    start();
  };
  const stop = () => {
    window.removeEventListener('pointerdown', onTouch);
    window.removeEventListener('keydown', onTouch);
  };
  void house.startIfAllowed().then((allowed) => {
    if (allowed) return onStarted();
    house.live.trouble('touch', 'Touch the screen once, so that I can speak and listen again.', true);
    window.addEventListener('pointerdown', onTouch);
    window.addEventListener('keydown', onTouch);
  });
  return stop;
}

function actionsOf(
  { live, log, lead }: House,
  start: () => void,
  change: (patch: Partial<Settings>) => void,
): Actions {
  return {
    start,
    plan: (request) => void live.plan(planBatch(request)),
    choose: (choice, answer) => void live.choose(choice, slotsOf(answer), 'touch'),
    talk: (command) => void live.ask(command, 'touch'),
    focus: (on) => live.focus(on),
    set: change,
    exportLog: () => void log().exportFile().then(offerFile),
    importLog: (file) =>
      void log()
        .importFile(file)
        .then(({ taken, trouble }) => {
          for (const { kind, says } of trouble) live.trouble(`import-${kind}`, says, true);
          if (taken) window.location.reload();
        }),
    takeOver: () => void lead.takeOver(),
    practice: (pace) => window.location.assign(addressOf(pace, window.location.href)),
  };
}

function slotsOf(answer: Answer | undefined): Slots {
  switch (answer?.kind) {
    case 'count':
      return { n: answer.count, ...(answer.spare === undefined ? {} : { spare: answer.spare }) };
    case 'minutes':
      return { n: answer.minutes };
    case 'reading': {
      const { kind: _, ...reading } = answer;
      return reading;
    }
    case undefined:
      return {};
  }
}

function offerFile(file: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = 'stovehand-log.txt';
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
