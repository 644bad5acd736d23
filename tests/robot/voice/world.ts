// What really goes on in the robot cook's kitchen: pots and a canner that obey physics and know no plan.

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
  #canner: Stove;
  #cannerHands: Hands = handsOff;

  constructor(seed: number) {
    this.#canner = setUpStove(SEA_LEVEL, { waterKg: 0.1, solubleKg: 0, insolubleKg: 0, body: 1 }, seed);
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
    this.#canner = stepStove(this.#canner, seconds, this.#cannerHands);
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

  cannerHeat(dial: number): void {
    this.#cannerHands = { ...this.#cannerHands, cannerDial: dial };
  }

  get cannerC(): number {
    return this.#canner.canner.tempC;
  }

  get fullBoil(): boolean {
    return atFullBoil(this.#canner.canner);
  }

  /** So many hot jars, filled hot, go into the water. */
  load(jars: number, seed: number): void {
    const from = hat(seed);
    const filled = Array.from({ length: jars }, () => {
      const hot = emptyJar(0.237, 85);
      return fillJar(hot, { litres: 0.22, tempC: 90 }, { wipeRim: true, lid: 'fingertip' }, from.seed()).jar;
    });
    this.#canner = loadCanner({ ...this.#canner, jars: [...this.#canner.jars, ...filled] });
  }

  lift(): void {
    this.#canner = liftJars(this.#canner);
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
