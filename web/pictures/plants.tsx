import { pictureWords } from '../words.ts';
import { Drawing, Measure } from './drawing.tsx';

/** A young rape plant: seed leaves below, true leaves counted. */
export function TrueLeaves() {
  const words = pictureWords['true-leaves'];
  return (
    <Drawing says={words.says} caption={words.caption} size={[320, 230]}>
      <path class="pic-earth" d="M4 226v-22q70-6 156 0 90-5 156 0v22z" />
      <path class="pic-line" d="M160 204v-74" />
      <path class="pic-line" d="M160 176q-16-4-24 2M160 176q16-4 24 2" />
      <path class="pic-dash" d="M136 178q-24-18-34 2 4 20 34-2ZM184 178q24-18 34 2-4 20-34-2Z" />
      <path
        class="pic-line"
        d="M160 140q-24-8-40-24-18 6-44-8-10-28 14-38 28-6 34 18 6 14-4 28M160 136q24-8 38-26 20 8 44-10 10-28-16-36-26-4-30 22-4 12 2 24"
      />
      <path class="pic-line" d="M160 130q-2-16 0-30-26-8-22-44 10-26 22-34 14 8 22 34 4 36-22 44" />
      <text x="99" y="104" text-anchor="middle" class="pic-count">
        1
      </text>
      <text x="220" y="102" text-anchor="middle" class="pic-count">
        2
      </text>
      <text x="160" y="70" text-anchor="middle" class="pic-count">
        3
      </text>
      <text x="272" y="183" text-anchor="middle">
        {words.seed}
      </text>
      <path class="pic-thin" d="M222 178h12" />
    </Drawing>
  );
}

/** A grass plant from its base: the first shoot counts as none. */
export function Tillers() {
  const words = pictureWords.tillers;
  return (
    <Drawing says={words.says} caption={words.caption} size={[320, 220]}>
      <path class="pic-earth" d="M4 216v-22q70-6 156 0 90-5 156 0v22z" />
      <path class="pic-line" d="M157 196q-4-80 0-158M163 196q0-60 4-96M157 90q-30-30-34-58M160 70q30-26 34-60" />
      <path
        class="pic-line"
        d="M150 196q-14-50-62-98M146 196q-24-46-70-70M168 196q12-50 56-100M174 196q20-44 70-76M178 198q40-34 92-40M182 200q40-22 96-18"
      />
      <text x="160" y="26" text-anchor="middle" class="pic-count">
        0
      </text>
      <text x="66" y="106" text-anchor="middle" class="pic-count">
        1
      </text>
      <text x="246" y="98" text-anchor="middle" class="pic-count">
        2
      </text>
      <text x="290" y="164" text-anchor="middle" class="pic-count">
        3
      </text>
    </Drawing>
  );
}

/** A frame of half a metre by half a metre laid in the crop. */
export function Quadrat() {
  const words = pictureWords.quadrat;
  const tufts: readonly (readonly [number, number])[] = [
    [120, 96],
    [168, 84],
    [210, 104],
    [140, 130],
    [196, 138],
    [40, 80],
    [286, 90],
    [60, 156],
    [270, 150],
  ];
  return (
    <Drawing says={words.says} caption={words.caption} size={[320, 210]}>
      <path class="pic-thin" d="M4 50h312M4 40q40-10 80 0t80 0 80 0 72 0" />
      <path class="pic-frame" d="M104 64h112l40 100H64z" />
      {tufts.map(([x, y]) => (
        <path key={`${x} ${y}`} class="pic-line" d={`M${x} ${y}v-16M${x} ${y}q-4-8-10-12M${x} ${y}q4-8 10-12`} />
      ))}
      <Measure from={[64, 178]} to={[256, 178]} words={words.side} at={[160, 200]} />
    </Drawing>
  );
}
