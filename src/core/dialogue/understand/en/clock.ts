import type { ClockWords } from '../clock.ts';

const numbers = 'one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve'.split('|');
const hour = `(?<hour>\\d{1,2}|${numbers.join('|')})`;
const part = '(?:in the|this|yesterday)? ?(?:morning|afternoon|evening)';
const patterns: readonly RegExp[] = [
  /\b(?:at )?(?<hour>\d{1,2}):(?<minute>[0-5]\d) ?(?<half>[ap])?(?:\.?m\b\.?)?/g,
  new RegExp(`\\b(?:at )?${hour} ?(?<half>[ap])\\.?m\\b\\.?`, 'g'),
  /\b(?:at )?(?:(?:12|twelve)(?: o'?clock)?,? ?(?:at )?)?(?<noon>noon|midday)\b/g,
  /\b(?:at )?(?:(?:12|twelve)(?: o'?clock)?,? ?(?:at )?)?(?<midnight>midnight)\b/g,
  new RegExp(`\\b(?:at )?(?<shift>half past|quarter past|quarter to) ${hour}\\b`, 'g'),
  new RegExp(`\\b(?:at )?${hour} ?o'? ?clock\\b`, 'g'),
  new RegExp(`(?<=\\b${part} )at ${hour}\\b(?! ?(?:cm|c|f|degrees|deg|inch|inches|in)\\b|[.\\d])`, 'g'),
  new RegExp(`\\bat ${hour}(?= ${part}\\b)`, 'g'),
];
const shifts = { 'half past': 30, 'quarter past': 15, 'quarter to': -15 };

/** How hours and days are said. */
export const clockWords: ClockWords = {
  patterns,
  numbers: Object.fromEntries(numbers.map((word, at) => [word, at + 1])),
  shifts,
  now: /\b(?:just|right)? ?now\b/,
  yesterday: /\b(?:yesterday|last night)\b/,
  dayBefore: /\bday before yesterday\b/,
  morning: /\bmorning\b/,
  later: /\b(?:afternoon|evening)\b/,
};
