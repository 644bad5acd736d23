// The pot drawn to scale with the depth at the start and the depth to stop at, as a wooden spoon would show it.

interface ScalePotProps {
  startDepthM: number;
  targetDepthM: number;
  diameterM: number;
  startWord: string;
  stopWord: string;
  alt: string;
}

const W = 290;
const H = 220;

export function ScalePot({ startDepthM, targetDepthM, diameterM, startWord, stopWord, alt }: ScalePotProps) {
  const scale = Math.min((H - 60) / (startDepthM * 1.25), 170 / diameterM);
  const width = diameterM * scale;
  const floor = H - 14;
  const y = (depth: number) => floor - depth * scale;
  const left = 8;
  const right = left + width;
  const spoon = left + width * 0.42;
  // Two words need a line each; where the depths are close together they are set apart.
  const startY = Math.min(y(startDepthM) + 5, y(targetDepthM) - 18);
  return (
    <svg className="scale-pot" viewBox={`0 0 ${W} ${H}`} width={W} height={H} role="img" aria-label={alt}>
      <rect className="mass" x={left} y={y(targetDepthM)} width={width} height={floor - y(targetDepthM)} />
      <rect
        className="hatch-lost"
        x={left}
        y={y(startDepthM)}
        width={width}
        height={y(targetDepthM) - y(startDepthM)}
        fill="url(#hatch-plan)"
      />
      <defs>
        <pattern
          id="hatch-plan"
          width="10"
          height="10"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0 V10" className="hatch-line" />
        </pattern>
      </defs>
      <path
        className="spoon"
        d={`M${spoon - 5} 6 L${spoon + 3} ${floor - 34} q-15 6 -12 26 q4 8 13 8 q12 0 14 -10 q2 -18 -9 -24 L${spoon + 5} 6 Z`}
      />
      <path className="surface" d={`M${left} ${y(targetDepthM)} H${right}`} />
      <path className="start-line" d={`M${left} ${y(startDepthM)} H${right}`} />
      <path
        className="enamel"
        d={`M${left} ${Math.max(16, y(startDepthM * 1.2))} V${floor} H${right} V${Math.max(16, y(startDepthM * 1.2))}`}
        strokeWidth="6"
      />
      <text x={right + 12} y={startY}>
        {startWord}
      </text>
      <text x={right + 12} y={y(targetDepthM) + 5} className="strong-text">
        {stopWord}
      </text>
    </svg>
  );
}
