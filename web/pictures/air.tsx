import { pictureWords } from '../words.ts';
import { Drawing, Measure } from './drawing.tsx';

/** Smoke over a field on a still, clear morning: it goes up to the warmer air and no further. */
export function Inversion() {
  const words = pictureWords.inversion;
  return (
    <Drawing says={words.says} caption={words.caption} size={[320, 200]}>
      <path class="pic-earth" d="M4 196v-22q70-8 156 0 90-6 156 0v22z" />
      <path class="pic-dash" d="M4 74h312" />
      <path class="pic-line" d="M44 174v-34h34v34M40 142l21-18 21 18M68 128v-14h8v20" />
      <path
        class="pic-line"
        d="M72 110q-6-10 2-16 10-6 30-6h70q14 0 26 4t30 0q20-6 44 0M92 100h52q16 0 26 4t34 0q18-4 40 0"
      />
      <text x="160" y="52" text-anchor="middle">
        {words.warm}
      </text>
      <text x="210" y="146" text-anchor="middle">
        {words.cold}
      </text>
    </Drawing>
  );
}

/** A boom over the crop, its height, and fine drops that the wind takes along. */
export function BoomHeight() {
  const words = pictureWords['boom-height'];
  return (
    <Drawing says={words.says} caption={words.caption} size={[320, 200]}>
      <path class="pic-earth" d="M4 196v-20h312v20z" />
      <path
        class="pic-line"
        d="M24 176q-4-16 2-30M24 176q8-12 4-28M74 176q-4-16 2-30M74 176q8-12 4-28M124 176q-4-16 2-30M124 176q8-12 4-28M174 176q-4-16 2-30M174 176q8-12 4-28M224 176q-4-16 2-30M224 176q8-12 4-28"
      />
      <path class="pic-frame" d="M10 56h200" />
      <path
        class="pic-line"
        d="M50 58v12M110 58v12M170 58v12M46 76l-22 60M54 76l22 60M106 76l-22 60M114 76l22 60M166 76l-22 60M174 76l22 60"
      />
      <path class="pic-dots" d="M214 84h0M236 92h0M258 86h0M280 98h0M226 108h0M250 112h0M302 92h0" />
      <path class="pic-line" d="M214 30h84l-10-8M298 30l-10 8" />
      <Measure from={[140, 72]} to={[140, 144]} words={words.height} at={[262, 150]} />
      <path class="pic-thin" d="M146 132l84 14" />
    </Drawing>
  );
}
