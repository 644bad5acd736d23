// Pictures of the canner, and of the two machines with an edge: the blender and the mill.

import { SmallJar } from '../SmallJar.tsx';
import {
  Arrow,
  Bracket,
  Bubbles,
  Clock,
  Drop,
  Mark,
  RackedJars,
  Steam,
  Vessel,
  WATER_HUE,
} from './parts.tsx';

const JARS_TOP = 146;
const WATER = 106;

export function WaterOverJars() {
  return (
    <>
      <Vessel level={WATER} of="water" flame="low">
        <RackedJars top={JARS_TOP} />
      </Vessel>
      <Bracket x={330} top={WATER} bottom={JARS_TOP} />
      <path className="faint" d={`M84 ${JARS_TOP} H318`} />
    </>
  );
}

/** The lid is off for the picture only: what is to be known is how the top looks. */
export function CannerBoil() {
  return (
    <>
      <Vessel level={WATER} surface="rolling" of="water" flame="high">
        <Bubbles count={30} size={[4, 13]} top={WATER} rolling />
        <RackedJars top={JARS_TOP} />
      </Vessel>
      <Steam x={120} y={72} />
      <Steam x={200} y={62} big />
      <Steam x={280} y={72} />
    </>
  );
}

export function BoilLost() {
  return (
    <>
      <Vessel level={WATER} of="water" flame="low">
        <Bubbles count={3} size={[3, 6]} top={WATER} />
        <RackedJars top={JARS_TOP} />
      </Vessel>
      <Clock x={200} y={44} r={34} share={0.34} struck />
    </>
  );
}

export function CoolStand() {
  return (
    <>
      <Vessel level={WATER} of="water" flame="off">
        <RackedJars top={JARS_TOP} />
      </Vessel>
      <path className="tool" d="M356 292 Q392 190 372 96 L360 98 Q376 190 344 288 Z" />
      <Clock x={200} y={44} r={36} share={5 / 60} />
      <Steam x={110} y={62} />
      <Steam x={292} y={62} />
    </>
  );
}

/** The cook stands at the right; the lid opens at the left. */
export function LidAway() {
  return (
    <>
      <g transform="translate(36 76) scale(0.74)">
        <Vessel level={128} of="water" flame="off" />
        <g transform="translate(348 58) rotate(26)">
          <path className="tool" d="M10 0 Q-144 -50 -298 0 V12 H10 Z" />
          <path className="tool" d="M-162 -28 v-20 q0 -10 10 -10 h16 q10 0 10 10 v20 Z" />
        </g>
      </g>
      <Steam x={82} y={112} turn={-40} big />
      <Steam x={104} y={92} turn={-14} big />
      <Steam x={62} y={126} turn={-66} big />
      <path className="skin" d="M292 232 Q300 176 344 170 Q392 172 404 240 V310 H300 Z" />
      <circle className="skin" cx={344} cy={126} r={36} />
      <path className="nail" d="M322 122 q6 -8 12 0 M326 142 q10 8 20 2" />
      <path className="sleeve" d="M322 226 Q252 190 226 62" />
      <path className="sleeve inside" d="M322 226 Q252 190 226 62" />
      <circle className="skin" cx={223} cy={54} r={17} />
    </>
  );
}

export function LiftUpright() {
  return (
    <>
      <g className="hued" style={WATER_HUE}>
        <path className="mass" d="M40 252 H262 V310 H40 Z" />
        <path className="surface" d="M40 252 H262" />
      </g>
      <SmallJar x={103} y={134} w={96} h={140} fill={1} lid="on" />
      <path
        className="lifter"
        d="M126 10 Q176 64 196 96 Q216 124 198 158 M176 10 Q126 64 106 96 Q86 124 104 158"
      />
      <circle className="tool" cx={151} cy={42} r={10} />
      <Arrow d="M40 216 V110" head={[40, 92, -90]} />
      <g transform="translate(306 132) rotate(34)">
        <SmallJar x={0} y={0} w={64} h={98} fill={1} lid="on" />
      </g>
      <Mark x={348} y={72} />
    </>
  );
}

export function VentedBlender() {
  return (
    <>
      <path className="mass" d="M136 158 H264 L256 236 H144 Z" />
      <path className="surface" d="M136 158 H264" />
      <path className="glassware" strokeWidth={9} strokeLinejoin="round" d="M122 76 H278 L258 238 H142 Z" />
      <path className="glassware" strokeWidth={8} d="M276 104 q52 0 44 58 q-6 34 -52 36" />
      <path className="tool" d="M132 240 H268 L282 294 H118 Z" />
      <path className="tool" d="M116 60 H176 V78 H116 Z M224 60 H284 V78 H224 Z" />
      <path
        className="cloth"
        d="M126 44 Q200 18 274 44 Q286 50 280 66 Q240 44 200 44 Q160 44 120 66 Q114 50 126 44 Z"
      />
      <Steam x={92} y={66} turn={-30} />
      <Steam x={308} y={66} turn={30} />
      <path className="faint" d="M132 158 H268" />
      <g className="target">
        <path d="M92 145 l26 13 l-26 13 Z" />
      </g>
    </>
  );
}

export function Strain() {
  return (
    <>
      <path className="mass" d="M104 96 H296 L262 150 H138 Z" />
      <g className="skins">
        <path d="M128 92 q18 -26 36 0 M178 90 q20 -30 42 0 M236 92 q18 -26 36 0" />
      </g>
      <path className="glassware" strokeWidth={9} strokeLinejoin="round" d="M84 60 L142 154 H258 L316 60" />
      <path className="rack" d="M146 158 H254" />
      <path className="tool" d="M194 14 H206 V140 H194 Z M206 14 H300 V26 H206 Z M288 -4 h14 v30 h-14 Z" />
      <path className="tool" d="M156 148 Q178 128 200 144 Q222 128 244 148 Z" />
      <Drop x={166} y={188} />
      <Drop x={200} y={200} />
      <Drop x={234} y={188} />
      <path className="mass" d="M98 250 H302 Q280 286 236 286 H164 Q120 286 98 250 Z" />
      <path className="enamel" strokeWidth={9} d="M70 212 Q84 290 164 290 H236 Q316 290 330 212" />
      <Arrow d="M236 54 Q286 66 318 44" head={[334, 32, -38]} />
    </>
  );
}
