// How I speak: words, speed, height, loudness, voice, and the hours of quiet.

import { useEffect, useState } from 'react';
import { fliteVoices } from '../../sound/flite.ts';
import type { AppProps } from '../actions.ts';
import { LOUDNESS, PITCH, RATE, type Speech } from '../speech.ts';
import { Pick } from './Pick.tsx';

interface SpeechSettingsProps {
  actions: AppProps['actions'];
  settings: AppProps['settings'];
  catalogue: AppProps['catalogue'];
}

export function SpeechSettings({ actions, settings, catalogue }: SpeechSettingsProps) {
  const word = (key: string) => catalogue.text({ key });
  const { speech } = settings;
  const set = (patch: Partial<Speech>) => actions.set({ speech: { ...speech, ...patch } });
  const percent = (value: number) =>
    catalogue.text({ key: 'screen.settings.percent', params: { percent: Math.round(value * 100) } });
  return (
    <>
      <h3>{word('screen.settings.speaking')}</h3>
      <Pick
        name="verbosity"
        values={['beginner', 'cook', 'expert']}
        now={speech.verbosity}
        word={word}
        onPick={(verbosity) => set({ verbosity })}
      />
      <div className="sliders">
        {(
          [
            ['rate', RATE],
            ['pitch', PITCH],
            ['loudness', LOUDNESS],
            ['sounds', LOUDNESS],
          ] as const
        ).map(([name, [least, most, step]]) => (
          <label key={name} className="slider">
            <span>{word(`screen.settings.${name}`)}</span>
            <input
              type="range"
              min={least}
              max={most}
              step={step}
              value={speech[name]}
              aria-valuetext={percent(speech[name])}
              onChange={(event) => set({ [name]: Number(event.target.value) })}
            />
            <output>{percent(speech[name])}</output>
          </label>
        ))}
      </div>
      <VoicePick
        actions={actions}
        catalogue={catalogue}
        now={speech.voice}
        onPick={(voice) => set({ voice })}
      />
      <Pick
        name="quiet"
        values={['on', 'off']}
        now={speech.quiet ? 'on' : 'off'}
        word={word}
        onPick={(is) => set({ quiet: is === 'on' })}
      />
      {speech.quiet && (
        <div className="hours">
          {(['from', 'to'] as const).map((end) => (
            <Hour
              key={end}
              label={word(`screen.settings.quiet.${end}`)}
              time={end === 'from' ? speech.quietFrom : speech.quietTo}
              onTime={(time) => set(end === 'from' ? { quietFrom: time } : { quietTo: time })}
            />
          ))}
          <p>{word('screen.settings.quiet.says')}</p>
        </div>
      )}
    </>
  );
}

interface VoicePickProps {
  actions: AppProps['actions'];
  catalogue: AppProps['catalogue'];
  now: Speech['voice'];
  onPick: (voice: Speech['voice']) => void;
}

function VoicePick({ actions, catalogue, now, onPick }: VoicePickProps) {
  const [locals, setLocals] = useState<string[]>([]);
  useEffect(() => {
    let here = true;
    void actions.localVoices().then((names) => here && setLocals(names));
    return () => void (here = false);
  }, [actions]);
  const word = (key: string) => catalogue.text({ key });
  return (
    <div className="voice">
      <label className="select">
        <span>{word('screen.settings.voice')}</span>
        <select value={now} onChange={(event) => onPick(event.target.value as Speech['voice'])}>
          {(['best', ...fliteVoices] as const).map((name) => (
            <option key={name} value={name}>
              {word(`screen.settings.voice.${name}`)}
            </option>
          ))}
          {locals.map((name) => (
            <option key={name} value={`local:${name}`}>
              {catalogue.text({ key: 'screen.settings.voice.local', params: { name } })}
            </option>
          ))}
        </select>
      </label>
      <button type="button" className="choice" onClick={actions.tryVoice}>
        {word('screen.settings.try')}
      </button>
    </div>
  );
}

interface HourProps {
  label: string;
  time: string;
  onTime: (time: string) => void;
}

/** A field that is half cleared has no time: the last one stands. */
function Hour({ label, time, onTime }: HourProps) {
  return (
    <label>
      <span>{label}</span>
      <input
        type="time"
        value={time}
        onChange={({ target }) => target.value !== '' && onTime(target.value)}
      />
    </label>
  );
}
