import { pictureWords } from '../words.ts';
import { Drawing } from './drawing.tsx';

/** The roll that a wetted handful makes, by texture group. */
export function TextureRoll() {
  const words = pictureWords['texture-roll'];
  return (
    <div class="picture-row">
      <Drawing says={words.light} caption={words.light} size={[120, 90]}>
        <path class="pic-earth" d="M22 44q-4-12 8-14l26-2q12 0 10 12-2 10-12 12l-22 3q-8 0-10-11z" />
        <path class="pic-crack" d="M36 30l3 10-5 12M50 29l-4 12 6 10" />
        <path class="pic-dots" d="M76 44h0M84 56h0M92 42h0M70 62h0M100 60h0M58 68h0M40 66h0M86 70h0M28 66h0" />
      </Drawing>
      <Drawing says={words.medium} caption={words.medium} size={[120, 90]}>
        <path class="pic-earth" d="M12 66q2-44 48-46 46 2 48 46H86q-2-24-26-25-24 1-26 25z" />
        <path class="pic-crack" d="M56 20l5 9-6 8M34 27l8 8-2 8M84 28l-6 9 4 8" />
      </Drawing>
      <Drawing says={words.heavy} caption={words.heavy} size={[120, 90]}>
        <path
          class="pic-earth"
          fill-rule="evenodd"
          d="M60 10a35 35 0 1 1 0 70 35 35 0 1 1 0-70ZM60 22a23 23 0 1 0 0 46 23 23 0 1 0 0-46Z"
        />
        <path class="pic-mark" d="M60 68v12" />
      </Drawing>
    </div>
  );
}
