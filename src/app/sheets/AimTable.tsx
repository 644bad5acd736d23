// What to aim for, in every form a cook can measure.

import type { BatchPlan } from '../../core/types.ts';
import type { AppProps } from '../actions.ts';
import { sayDepth, sayLength, sayMass, sayTemp, trim } from '../plan/units.ts';

interface AimTableProps extends Pick<AppProps, 'catalogue'> {
  plan: BatchPlan;
  units: AppProps['settings']['units'];
}

export function AimTable({ plan, units, catalogue }: AimTableProps) {
  const rows: [string, string | null][] = [
    ['screen.plan.targetMass', sayMass(plan.targetMassKg, units)],
    ['screen.plan.targetDepth', plan.targetDepthM === null ? null : sayDepth(plan.targetDepthM, units)],
    ['screen.plan.finishTemp', sayTemp(plan.finishTempC, units)],
    ['screen.plan.solids', `${trim(plan.targetSolubleSolidsPct, 0)} %`],
    ['screen.plan.headspace', sayLength(plan.headspaceMm, units)],
    ['screen.plan.process', plan.process ? `${plan.process.minutes} min` : null],
  ];
  return (
    <table className="aims">
      <caption>{catalogue.text({ key: 'screen.more.aims' })}</caption>
      <tbody>
        {rows.map(([key, value]) =>
          value === null ? null : (
            <tr key={key}>
              <th scope="row">{catalogue.text({ key })}</th>
              <td>{value}</td>
            </tr>
          ),
        )}
      </tbody>
    </table>
  );
}
