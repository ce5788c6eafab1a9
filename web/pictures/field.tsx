import { pictureWords } from '../words.ts';
import { Drawing, Measure } from './drawing.tsx';

/** Where and how the thermometer goes in: at the shade of the crop, 30 cm deep, five minutes. */
export function Thermometer() {
  const words = pictureWords['thermometer-30cm'];
  return (
    <Drawing says={words.says} caption={words.caption} size={[320, 240]}>
      <path class="pic-earth" d="M4 236V92q80-6 156 0 90-5 156 0v144z" />
      <path class="pic-line" d="M40 22a14 14 0 1 0 .1 0M40 8V2M62 14l4-4M18 14l-4-4M70 36h6M4 36h6" />
      <path
        class="pic-line"
        d="M96 92q-8-20-12-34M96 92q-34-10-54-4 4-22 28-24 18 4 26 28M96 92q-16-44 4-72 22 6 24 34-6 26-28 38M96 92q8-20 14-32"
      />
      <path class="pic-dash" d="M62 30l30 20" />
      <path class="pic-probe-edge" d="M166 58v148" />
      <path class="pic-probe" d="M166 58v148" />
      <circle class="pic-sheet" cx="166" cy="46" r="18" />
      <path class="pic-line" d="M166 46l8-9" />
      <path class="pic-on-earth" d="M204 94v112M198 94h12M198 206h12" />
      <text x="240" y="156" text-anchor="middle" class="pic-words-on-earth">
        {words.depth}
      </text>
      <circle class="pic-sheet" cx="262" cy="42" r="24" />
      <path class="pic-wedge" d="M262 42V18A24 24 0 0 1 274 21.2Z" />
      <path class="pic-line" d="M262 18v5M286 42h-5M262 66v-5M238 42h5" />
      <text x="262" y="86" text-anchor="middle">
        {words.wait}
      </text>
    </Drawing>
  );
}

/** The fall along a hundred metres towards water, drawn steeper than it is. */
export function Slope() {
  const words = pictureWords.slope;
  return (
    <Drawing says={words.says} caption={words.caption} size={[320, 210]}>
      <path class="pic-earth" d="M4 204V50L280 150q6 26 14 26t14-26h8v54z" />
      <path class="pic-line" d="M284 164h20" />
      <path class="pic-dash" d="M4 50h276" />
      <path class="pic-dash" d="M4 50L280 90" />
      <Measure from={[4, 30]} to={[280, 30]} words={words.along} at={[142, 22]} />
      <Measure from={[280, 50]} to={[280, 90]} words={words.gentle} at={[250, 82]} />
      <Measure from={[300, 50]} to={[300, 148]} words={words.steep} at={[298, 44]} />
    </Drawing>
  );
}

/** From the last nozzle of the boom to the top of the bank. */
export function WaterDistance() {
  const words = pictureWords['water-distance'];
  return (
    <Drawing says={words.says} caption={words.caption} size={[320, 190]}>
      <path class="pic-earth" d="M4 186v-54h216l26 34h26l24-34h20v54z" />
      <path class="pic-line" d="M236 154h46M244 160h14M264 160h10" />
      <path
        class="pic-line"
        d="M4 70h112M28 70v8M62 70v8M96 70v8M116 70v-6M22 84l-10 40M34 84l8 40M56 84l-10 40M68 84l8 40M90 84l-10 40M102 84l8 40"
      />
      <path class="pic-dash" d="M96 78v-54M220 132V24" />
      <Measure from={[96, 34]} to={[220, 34]} words={words.measure} at={[158, 24]} />
      <text x="316" y="122" text-anchor="end">
        {words.bank}
      </text>
    </Drawing>
  );
}
