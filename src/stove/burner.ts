// How much heat does this burner put into what stands on it?

export type BurnerKind = 'gas' | 'electric' | 'induction';

export interface Burner {
  kind: BurnerKind;
  /** Power at full dial: gas burned, or electricity drawn. */
  powerW: number;
  /** Share that reaches a cool pot of fitting size. */
  efficiency: number;
  /** Heat that reaches the pot now; it follows the dial with the burner's delay. */
  heatW: number;
}

/** Share of the energy that reaches the pot: US DOE cooking-product test notices (from memory). */
export const EFFICIENCY = {
  gas: { low: 0.3, high: 0.45 },
  electric: { low: 0.7, high: 0.75 },
  induction: { low: 0.84, high: 0.9 },
} as const;

/** An iron plate is slow, flame and coil follow at once; seconds to cover 63 % of a change. */
const DELAY_S = { gas: 4, electric: 60, induction: 2 } as const;

/**
 * Heat flows from what is hotter: flame gas about 900 C, a glowing plate about 550 C. A pot whose wall is hotter
 * than boiling water takes less of it. Induction makes the heat in the wall itself and only loses a little.
 */
const SOURCE_C = { gas: 900, electric: 550, induction: 2500 } as const;

/** The burner a moment later, with the heat that it gives on average meanwhile. */
export function stepBurner(burner: Burner, dtS: number, dial: number, wallC: number): Burner {
  const reach = (SOURCE_C[burner.kind] - wallC) / (SOURCE_C[burner.kind] - 100);
  const wanted = burner.powerW * Math.min(1, Math.max(0, dial)) * burner.efficiency * Math.max(0, reach);
  const follow = 1 - Math.exp(-dtS / DELAY_S[burner.kind]);
  return { ...burner, heatW: burner.heatW + (wanted - burner.heatW) * follow };
}
