// Pictures of the jar in hand: what to look for in it, how to fill, wipe, close, test and label it.

import { SmallJar } from '../SmallJar.tsx';
import { Arrow, Bracket, Drop, Finger, Mark, Steam } from './parts.tsx';
import { Flake } from './plates.tsx';

/** The upper part of a jar, close up, its rim at the top of the sheet. */
function Neck({ level, rim = 46 }: { level: number; rim?: number }) {
  const wall = `M116 ${rim} V96 C116 118 76 118 76 156 V316`;
  const other = `M284 ${rim} V96 C284 118 324 118 324 156 V316`;
  return (
    <>
      <path
        className="mass"
        d={`M118 ${Math.max(level, rim)} H282 V96 C282 118 322 118 322 156 V316 H78 V156 C78 118 118 118 118 96 Z`}
      />
      <path className="surface" d={`M118 ${level} H282`} />
      <path className="glassware" strokeWidth={9} strokeLinecap="round" d={`${wall} ${other}`} />
      <path
        className="thread"
        d={`M108 ${rim + 14} h16 M108 ${rim + 34} h16 M276 ${rim + 14} h16 M276 ${rim + 34} h16`}
      />
    </>
  );
}

export function Headspace() {
  return (
    <>
      <Neck level={92} />
      <Bracket x={344} top={46} bottom={92} />
      <path className="faint" d="M122 46 H330 M290 92 H330" />
      <Arrow d="M200 12 V62" head={[200, 82, 90]} />
    </>
  );
}

export function BubblesOut() {
  return (
    <>
      <Neck level={92} />
      <g className="air">
        <circle cx={286} cy={168} r={13} />
        <circle cx={292} cy={206} r={9} />
        <circle cx={266} cy={244} r={11} />
        <circle cx={200} cy={206} r={8} />
        <circle cx={292} cy={266} r={8} />
      </g>
      <path className="tool" d="M84 20 Q96 6 108 16 L150 270 Q150 284 140 282 Q130 282 126 270 Z" />
      <Arrow d="M240 214 V140" head={[240, 122, -90]} />
    </>
  );
}

/** A jar seen a little from above: its rim is an open ring. */
function OpenJar({ cx = 200, cy = 120, rx = 112 }: { cx?: number; cy?: number; rx?: number }) {
  const ry = rx * 0.3;
  return (
    <>
      <path className="mass" d={`M${cx - rx + 8} ${cy + 10} V300 H${cx + rx - 8} V${cy + 10} Z`} />
      <path className="glassware" strokeWidth={8} d={`M${cx - rx} ${cy} V300 M${cx + rx} ${cy} V300`} />
      <ellipse className="mass-top" cx={cx} cy={cy + 16} rx={rx - 14} ry={ry - 6} />
      <ellipse className="rim-ring" cx={cx} cy={cy} rx={rx} ry={ry} />
    </>
  );
}

export function WipeRim() {
  return (
    <>
      <OpenJar cy={140} />
      <Drop x={118} y={122} size={1.1} />
      <path
        className="cloth"
        d="M228 86 Q262 70 300 96 Q352 110 344 150 Q350 196 318 204 Q300 214 292 186 Q280 160 256 158 Q222 164 220 130 Q216 100 228 86 Z"
      />
      <path className="cloth-fold" d="M252 104 q34 10 44 52 M284 104 q30 22 26 68" />
      <Arrow d="M292 60 Q200 16 112 70" head={[94, 84, 140]} />
    </>
  );
}

export function FingertipTight() {
  const tips: readonly (readonly [number, number, number])[] = [
    [126, 96, -52],
    [96, 150, -90],
    [274, 96, 52],
  ];
  const knurls = Array.from({ length: 36 }, (_, i) => i * 10);
  return (
    <>
      <circle className="ring" cx={200} cy={156} r={112} />
      {knurls.map((angle) => (
        <path key={angle} className="knurl" transform={`rotate(${angle} 200 156)`} d="M200 46 V60" />
      ))}
      <circle className="disc" cx={200} cy={156} r={84} />
      <circle className="disc-line" cx={200} cy={156} r={62} />
      {tips.map(([x, y, turn]) => (
        <Finger key={turn} x={x} y={y} turn={turn} long={96} />
      ))}
      <Arrow d="M156 138 A48 48 0 0 1 246 166" head={[240, 184, 108]} />
    </>
  );
}

