import type { ComponentChildren } from 'preact';
import { pictureWords } from '../words.ts';
import { Drawing } from './drawing.tsx';

const signs = ['friable', 'cracked', 'sticky', 'ponded', 'frozen', 'snow'] as const;

/** What the surface may look like, a drawing a sign. */
export function SoilSurface() {
  const words = pictureWords['soil-surface'];
  return (
    <div class="picture-row">
      {signs.map((sign) => (
        <Drawing key={sign} says={words[sign]} caption={words[sign]} size={[120, 80]}>
          {drawings[sign]}
        </Drawing>
      ))}
    </div>
  );
}

const drawings: Readonly<Record<(typeof signs)[number], ComponentChildren>> = {
  friable: (
    <>
      <path
        class="pic-earth"
        d="M4 76V56q8-8 14-2 6-10 14-2 8-8 16 0 8-10 16-1 8-8 15 1 8-8 14 1 8-7 13 2 6-6 10 0v21z"
      />
      <path class="pic-dots" d="M22 42h0M48 38h0M74 42h0M98 40h0M60 46h0" />
    </>
  ),
  cracked: (
    <>
      <path class="pic-earth" d="M4 28h112v48H4z" />
      <path
        class="pic-gap"
        d="M4 46l22-6 16 12 24-8 20 10 30-8M26 40l6-12M42 52l-6 24M66 44l4-16M86 54l6 22M66 44l-2 32"
      />
    </>
  ),
  sticky: (
    <>
      <path class="pic-line" d="M38 6v34q0 8 8 8h34q8 0 8-8 0-6-10-8L62 26V6z" />
      <path class="pic-earth" d="M34 46q28 8 58-2 6 14-6 16-20 6-46 1-10-3-6-15z" />
      <path class="pic-earth" d="M4 78v-8h112v8z" />
      <path class="pic-mark" d="M46 62v8M62 64v6M78 62v8" />
    </>
  ),
  ponded: (
    <>
      <path class="pic-earth" d="M4 76V40q14 0 20 8 10 12 36 12t38-12q6-8 18-8v36z" />
      <path
        class="pic-line"
        d="M24 44h76M34 50h14M56 52h18M80 49h10M44 30q-6 8 0 10 6-2 0-10ZM66 22q-6 8 0 10 6-2 0-10Z"
      />
    </>
  ),
  frozen: (
    <>
      <path class="pic-earth" d="M4 52h112v24H4z" />
      <path
        class="pic-line"
        d="M4 52l10-12 8 12 10-16 10 16 8-10 10 10 8-14 10 14 8-10 10 10 10-14 10 14M60 6v22M50 11l20 12M70 11L50 23"
      />
    </>
  ),
  snow: (
    <>
      <path class="pic-earth" d="M4 62h112v14H4z" />
      <path class="pic-sheet" d="M4 62V48q14-12 30-6 18-10 34-2 18-8 30 2 10 0 18 6v14z" />
      <path class="pic-flakes" d="M24 22h0M48 12h0M70 26h0M94 14h0M40 30h0" />
    </>
  ),
};
