// One jar, small: how full it is and what its lid does.

export type Lid = 'off' | 'on' | 'down' | 'up';

interface SmallJarProps {
  x: number;
  y: number;
  w: number;
  h: number;
  /** 0..1 of the space below the headspace line. */
  fill: number;
  lid: Lid;
  label?: boolean;
}

export function SmallJar({ x, y, w, h, fill, lid, label }: SmallJarProps) {
  const neck = y + h * 0.14;
  const top = neck + h * 0.09 + (1 - fill) * h * 0.6;
  const r = w * 0.16;
  const body = `M${x + w * 0.1} ${neck} C${x - w * 0.02} ${neck + h * 0.06} ${x} ${neck + h * 0.08} ${x} ${neck + h * 0.14} V${y + h - r} Q${x} ${y + h} ${x + r} ${y + h} H${x + w - r} Q${x + w} ${y + h} ${x + w} ${y + h - r} V${neck + h * 0.14} C${x + w} ${neck + h * 0.08} ${x + w * 1.02} ${neck + h * 0.06} ${x + w * 0.9} ${neck} Z`;
  return (
    <g className="jar">
      <path className="glass-back" d={body} />
      {fill > 0 && (
        <path
          className="jar-fill"
          d={`M${x + 3} ${top} H${x + w - 3} V${y + h - r} Q${x + w - 3} ${y + h - 3} ${x + w - r} ${y + h - 3} H${x + r} Q${x + 3} ${y + h - 3} ${x + 3} ${y + h - r} Z`}
        />
      )}
      <path className="glass" d={body} />
      {label && (
        <rect className="jar-label" x={x + w * 0.16} y={y + h * 0.46} width={w * 0.68} height={h * 0.3} />
      )}
      <JarLid x={x} y={y} w={w} neck={neck} lid={lid} />
    </g>
  );
}

/** A sealed lid dips in the middle; an unsealed one stands up. The mark above says it in a second way. */
function JarLid({ x, y, w, neck, lid }: { x: number; y: number; w: number; neck: number; lid: Lid }) {
  if (lid === 'off')
    return <path className="glass" d={`M${x + w * 0.1} ${neck} V${y + 4} H${x + w * 0.9} V${neck}`} />;
  const bend = { on: 0, down: 7, up: -9 }[lid];
  const lidTop = y + 3;
  return (
    <path
      className={`lid ${lid}`}
      d={`M${x + w * 0.06} ${neck} V${lidTop} Q${x + w / 2} ${lidTop + bend} ${x + w * 0.94} ${lidTop} V${neck} Z`}
    />
  );
}
