// The cooking screen: the vessel in hand, what to do with it, and the thumb's row beside it.

import { useMemo } from 'react';
import type { Choice } from '../../kitchen/view.ts';
import type { AppProps } from '../actions.ts';
import { fruitHue, WATER_HUE } from '../drawings/hue.ts';
import type { SightId } from '../../kitchen/sights.ts';
import { StageSight } from '../drawings/sights/Sight.tsx';
import { Caption } from './Caption.tsx';
import { Controls } from './Controls.tsx';
import { EarStrip } from './EarStrip.tsx';
import { glance, isLongOnATablet, isOneLine, type Subject } from './glance.ts';
import { GlanceZone } from './GlanceZone.tsx';
import { Notices } from './Notices.tsx';
import { Rail } from './Rail.tsx';
import { sceneOf, sightOnStage, type Scene } from './scene.ts';
import { Stage } from './Stage.tsx';
import { inTheEvening } from '../../kitchen/evening/request.ts';
import { ShortLine } from '../evening/ShortLine.tsx';

interface StoveScreenProps extends Pick<AppProps, 'view' | 'actions' | 'settings' | 'catalogue' | 'ear'> {
  subject: Subject;
  onChoose: (choice: Choice) => void;
  onMore: () => void;
  onSee: () => void;
  onEvening: () => void;
}

export function StoveScreen({
  view,
  actions,
  settings,
  catalogue,
  ear,
  subject,
  onChoose,
  onMore,
  onSee,
  onEvening,
}: StoveScreenProps) {
  const canner = subject.canner;
  const choices = useMemo(() => choicesOf(subject), [subject]);
  const seen = glance(view, subject, catalogue);
  const scene = useMemo(() => sceneOf(subject, view.batches), [subject, view.batches]);
  const sight = sightOnStage(view.showing ?? null, scene);
  const picture = (where: 'stage-sight' | 'slot-sight' | 'sight-chip') =>
    sight && (
      <StageSight
        sight={sight}
        where={where}
        label={catalogue.text({ key: `see.${sight}.alt` })}
        openLabel={catalogue.text({
          key: 'screen.see.open',
          params: { what: catalogue.text({ key: `see.${sight}` }) },
        })}
        hue={sightHue(sight, scene)}
        onOpen={onSee}
      />
    );
  const warned = seen.tone === 'warn';
  const stands = STANDING.includes(scene.kind);
  const standing = sight !== null && seen.face === null && stands;
  const planned = view.batches.filter(inTheEvening).length > 1;
  const current = subject.kind === 'canner' ? subject.canner.id : subject.batch.id;
  return (
    <main className="stove" data-hand={settings.hand} data-looks-at={current}>
      <EarStrip ear={ear} view={view} catalogue={catalogue} />
      <div
        className={vesselClass({
          teaching: sight !== null,
          clockless: sight !== null && seen.face === null,
          planned,
          standing,
          crowded: warned && stands,
          'one-line': isOneLine(seen.act),
          'long-act': isLongOnATablet(seen.act),
        })}
      >
        <button
          type="button"
          className="call"
          aria-label={catalogue.text({ key: 'screen.call' })}
          onClick={() => actions.call('touch')}
        />
        {(!sight || standing) && (
          <Stage
            scene={scene}
            clock={seen.face !== null}
            planned={planned}
            warned={warned}
            catalogue={catalogue}
            units={settings.units}
          />
        )}
        <GlanceZone
          glance={seen}
          canner={canner}
          now={view.now}
          catalogue={catalogue}
          clockless={picture('slot-sight')}
        />
        {picture('stage-sight')}
        {planned && (
          <ShortLine evening={view.evening ?? null} now={view.now} catalogue={catalogue} onOpen={onEvening} />
        )}
      </div>
      <div className="hand">
        <Notices
          notices={view.notices.filter((notice) => notice.grave)}
          catalogue={catalogue}
          takeOver={actions.takeOver}
        />
        <Caption view={view} catalogue={catalogue} />
        {seen.face !== null && picture('sight-chip')}
        <Controls
          question={view.question}
          choices={choices}
          catalogue={catalogue}
          talk={actions.talk}
          onChoose={onChoose}
          onMore={onMore}
        />
      </div>
      <Rail view={view} current={current} catalogue={catalogue} focus={actions.focus} />
    </main>
  );
}

/** In the canner it is water that steams, and fruit stands in jars. */
function sightHue(sight: SightId, scene: Scene): number {
  if ('batch' in scene) return fruitHue(scene.batch.plan.request.fruit);
  return sight === 'steamBurns' ? WATER_HUE : (scene.jarHues[0] ?? fruitHue(''));
}

/** What stands at the foot of the vessel and not around its words: there is room for the picture above it. */
const STANDING: readonly Scene['kind'][] = ['plate', 'jars', 'bench'];

function vesselClass(has: Record<string, boolean>): string {
  const names = Object.entries(has).flatMap(([name, is]) => (is ? [name] : []));
  return ['vessel', ...names].join(' ');
}

/** What is open for the thing in view; the jars of a batch bring the canner's choices with them. */
export function choicesOf(subject: Subject): Choice[] {
  if (subject.kind === 'canner') return subject.canner.choices;
  return [...(subject.canner?.choices ?? []), ...subject.loads, ...subject.batch.choices];
}
