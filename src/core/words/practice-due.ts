import type { PracticeWords } from './practice-words.ts';

/** When a day comes again, from now: "in 6 minutes", "tomorrow", "due now". Seconds. */
export function describeDue(seconds: number, words: PracticeWords): string {
  if (seconds <= 0) return words.dueNow;
  const minutes = Math.ceil(seconds / 60);
  if (minutes < 60) return words.inMinutes(minutes);
  const hours = Math.round(minutes / 60);
  return hours < 24 ? words.inHours(hours) : words.inDays(Math.round(hours / 24));
}

/** The same for a list: "due now", "next in 6 minutes". */
export function describeNext(seconds: number, words: PracticeWords): string {
  return seconds <= 0 ? words.dueNow : words.due(describeDue(seconds, words));
}
