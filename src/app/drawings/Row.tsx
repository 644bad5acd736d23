// Things that stand on the bench in a row: jars at rest, under test, or labelled.

import type { JarView } from '../../kitchen/view.ts';
import type { Box } from './geometry.ts';
import { SmallJar, type Lid } from './SmallJar.tsx';

interface RowProps extends Box {
  jars: JarView[];
  on: 'towel' | 'shelf';
  /** How high it may stand under the words, px. */
  room: number;
}

export function JarRow({ w, h, jars, on, room }: RowProps) {
  const bench = h - 26;
  const height = Math.min(h * 0.52, room);
  const count = Math.max(1, jars.length);
  const width = Math.min(height * 0.6, (w - 24) / count - 10);
  const step = Math.min((w - 24) / count, width * 1.55);
  const first = w / 2 - (step * count) / 2 + (step - width) / 2;
  return (
    <>
      {jars.map((jar, i) => {
        const tall = jar.whole ? 1 : 0.7;
        const jarHeight = Math.min(height, width * 1.75) * tall;
        return (
          <SmallJar
            key={jar.id}
            x={first + i * step + (width * (1 - tall)) / 2}
            y={bench - jarHeight}
            w={width * tall}
            h={jarHeight}
            fill={1}
            lid={lidOf(jar.state)}
            label={on === 'shelf'}
          />
        );
      })}
      {on === 'towel' ? (
        <path
          className="towel"
          d={`M8 ${bench + 4} H${w - 8} M8 ${bench + 13} H${w - 8} M8 ${bench + 22} H${w - 8}`}
        />
      ) : (
        <rect className="board" x={0} y={bench + 2} width={w} height={18} />
      )}
    </>
  );
}

/** The lid tells the state: dipped when sealed, standing when it is not. */
function lidOf(state: string): Lid {
  if (/unseal|fail|fridge|reprocess/i.test(state)) return 'up';
  if (/seal|shelf|stored|label/i.test(state)) return 'down';
  if (/empty|ready|hot$/i.test(state)) return 'off';
  return 'on';
}
