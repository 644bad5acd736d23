// The process clock as a tape: runs that were void are struck out, the run that counts is solid, the end is marked.

import { scaleTime } from 'd3-scale';
import type { Box } from './geometry.ts';

interface ProcessTapeProps extends Box {
  now: number;
  clock: { from: number; until: number } | null;
  voids: { from: number; to: number }[];
  voidWord: string;
}

/** Lower than this, a tape has no room for a word in it: the strike through a void run tells by itself. Nor where no clock runs: there the words below stand close. */
const WORD_FROM_PX = 20;

export function ProcessTape({ w, h, now, clock, voids, voidWord }: ProcessTapeProps) {
  const first = Math.min(...voids.map((run) => run.from), clock?.from ?? now);
  const last = Math.max(...voids.map((run) => run.to), clock?.until ?? now, now, first + 1);
  // Whole pixels: what moves by less is not seen, and need not be drawn anew each second.
  const x = scaleTime()
    .domain([first, last])
    .rangeRound([3, w - 3]);
  return (
    <svg className="tape" width={w} height={h} aria-hidden="true">
      <path className="tape-base" d={`M3 ${h - 4} H${w - 3}`} />
      {voids.map((run, i) => (
        <VoidRun
          key={run.from}
          from={x(run.from)}
          to={x(run.to)}
          h={h}
          word={clock && i === voids.length - 1 && h >= WORD_FROM_PX ? voidWord : ''}
        />
      ))}
      {clock && (
        <>
          <rect
            className="tape-due"
            x={x(clock.from)}
            y={4}
            width={Math.max(0, x(clock.until) - x(clock.from))}
            height={h - 8}
          />
          <rect
            className="tape-run"
            x={x(clock.from)}
            y={4}
            width={Math.max(0, x(Math.min(now, clock.until)) - x(clock.from))}
            height={h - 8}
          />
          <path className="tape-end" d={`M${x(clock.until) - 2} 0 V${h}`} />
        </>
      )}
    </svg>
  );
}

function VoidRun({ from, to, h, word }: { from: number; to: number; h: number; word: string }) {
  const width = Math.max(6, to - from);
  return (
    <g className="tape-void">
      <rect x={from} y={4} width={width} height={h - 8} fill="url(#hatch)" />
      <path d={`M${from} 4 L${from + width} ${h - 4} M${from} ${h - 4} L${from + width} 4`} />
      {word !== '' && width > 54 && (
        <text x={from + width / 2} y={h / 2 + 1} textAnchor="middle">
          {word}
        </text>
      )}
    </g>
  );
}
