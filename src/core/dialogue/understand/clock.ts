import { fold } from './fold.ts';

/** The hour that a person named for a reading: the moment of speaking, or a time of a day at the field. */
export type Clock =
  | { readonly kind: 'now' }
  | {
      readonly kind: 'time';
      /** Minutes after midnight; of the first half of the day where `half` is open. */
      readonly minute: number;
      /** Which half of the day was said; null where both can be meant. */
      readonly half: 'am' | 'pm' | 'said' | null;
      readonly daysAgo: number;
    };

const numbers = 'one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve'.split('|');
const hour = `(?<hour>\\d{1,2}|${numbers.join('|')})`;
const part = '(?:in the|this|yesterday)? ?(?:morning|afternoon|evening)';
const patterns: readonly RegExp[] = [
  /\b(?:at )?(?<hour>\d{1,2}):(?<minute>[0-5]\d) ?(?<half>[ap])?(?:\.?m\b\.?)?/g,
  new RegExp(`\\b(?:at )?${hour} ?(?<half>[ap])\\.?m\\b\\.?`, 'g'),
  /\b(?:at )?(?<noon>noon|midday)\b/g,
  new RegExp(`\\b(?:at )?(?<shift>half past|quarter past|quarter to) ${hour}\\b`, 'g'),
  new RegExp(`\\b(?:at )?${hour} ?o'?clock\\b`, 'g'),
  new RegExp(`(?<=\\b${part} )at ${hour}\\b(?! ?(?:cm|c|f|degrees|deg|inch|inches|in)\\b|[.\\d])`, 'g'),
  new RegExp(`\\bat ${hour}(?= ${part}\\b)`, 'g'),
];
const shifts: Readonly<Record<string, number>> = { 'half past': 30, 'quarter past': 15, 'quarter to': -15 };

/**
 * The one hour that a text names, and the text with it blanked out, just as long. Null where it names none, or several, or an
 * hour that no clock shows.
 */
export function clockOf(text: string): { readonly rest: string; readonly clock: Clock } | null {
  const folded = fold(text);
  let rest = folded;
  const found: Record<string, string | undefined>[] = [];
  for (const pattern of patterns) {
    rest = rest.replace(pattern, (whole, ...more) => {
      found.push(more.at(-1) as Record<string, string | undefined>);
      return ' '.repeat(whole.length);
    });
  }
  if (found.length === 0)
    return /\b(?:just|right)? ?now\b/.test(folded) ? { rest: text, clock: { kind: 'now' } } : null;
  const clock = found.length === 1 ? timeOf(found[0]!, folded) : null;
  return clock === null ? null : { rest, clock };
}

function timeOf(groups: Record<string, string | undefined>, folded: string): Clock | null {
  const daysAgo = /\bday before yesterday\b/.test(folded) ? 2 : /\b(?:yesterday|last night)\b/.test(folded) ? 1 : 0;
  if (groups['noon'] !== undefined) return { kind: 'time', minute: 720, half: 'said', daysAgo };
  const written = groups['hour'] ?? '';
  const named = numbers.indexOf(written);
  const hours = named < 0 ? Number(written) : named + 1;
  const half = halfOf(groups['half'], folded);
  if (hours > 23 || (half !== null && hours === 0)) return null;
  const minutes = Number(groups['minute'] ?? 0) + (shifts[groups['shift'] ?? ''] ?? 0);
  if (hours > 12 || hours === 0) return { kind: 'time', minute: hours * 60 + minutes, half: 'said', daysAgo };
  const ofHalf = (hours % 12) * 60 + minutes;
  if (half === null) return { kind: 'time', minute: (ofHalf + 720) % 720, half, daysAgo };
  return { kind: 'time', minute: ofHalf + (half === 'pm' ? 720 : 0), half, daysAgo };
}

function halfOf(letter: string | undefined, folded: string): 'am' | 'pm' | null {
  if (letter !== undefined) return letter === 'a' ? 'am' : 'pm';
  const isMorning = /\bmorning\b/.test(folded);
  const isLater = /\b(?:afternoon|evening)\b/.test(folded);
  return isMorning === isLater ? null : isMorning ? 'am' : 'pm';
}
