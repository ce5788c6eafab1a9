import { learnWords } from '../words.ts';
import { Drawing } from './drawing.tsx';

/** Texture groups of the hand test. */
export const soilGroups = ['light', 'medium', 'heavy'] as const;
/** A texture group. */
export type SoilGroup = (typeof soilGroups)[number];

/** Feel classes, from dry to wet. */
export const feels = ['dry', 'slightly-moist', 'moist', 'wet', 'at-capacity', 'saturated'] as const;
/** A feel class. */
export type Feel = (typeof feels)[number];

/** What is drawn of a handful. `stain` and `water` go from 0 to 3, `ribbon` from 0 to 2. */
interface Handful {
  readonly ball: 'crumbs' | 'clods' | 'weak' | 'firm' | 'soft' | 'slump';
  readonly marks: boolean;
  readonly crumbs: number;
  readonly stain: number;
  readonly ribbon: number;
  readonly outline: boolean;
  readonly water: 'none' | 'film' | 'runs';
}

const dry: Handful = { ball: 'crumbs', marks: false, crumbs: 8, stain: 0, ribbon: 0, outline: false, water: 'none' };
const soaked: Handful = { ball: 'slump', marks: false, crumbs: 0, stain: 3, ribbon: 0, outline: true, water: 'runs' };

/** By the words of the trainer, which follow USDA NRCS (1998). */
const handfuls: Readonly<Record<SoilGroup, Readonly<Record<Feel, Handful>>>> = {
  light: {
    dry,
    'slightly-moist': { ...dry, ball: 'weak', marks: true, crumbs: 6 },
    moist: { ...dry, ball: 'weak', crumbs: 4, stain: 1 },
    wet: { ...dry, ball: 'weak', crumbs: 3, stain: 2, outline: true },
    'at-capacity': { ...dry, ball: 'soft', crumbs: 1, stain: 3, outline: true, water: 'film' },
    saturated: soaked,
  },
  medium: {
    dry: { ...dry, ball: 'clods', crumbs: 6 },
    'slightly-moist': { ...dry, ball: 'weak', crumbs: 3 },
    moist: { ...dry, ball: 'firm', crumbs: 0, stain: 1, ribbon: 1 },
    wet: { ...dry, ball: 'firm', marks: true, crumbs: 0, stain: 2, ribbon: 1, outline: true },
    'at-capacity': { ...dry, ball: 'soft', crumbs: 0, stain: 3, ribbon: 1, outline: true, water: 'film' },
    saturated: soaked,
  },
  heavy: {
    dry: { ...dry, ball: 'clods', crumbs: 2 },
    'slightly-moist': { ...dry, ball: 'weak', crumbs: 1 },
    moist: { ...dry, ball: 'firm', marks: true, crumbs: 0, stain: 1, ribbon: 1 },
    wet: { ...dry, ball: 'firm', crumbs: 0, stain: 2, ribbon: 2, outline: true },
    'at-capacity': { ...dry, ball: 'soft', crumbs: 0, stain: 3, ribbon: 2, outline: true, water: 'film' },
    saturated: soaked,
  },
};

const crumbPlaces: readonly (readonly [number, number])[] = [
  [62, 150],
  [182, 148],
  [88, 162],
  [160, 164],
  [46, 138],
  [200, 134],
  [124, 170],
  [74, 128],
];

/** A hand with a squeezed handful, thumb and finger beside it. What it shows is said by what the hand feels, never by the class. */
export function HandTest({ group, feel }: { readonly group: SoilGroup; readonly feel: Feel }) {
  const handful = handfuls[group][feel];
  return (
    <Drawing says={learnWords.hand.feels[group][feel]} size={[320, 200]}>
      <path
        class="pic-line"
        d="M30 196q-16-34-8-66 4-22 20-12l8 22M50 140l-8-60q0-14 10-14t12 14l10 46M74 126l-4-76q0-12 10-12t12 12l8 72M100 122l4-78q2-12 12-12t10 14l-2 78M124 124l14-62q4-12 14-8t6 16l-14 66M144 136q20-22 38-28 16-2 8 14-22 22-32 50-4 18-8 24"
      />
      {handful.outline && <ellipse class="pic-wet" cx="98" cy="150" rx="50" ry="30" />}
      <Lump {...handful} />
      {crumbPlaces.slice(0, handful.crumbs).map(([x, y]) => (
        <circle key={`${x} ${y}`} class="pic-earth" cx={x} cy={y} r="5" />
      ))}
      <Fingers {...handful} />
      {handful.water === 'film' && <path class="pic-gleam" d="M76 122q10-10 24-8M112 116q8 2 12 8M84 134q6-6 14-6" />}
      {handful.water === 'runs' && (
        <path
          class="pic-drop"
          d="M60 172q-8 12 0 16 8-4 0-16ZM98 176q-8 12 0 16 8-4 0-16ZM138 172q-8 12 0 16 8-4 0-16ZM118 170v8M78 170v8"
        />
      )}
    </Drawing>
  );
}

function Lump({ ball, marks }: Handful) {
  return (
    <>
      {ball === 'crumbs' && <path class="pic-earth" d="M48 160q14-18 32-22 18-6 36 0 18 6 30 22z" />}
      {ball === 'clods' && (
        <path
          class="pic-earth"
          d="M56 160l6-22 20-10 16 12 2 20zM104 160l4-26 22-6 16 16-4 16zM82 128l12-18 20 2 6 18-18 10z"
        />
      )}
      {ball === 'weak' && (
        <path class="pic-earth" d="M64 156q-10-22 8-36 12-14 30-8 22 0 28 20 4 16-10 26-26 8-56-2z" />
      )}
      {ball === 'weak' && <path class="pic-crack" d="M92 114l4 14-8 10 8 18M112 118l-2 12 10 10" />}
      {ball === 'firm' && <circle class="pic-earth" cx="98" cy="134" r="28" />}
      {ball === 'soft' && <path class="pic-earth" d="M62 152q-4-26 18-34 20-8 40 2 18 12 14 34-34 14-72-2z" />}
      {ball === 'slump' && <path class="pic-earth" d="M40 164q10-22 40-26 24-6 46 4 22 8 26 24-56 12-112-2z" />}
      {marks && <path class="pic-mark" d="M78 124q8 6 16 1M76 136q10 6 18 0M80 148q9 5 16-1" />}
    </>
  );
}

/** Thumb and finger: clean, or stained by more and more dots; a ribbon between them where one holds. */
function Fingers({ stain, ribbon }: Handful) {
  return (
    <>
      <path class="pic-line" d="M316 84q-40-2-66 16-10 8-2 16 8 6 20 0 24-10 48-10" />
      <path class="pic-line" d="M316 40q-50-6-74 22-6 10 2 16 10 6 20-4 16-14 52-12" />
      {stain > 0 && <path class="pic-stain" d="M250 68h0M258 62h0M252 106h0M262 102h0" />}
      {stain > 1 && <path class="pic-stain" d="M246 74h0M266 56h0M272 98h0M258 110h0M256 72h0" />}
      {stain > 2 && <path class="pic-stain" d="M276 52h0M284 50h0M282 94h0M292 92h0M264 66h0M266 108h0M246 98h0" />}
      {ribbon === 1 && <path class="pic-earth" d="M236 84l-22 6-4-10 28-8z" />}
      {ribbon === 2 && <path class="pic-earth" d="M238 84q-34 4-44 40-2 14 4 30l-12 2q-8-20-4-36 10-40 54-48z" />}
    </>
  );
}
