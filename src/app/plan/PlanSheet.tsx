// The plan to read: the verdict first and loud, then the pictures, then every figure with its reason.

import type { AppProps } from '../actions.ts';
import { fruitHue } from '../drawings/hue.ts';
import { ReductionPlot } from '../drawings/ReductionPlot.tsx';
import { ScalePot } from '../drawings/ScalePot.tsx';
import { figureGroups, type Figure, type ShownPlan } from './figures.ts';
import { Opener } from './Opener.tsx';
import { inUnits, sayDepth } from './units.ts';
import { Verdict } from './Verdict.tsx';

interface PlanSheetProps extends Pick<AppProps, 'catalogue'> {
  plan: ShownPlan;
  units: AppProps['settings']['units'];
}

export function PlanSheet({ plan, units, catalogue }: PlanSheetProps) {
  const word = (key: string) => catalogue.text({ key });
  return (
    <div className="plan-sheet hued" style={{ '--hue': fruitHue(plan.request.fruit) } as React.CSSProperties}>
      <h2>
        {upperFirst(plan.fruitName)}{' '}
        <span>{word(`screen.plan.product.${plan.request.product}`).toLowerCase()}</span>
      </h2>
      <Verdict plan={plan} units={units} catalogue={catalogue} />
      <Pictures plan={plan} units={units} catalogue={catalogue} />
      <div className="ledger">
        {figureGroups(plan, units, catalogue).map((group) => (
          <section key={group.title}>
            <h3>{group.title}</h3>
            {group.figures.map((figure) => (
              <FigureLine key={figure.label} figure={figure} word={word} />
            ))}
          </section>
        ))}
        <ListOf title={word('screen.plan.tools')} items={plan.tools} />
        <ListOf
          title={word('screen.plan.cautions')}
          items={plan.cautions.map((caution) => inUnits(caution, units))}
        />
      </div>
    </div>
  );
}

function FigureLine({ figure, word }: { figure: Figure; word: (key: string) => string }) {
  const { label, value, also, why } = figure;
  return (
    <Opener className="figure" why={why} word={word} shown={why?.says === also ? also : value}>
      <span className="figure-label">{label}</span>
      <span className="figure-value">
        {value} {also && <small>{also}</small>}
      </span>
    </Opener>
  );
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function ListOf({ title, items }: { title: string; items: string[] }) {
  if (items.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ul className="ledger-list">
        {items.map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
    </section>
  );
}

function Pictures({ plan, units, catalogue }: PlanSheetProps) {
  const { startDepthM, targetDepthM } = plan;
  const diameterM = plan.request.pot?.diameterM;
  const text = (key: string, params: Record<string, string>) => catalogue.text({ key, params });
  return (
    <div className="pictures">
      <ReductionPlot plan={plan} units={units} catalogue={catalogue} />
      {startDepthM !== null && targetDepthM !== null && diameterM !== undefined && (
        <ScalePot
          startDepthM={startDepthM}
          targetDepthM={targetDepthM}
          diameterM={diameterM}
          startWord={text('screen.pot.start', { depth: sayDepth(startDepthM, units) })}
          stopWord={text('screen.pot.stop', { depth: sayDepth(targetDepthM, units) })}
          alt={text('screen.pot.alt', {
            start: sayDepth(startDepthM, units),
            target: sayDepth(targetDepthM, units),
          })}
        />
      )}
    </div>
  );
}
