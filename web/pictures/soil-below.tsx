import { pictureWords } from '../words.ts';
import { Drawing } from './drawing.tsx';

const grains: readonly (readonly [number, number, number])[] = [
  [22, 24, 14],
  [56, 20, 12],
  [92, 26, 15],
  [30, 60, 15],
  [68, 56, 14],
  [102, 64, 12],
];

/** Water between grains of soil: little, as much as clings, all that goes in. */
export function SoilWater() {
  const words = pictureWords['soil-water'];
  return (
    <div class="picture-row">
      {(['deficit', 'capacity', 'saturated'] as const).map((state) => (
        <Drawing key={state} says={words[state]} caption={words[state]} size={[120, 84]}>
          {state === 'saturated' && <path class="pic-wedge" d="M3 3h114v78H3z" />}
          {grains.map(([x, y, radius]) => (
            <g key={x}>
              {state === 'capacity' && <circle class="pic-wedge" cx={x} cy={y} r={radius + 4} />}
              <circle class="pic-earth" cx={x} cy={y} r={radius} />
            </g>
          ))}
          <path class="pic-line" d="M3 3h114v78H3z" />
        </Drawing>
      ))}
    </div>
  );
}

/** A thread of soil rolled out: it bends, or it begins to crumble. */
export function SoilThread() {
  const words = pictureWords['soil-thread'];
  return (
    <div class="picture-row">
      <Drawing says={words.smears} caption={words.smears} size={[140, 80]}>
        <path class="pic-earth" d="M10 40q30-20 60-6t58-10l4 9q-30 20-62 8t-56 8z" />
        <text x="70" y="72" text-anchor="middle">
          {words.thickness}
        </text>
      </Drawing>
      <Drawing says={words.limit} caption={words.limit} size={[140, 80]}>
        <path
          class="pic-earth"
          d="M8 34l26-3 2 9-26 3zM40 31l22 1-1 9-22-2zM68 32l24-3 2 9-24 4zM98 30l30 4-2 9-29-4z"
        />
        <path class="pic-dots" d="M37 48h0M65 46h0M96 48h0M52 52h0" />
        <text x="70" y="72" text-anchor="middle">
          {words.thickness}
        </text>
      </Drawing>
    </div>
  );
}

/** A cut through a drained field: mole channel, gravel, pipe, outfall in the ditch. */
export function DrainAndMole() {
  const words = pictureWords['drain-and-mole'];
  return (
    <Drawing says={words.says} caption={words.caption} size={[320, 220]}>
      <path class="pic-earth" d="M4 216V40h226l36 150q8 10 18 10h32v16z" />
      <path class="pic-on-earth" d="M20 96h150M20 108h150M170 96v12" />
      <path class="pic-on-earth" d="M28 40l-3 54M156 40l3 54" />
      <path class="pic-flakes pic-on-earth" d="M150 118h0M158 126h0M148 132h0M160 140h0M152 146h0" />
      <path class="pic-on-earth" d="M140 152h118M140 164h121" />
      <path class="pic-line" d="M262 158q14 4 14 34" />
      <text x="90" y="88" text-anchor="middle" class="pic-words-on-earth">
        {words.mole}
      </text>
      <text x="90" y="164" text-anchor="middle" class="pic-words-on-earth">
        {words.pipe}
      </text>
      <text x="316" y="140" text-anchor="end">
        {words.outfall}
      </text>
    </Drawing>
  );
}