export function HotJars() {
  return (
    <>
      <SmallJar x={34} y={104} w={120} h={172} fill={0.8} lid="off" />
      <SmallJar x={246} y={104} w={120} h={172} fill={0.8} lid="off" />
      <path className="crack" d="M252 262 L276 226 L262 206 L296 172 L284 148" />
      <Steam x={94} y={88} big />
      <Flake x={222} y={150} r={20} />
      <Flake x={384} y={216} r={16} />
      <Mark x={178} y={40} good />
      <Mark x={362} y={40} />
      <path className="towel" d="M14 284 H386" />
    </>
  );
}

export function Funnel() {
  return (
    <>
      <SmallJar x={130} y={126} w={140} h={166} fill={0.62} lid="off" />
      <path className="stream" d="M188 104 Q200 118 196 224 H206 Q206 118 214 104 Z" />
      <path className="funnel" d="M116 66 H284 L230 126 V156 H170 V126 Z" />
      <path className="mass-pour" d="M262 34 Q226 44 206 70 Q196 86 204 96 Q218 84 228 72 Q250 52 282 56 Z" />
      <path className="tool" d="M258 28 H342 Q340 78 302 78 Q262 78 258 28 Z M336 22 L392 -4 V10 L342 34 Z" />
    </>
  );
}

/** The top of a closed jar from the side: the lid alone, its ring off. */
function LidTop({ bend }: { bend: number }) {
  return (
    <>
      <path className="mass" d="M92 218 H308 V310 H92 Z" />
      <path
        className="glassware"
        strokeWidth={9}
        d="M112 148 V186 C112 206 84 206 84 240 V310 M288 148 V186 C288 206 316 206 316 240 V310"
      />
      <path className="thread" d="M104 164 h16 M104 182 h16 M280 164 h16 M280 182 h16" />
      <path
        className={bend > 0 ? 'lid-side down' : 'lid-side up'}
        d={`M96 150 V132 Q200 ${132 + bend * 2} 304 132 V150 Q200 ${150 + bend * 2} 96 150 Z`}
      />
    </>
  );
}

export function LidDown() {
  return (
    <>
      <LidTop bend={17} />
      <Finger x={200} y={146} long={150} />
      <path className="faint" d="M76 132 H92 M308 132 H324" />
      <Mark x={352} y={44} good />
    </>
  );
}

export function LidUp() {
  return (
    <>
      <LidTop bend={-24} />
      <Finger x={200} y={100} long={110} />
      <path
        className="spring"
        d="M132 96 q-14 -16 0 -30 M112 108 q-22 -24 0 -50 M268 96 q14 -16 0 -30 M288 108 q22 -24 0 -50"
      />
      <Mark x={352} y={44} />
    </>
  );
}

export function NickedRim() {
  return (
    <>
      <g transform="translate(-104 10) scale(1)">
        <OpenJar cx={204} cy={128} rx={80} />
      </g>
      <OpenJar cx={298} cy={138} rx={80} />
      <path className="nick" d="M312 152 L326 178 L344 150 Z" />
      <path className="crack" d="M326 178 L318 206 L334 228 L322 258" />
      <Mark x={100} y={52} good />
      <Mark x={298} y={52} />
    </>
  );
}

export function Label() {
  return (
    <>
      <SmallJar x={62} y={24} w={160} h={256} fill={1} lid="down" />
      <rect className="paper" x={76} y={130} width={132} height={100} />
      <path className="writing" d="M92 158 q10 -16 18 0 t18 0 t18 0 t18 0 M92 188 h70 M92 208 h44" />
      <g className="loose-ring">
        <ellipse cx={318} cy={262} rx={58} ry={17} />
        <path d="M260 262 v-16 M376 262 v-16" />
        <ellipse cx={318} cy={246} rx={58} ry={17} />
      </g>
      <Arrow d="M240 60 Q312 60 318 190" head={[318, 212, 92]} />
      <path className="towel" d="M14 288 H386" />
    </>
  );
}

export function RestStill() {
  return (
    <>
      {[36, 152, 268].map((x) => (
        <SmallJar key={x} x={x} y={118} w={92} h={148} fill={1} lid="on" />
      ))}
      <path className="towel" d="M10 272 H390 M10 284 H390" />
      <g className="target">
        <path className="bracket" d="M130 238 v20 M130 248 h20 M150 238 v20" />
        <path className="bracket" d="M246 238 v20 M246 248 h20 M266 238 v20" />
      </g>
      <path className="moon" d="M212 22 A40 40 0 1 0 240 92 A46 46 0 0 1 212 22 Z" />
      <path className="star" d="M284 34 v20 M274 44 h20 M322 66 v16 M314 74 h16 M118 46 v16 M110 54 h16" />
    </>
  );
}
