// The pot in words: the twin of its drawing.

import type { Catalogue } from '../../kitchen/ports.ts';
import type { PotView } from '../../kitchen/view.ts';
import type { Units } from '../actions.ts';
import { sayDepth, sayMass } from '../plan/units.ts';

export function potWords(pot: PotView, catalogue: Catalogue, units: Units): string {
  const depth = pot.depthM && pot.targetDepthM;
  return catalogue.text({
    key: 'screen.alt.pot',
    params: {
      now: depth && pot.depthM ? sayDepth(pot.depthM.likely, units) : sayMass(pot.massKg.likely, units),
      aim: depth && pot.targetDepthM ? sayDepth(pot.targetDepthM, units) : sayMass(pot.targetMassKg, units),
      surface: pot.surface,
      heat: pot.heat,
      foam: pot.foam ? 'yes' : 'no',
      scorch: pot.scorchRisk,
    },
  });
}
