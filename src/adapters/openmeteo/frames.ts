import { codedError } from '../../core/errors/coded-error.ts';

const prefixBytes = 4;

/**
 * The messages of a reply: each stands behind its length (int32, little-endian). Every length must be above 0 and fit, and the
 * last message must end exactly at the end. Throws FORECAST_GARBLED, naming the byte. Copies, so that each message is aligned.
 */
export function splitFrames(bytes: Uint8Array): Uint8Array[] {
  if (bytes.length === 0) throw garbled('an empty reply');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const frames: Uint8Array[] = [];
  let position = 0;
  while (position < bytes.length) {
    if (position + prefixBytes > bytes.length) throw garbled(`a reply cut off at byte ${position}`);
    const length = view.getInt32(position, true);
    const end = position + prefixBytes + length;
    if (length <= 0) throw garbled(`a message of length ${length} at byte ${position}`);
    if (end > bytes.length) throw garbled(`a message of ${length} bytes at byte ${position} of ${bytes.length}`);
    frames.push(bytes.slice(position, end));
    position = end;
  }
  return frames;
}

function garbled(came: string) {
  return codedError('FORECAST_GARBLED', { expected: 'whole messages, each behind its length', came });
}

/** The message of a reply about one place. Throws FORECAST_GARBLED where it holds none or several, or is not whole. */
export function onlyFrame(bytes: Uint8Array): Uint8Array {
  const [frame, ...more] = splitFrames(bytes);
  if (frame && more.length === 0) return frame;
  throw codedError('FORECAST_GARBLED', { expected: 'one place', came: `${more.length + 1} places` });
}
