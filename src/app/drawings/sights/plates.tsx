// Pictures of the tests: the cold plate and what the spoonful does on it, and the spoon that it coats.

import { Arrow, Drop, Finger, Mark, Steam } from './parts.tsx';

function Dish({ cy = 196 }: { cy?: number }) {
  return (
    <>
      <ellipse className="dish-shadow" cx={200} cy={cy + 10} rx={176} ry={64} />
      <ellipse className="dish" cx={200} cy={cy} rx={176} ry={64} />
      <ellipse className="dish-inner" cx={200} cy={cy - 2} rx={130} ry={44} />
    </>
  );
}

export function PlateHeld() {
  return (
    <>
      <Dish />
      <path
        className="dollop"
        d="M96 196 C90 130 166 118 186 134 Q196 148 178 182 Q168 204 172 226 C130 230 98 218 96 196 Z"
      />
      <path
        className="dollop"
        d="M222 132 C270 122 312 146 306 190 C300 216 258 230 206 228 Q200 208 212 184 Q228 150 222 132 Z"
      />
      <Finger x={190} y={236} turn={-162} long={70} />
      <Mark x={362} y={38} good />
    </>
  );
}

export function PlateWrinkled() {
  return (
    <>
      <Dish />
      <path
        className="dollop"
        d="M132 196 C134 138 190 122 236 128 C290 134 318 164 304 198 C292 226 226 236 180 228 C150 224 130 216 132 196 Z"
      />
      <path
        className="wrinkles"
        d="M156 156 q20 34 4 60 M178 146 q26 44 6 76 M202 142 q26 48 8 80 M226 142 q22 46 8 78"
      />
      <Finger x={138} y={188} turn={-64} long={150} />
      <Arrow d="M40 268 H96" head={[114, 268, 0]} />
      <Mark x={362} y={38} good />
    </>
  );
}

export function PlateRunny() {
  return (
    <>
      <Dish />
      <path
        className="juice"
        d="M58 200 C54 170 92 158 118 162 C150 140 208 148 238 158 C282 146 344 166 346 196 C342 224 300 222 282 234 C240 252 150 246 122 234 C84 236 58 222 58 200 Z"
      />
      <path
        className="puddle"
        d="M92 196 C92 174 150 166 200 168 C262 168 310 178 308 198 C304 222 250 226 200 226 C140 226 94 218 92 196 Z"
      />
      <path className="faint" d="M206 172 Q196 196 204 222" />
      <Drop x={352} y={232} size={0.9} />
      <Drop x={52} y={230} size={0.8} />
      <Mark x={362} y={38} />
    </>
  );
}

export function ColdPlate() {
  return (
    <>
      <path className="box" d="M30 26 H370 V274 H30 Z" />
      <path className="box-door" d="M30 26 L8 46 V254 L30 274 Z" />
      <path className="shelf" d="M34 214 H366" />
      <ellipse className="dish-shadow" cx={206} cy={204} rx={116} ry={12} />
      <path className="dish" d="M94 184 H318 Q300 208 258 208 H154 Q112 208 94 184 Z" />
      <Flake x={104} y={92} r={30} />
      <Flake x={212} y={120} r={38} />
      <Flake x={314} y={84} r={26} />
    </>
  );
}

/** The six-armed crystal that stands for cold. */
export function Flake({ x, y, r }: { x: number; y: number; r: number }) {
  const arms = [0, 60, 120, 180, 240, 300];
  return (
    <g className="flake" transform={`translate(${x} ${y})`}>
      {arms.map((angle) => (
        <path
          key={angle}
          transform={`rotate(${angle})`}
          d={`M0 0 V${-r} M${-r * 0.26} ${-r * 0.86} L0 ${-r * 0.6} L${r * 0.26} ${-r * 0.86}`}
        />
      ))}
    </g>
  );
}

function SideSpoon({ y }: { y: number }) {
  return (
    <path
      className="tool"
      d={`M40 ${y} Q100 ${y + 46} 160 ${y} H340 q10 4 0 10 H164 Q100 ${y + 62} 40 ${y} Z`}
    />
  );
}

/** Above: thin, it runs off in drops. Below: thick, it hangs from the edge in one sheet. */
export function SpoonCoats() {
  return (
    <>
      <SideSpoon y={32} />
      <Drop x={70} y={84} size={0.9} />
      <Drop x={104} y={108} size={0.9} />
      <Drop x={134} y={84} size={0.9} />
      <Mark x={362} y={84} />
      <path
        className="dollop"
        d="M36 172 Q42 152 100 150 Q158 152 166 172 Q150 214 140 222 Q138 270 128 274 Q110 282 88 274 Q74 270 70 226 Q48 210 36 172 Z"
      />
      <path className="tool" d="M158 170 H340 q10 4 0 10 H160 Z" />
      <Steam x={250} y={158} />
      <Mark x={362} y={238} good />
    </>
  );
}
