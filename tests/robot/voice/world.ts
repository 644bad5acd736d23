// What really goes on in the robot cook's kitchen: pots and canners that obey physics and know no plan.

import {
  airAt,
  atFullBoil,
  boilOf,
  emptyJar,
  fillJar,
  handsOff,
  hat,
  liftJars,
  loadCanner,
  massKg,
  setUpStove,
  solubleSolidsPct,
  stepStove,
  type Hands,
  type Kitchen,
  type Mixture,
  type Stove,
} from '../../../src/stove/index.ts';

/** A pot of fruit, by what a cook can see of it. */
export interface PotLook {
  boil: ReturnType<typeof boilOf>;
  /** Thick enough to hold on a cold plate. */
  holds: boolean;
  massKg: number;
  scorched: boolean;
}

const SEA_LEVEL: Kitchen = {
  elevationM: 100,
  air: airAt(100, 22),
  pot: { diameterM: 0.28, heightM: 0.2, massKg: 2 },
  burner: { kind: 'gas', powerW: 3500, efficiency: 0.4 },
  habits: { simmerDial: 0.6, bearsSpatter: 0.03, fearsMud: 0.6, looksEveryS: 60, stirEveryS: 60 },
  body: 1,
};

interface PotInHand {
  stove: Stove;
  hands: Hands;
  /** Soluble solids at which it holds, mass per cent. */
  holdsAtPct: number;
}

export class World {
  readonly #pots = new Map<string, PotInHand>();
  /** Each on a stove of its own, with next to nothing in the pot beside it. */
  readonly #canners: ReadonlyMap<string, { stove: Stove; hands: Hands }>;

  constructor(seed: number, canners: readonly string[]) {
    const besideIt: Mixture = { waterKg: 0.1, solubleKg: 0, insolubleKg: 0, body: 1 };
    this.#canners = new Map(
      canners.map((name, i) => [name, { stove: setUpStove(SEA_LEVEL, besideIt, seed + i), hands: handsOff }]),
    );
  }

  /** Fruit and sugar in a pot that is not yet on the heat. */
  pot(name: string, contents: Mixture, holdsAtPct: number, seed: number): void {
    this.#pots.set(name, { stove: setUpStove(SEA_LEVEL, contents, seed), hands: handsOff, holdsAtPct });
  }

  step(seconds: number): void {
    for (const pot of this.#pots.values()) {
      pot.stove = stepStove(pot.stove, seconds, pot.hands);
      pot.hands = { ...pot.hands, stir: false, skim: false };
    }
    for (const canner of this.#canners.values())
      canner.stove = stepStove(canner.stove, seconds, canner.hands);
  }

  heat(name: string, dial: number): void {
    this.#hands(name, { potDial: dial });
  }

  stir(name: string): void {
    this.#hands(name, { stir: true });
  }

  look(name: string): PotLook {
    const { stove, holdsAtPct } = this.#of(name);
    return {
      boil: boilOf(stove.pot),
      holds: solubleSolidsPct(stove.pot.contents) >= holdsAtPct,
      massKg: massKg(stove.pot.contents),
      scorched: stove.pot.scorch > 1,
    };
  }

  cannerHeat(name: string, dial: number): void {
    const canner = this.#cannerOf(name);
    canner.hands = { ...canner.hands, cannerDial: dial };
  }

  cannerC(name: string): number {
    return this.#cannerOf(name).stove.canner.tempC;
  }

  fullBoil(name: string): boolean {
    return atFullBoil(this.#cannerOf(name).stove.canner);
  }

  /** So many hot jars, filled hot, go into the water of this canner. */
  load(name: string, jars: number, seed: number): void {
    const from = hat(seed);
    const filled = Array.from({ length: jars }, () => {
      const hot = emptyJar(0.237, 85);
      return fillJar(hot, { litres: 0.22, tempC: 90 }, { wipeRim: true, lid: 'fingertip' }, from.seed()).jar;
    });
    const canner = this.#cannerOf(name);
    canner.stove = loadCanner({ ...canner.stove, jars: [...canner.stove.jars, ...filled] });
  }

  lift(name: string): void {
    const canner = this.#cannerOf(name);
    canner.stove = liftJars(canner.stove);
  }

  #cannerOf(name: string): { stove: Stove; hands: Hands } {
    const canner = this.#canners.get(name);
    if (!canner) throw new Error(`There is no ${name}.`);
    return canner;
  }

  #of(name: string): PotInHand {
    const pot = this.#pots.get(name);
    if (!pot) throw new Error(`There is no pot of ${name}.`);
    return pot;
  }

  #hands(name: string, change: Partial<Hands>): void {
    const pot = this.#of(name);
    pot.hands = { ...pot.hands, ...change };
  }
}
