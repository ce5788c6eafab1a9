import type { ClockWords } from '../clock.ts';

const numbers = 'eins|zwei|drei|vier|fünf|sechs|sieben|acht|neun|zehn|elf|zwölf'.split('|');
const hour = `(?<hour>\\d{1,2}|${numbers.join('|')}|ein)`;
const lead = '(?<![\\p{L}\\d])(?:um |gegen |so um )?';
const end = '(?![\\p{L}\\d])';
const ofDay =
  '(?: ?(?:morgens|früh|in der früh|vormittags?|mittags?|nachmittags?|abends?|nachts|am (?:morgen|vormittag|mittag|nachmittag|abend)))?';
const part = '(?:heute|gestern|vorgestern) (?:früh|morgen|vormittag|mittag|nachmittag|abend)';
const measured = '(?:gemessen|abgelesen|nachgesehen|geguckt|geschaut)';
const patterns: readonly RegExp[] = [
  new RegExp(
    `(?<![\\p{L}\\d])(?:morgens|früh|vormittags|mittags|nachmittags|abends|nachts) um ${hour}(?: uhr)?${end}(?! ?(?:cm|c|grad|zentimeter)${end}|[.,:]\\d)`,
    'gu',
  ),
  new RegExp(`${lead}(?<hour>\\d{1,2})[:.](?<minute>[0-5]\\d) ?uhr${ofDay}${end}`, 'gu'),
  new RegExp(`${lead}(?<hour>\\d{1,2}):(?<minute>[0-5]\\d)${end}`, 'gu'),
  new RegExp(`${lead}(?<hour>\\d{1,2}) uhr (?<minute>[0-5]\\d)${ofDay}${end}`, 'gu'),
  new RegExp(`${lead}${hour} ?uhr${ofDay}${end}`, 'gu'),
  new RegExp(`${lead}(?<shift>halb|viertel nach|viertel vor|dreiviertel) ${hour}(?: uhr)?${ofDay}${end}`, 'gu'),
  new RegExp(`${lead}(?<midnight>mitternacht)${end}`, 'gu'),
  new RegExp(`${lead}(?<noon>zu mittag|mittags|heute mittag|(?<=gestern )mittag)${end}`, 'gu'),
  new RegExp(`(?<=${measured} )um ${hour}${end}(?! ?(?:cm|c|grad|zentimeter)${end}|[.,]\\d)`, 'gu'),
  new RegExp(`(?<![\\p{L}\\d])um ${hour}(?= ${measured}${end})`, 'gu'),
  new RegExp(
    `(?<=(?<!\\p{L})(?:heute|gestern|vorgestern) )um ${hour}${end}(?! ?(?:cm|c|grad|zentimeter)${end}|[.,]\\d)`,
    'gu',
  ),
  new RegExp(`(?<=${part} )um ${hour}${end}(?! ?(?:cm|c|grad|zentimeter)${end}|[.,]\\d)`, 'gu'),
];

/** How hours and days are said. "Halb acht" is half past seven. */
export const clockWords: ClockWords = {
  patterns,
  numbers: { ...Object.fromEntries(numbers.map((word, at) => [word, at + 1])), ein: 1 },
  shifts: { halb: -30, 'viertel nach': 15, 'viertel vor': -15, dreiviertel: -15 },
  now: /(?<!\p{L})(?:jetzt|gerade(?: eben)?)(?!\p{L})/u,
  yesterday: /(?<!\p{L})(?:gestern|letzte nacht)(?!\p{L})/u,
  dayBefore: /(?<!\p{L})vorgestern(?!\p{L})/u,
  morning: /(?<!\p{L})(?:früh|morgens|vormittags?|am morgen|heute morgen|gestern morgen)(?!\p{L})/u,
  later: /(?<!\p{L})(?:nachmittags?|abends?)(?!\p{L})/u,
  noonish: /(?<!\p{L})mittags?(?!\p{L})/u,
  night: /(?<!\p{L})nachts(?!\p{L})/u,
};
