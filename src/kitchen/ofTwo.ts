// Which sentences have words of their own where there are two canners. All others about a canner begin with its name.

const own = [
  'canner.fillIt',
  'bare.canner.fillIt',
  'how.canner.fillIt',
  'canner.heating',
  'canner.askIfHot',
  'canner.hot',
  'canner.loadNow',
  'how.canner.loadNow',
  'canner.bringToFullBoil',
  'how.canner.bringToFullBoil',
  'canner.askIfFullBoil',
  'canner.clockStarted',
  'how.canner.clockStarted',
  'canner.askIfItHolds',
  'canner.clockVoid',
  'canner.served',
  'canner.askPlainly',
  'canner.liftOut',
  'canner.addWater',
  'canner.jarBroke',
  'canner.whileAway',
  'batch.toTheCanner',
  'evening.wait.preheat',
  'how.batch.toTheCanner',
] as const;

export type OwnForm = `two.${(typeof own)[number]}`;

const keys = new Map<string, OwnForm>(own.map((key) => [key, `two.${key}`]));

export function ownForm(key: string): OwnForm | null {
  return keys.get(key) ?? null;
}
