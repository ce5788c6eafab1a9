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

/** How hours and days are said. */
export interface ClockWords {
  /** With groups `hour`, `minute`, `half` (a or p), `noon`, `midnight` or `shift`; global. */
  readonly patterns: readonly RegExp[];
  /** Words of one to twelve. */
  readonly numbers: Readonly<Record<string, number>>;
  /** Minutes that a shift adds to the hour ("half past"). */
  readonly shifts: Readonly<Record<string, number>>;
  readonly now: RegExp;
  readonly yesterday: RegExp;
  readonly dayBefore: RegExp;
  readonly morning: RegExp;
  /** Afternoon or evening. */
  readonly later: RegExp;
  /** Around noon, where hours are counted from it too. */
  readonly noonish?: RegExp;
  readonly night?: RegExp;
}

/**
 * The one hour that a text names, and the text with it blanked out, just as long. Null where it names none, or several, or an
 * hour that no clock shows.
 */
export function clockOf(text: string, words: ClockWords): { readonly rest: string; readonly clock: Clock } | null {
  const folded = fold(text);
  let rest = folded;
  const found: Record<string, string | undefined>[] = [];
  for (const pattern of words.patterns) {
    rest = rest.replace(pattern, (whole, ...more) => {
      found.push(more.at(-1) as Record<string, string | undefined>);
      return ' '.repeat(whole.length);
    });
  }
  if (found.length === 0) return words.now.test(folded) ? { rest: text, clock: { kind: 'now' } } : null;
  const clock = found.length === 1 ? timeOf(found[0]!, folded, words) : null;
  return clock === null ? null : { rest, clock };
}

function timeOf(groups: Record<string, string | undefined>, folded: string, words: ClockWords): Clock | null {
  if (groups['midnight'] !== undefined) {
    const isOpen = words.yesterday.test(folded) || words.dayBefore.test(folded);
    return isOpen ? null : { kind: 'time', minute: 0, half: 'said', daysAgo: 0 };
  }
  const daysAgo = words.dayBefore.test(folded) ? 2 : words.yesterday.test(folded) ? 1 : 0;
  if (groups['noon'] !== undefined) return { kind: 'time', minute: 720, half: 'said', daysAgo };
  const written = groups['hour'] ?? '';
  const hours = words.numbers[written] ?? Number(written);
  const half = halfOf(groups['half'], hours, folded, words);
  if (hours > 23 || (half !== null && hours === 0)) return null;
  const minutes = Number(groups['minute'] ?? 0) + (words.shifts[groups['shift'] ?? ''] ?? 0);
  if (hours > 12 || hours === 0) return { kind: 'time', minute: hours * 60 + minutes, half: 'said', daysAgo };
  const ofHalf = (hours % 12) * 60 + minutes;
  if (half === null) return { kind: 'time', minute: (ofHalf + 720) % 720, half, daysAgo };
  return { kind: 'time', minute: (ofHalf + (half === 'pm' ? 720 : 0) + 1440) % 1440, half, daysAgo };
}

/** Nine in the evening, eleven and one at noon, eleven and one at night. */
function halfOf(
  letter: string | undefined,
  hours: number,
  folded: string,
  { morning, later, noonish, night }: ClockWords,
): 'am' | 'pm' | null {
  if (letter !== undefined) return letter === 'a' ? 'am' : 'pm';
  if (noonish?.test(folded)) return hours > 9 && hours < 12 ? 'am' : 'pm';
  if (night?.test(folded)) return hours % 12 < 6 ? 'am' : 'pm';
  const isMorning = morning.test(folded);
  const isLater = later.test(folded);
  return isMorning === isLater ? null : isMorning ? 'am' : 'pm';
}
