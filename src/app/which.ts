// Which kitchen this page opens: the real one, or a practice one that runs faster and never mixes with it.

/** A day of rest in half a minute. */
const FASTEST = 3600;

export interface Which {
  name: 'kitchen' | 'practice';
  pace: number;
  practice: boolean;
  /** Forces the bundled voice, where the browser's own is not wanted. */
  voice: 'own-or-bundled' | 'bundled';
  /** Elsewhere: the cook has a stove that runs by this clock, which then keeps its pace whoever speaks, and ours is silent. */
  stove: 'here' | 'elsewhere';
}

export function whichKitchen(search: string): Which {
  const asked = new URLSearchParams(search);
  const pace = Number(asked.get('practice'));
  const practice = asked.has('practice') && Number.isFinite(pace) && pace >= 1;
  return {
    name: practice ? 'practice' : 'kitchen',
    pace: practice ? Math.min(pace, FASTEST) : 1,
    practice,
    voice: asked.get('voice') === 'bundled' ? 'bundled' : 'own-or-bundled',
    stove: asked.get('stove') === 'elsewhere' ? 'elsewhere' : 'here',
  };
}

/** The address of a practice kitchen at a pace; 0 leads back to the real one. */
export function addressOf(pace: number, page: string): string {
  const url = new URL(page);
  url.hash = '';
  if (pace >= 1) url.searchParams.set('practice', String(Math.min(pace, FASTEST)));
  else url.searchParams.delete('practice');
  return url.href;
}
