import { describe, expect, test } from 'vitest';
import { clockOf } from '../../../../src/core/dialogue/understand/clock.ts';
import { languageOf } from '../../../../src/core/dialogue/understand/languages.ts';

/** The hour that a text names, as `7:30 am, 1 d ago`; `?` where both halves of the day can be meant; null where it names none. */
function hourIn(text: string, code = 'en'): string | null {
  const named = clockOf(text, languageOf(code).clock);
  if (named === null || named.clock.kind === 'now') return named?.clock.kind ?? null;
  const { minute, half, daysAgo } = named.clock;
  const hour = `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, '0')}`;
  return `${hour} ${half ?? '?'}${daysAgo === 0 ? '' : `, ${daysAgo} d ago`}`;
}

describe('the hour that a text names', () => {
  test.each([
    ['9 at 7:30', '7:30 ?'],
    ['9 at 7:30 am', '7:30 am'],
    ['9 at 7:30 pm', '19:30 pm'],
    ['9 at 12:15', '0:15 ?'],
    ['9 at 12:00 am', '0:00 am'],
    ['9 at 12:15 pm', '12:15 pm'],
    ['9 at 0:15', '0:15 said'],
    ['9 at 13:05', '13:05 said'],
    ['9 at 23:59', '23:59 said'],
    ['9 at 7 am', '7:00 am'],
    ['9 at 7 a.m.', '7:00 am'],
    ['9 at seven pm', '19:00 pm'],
    ['9 at twelve pm', '12:00 pm'],
    ['9 at noon', '12:00 said'],
    ['9 at midday yesterday', '12:00 said, 1 d ago'],
    ['9 at half past seven', '7:30 ?'],
    ['9 at quarter past seven in the evening', '19:15 pm'],
    ['9 at quarter to seven', '6:45 ?'],
    ['9 at quarter to one', '0:45 ?'],
    ['9 at quarter to twelve', '11:45 ?'],
    ["9 at one o'clock", '1:00 ?'],
    ['yesterday evening at 7 it was 9', '19:00 pm, 1 d ago'],
    ['9 this morning at 7', '7:00 am'],
    ['9 at 7 this afternoon', '19:00 pm'],
    ['9 at 7 in the morning or evening', '7:00 ?'],
    ['9 at 7 am the day before yesterday', '7:00 am, 2 d ago'],
    ['9 last night at 11 pm', '23:00 pm, 1 d ago'],
    ['9 now', 'now'],
    ['9 at 7 am now', '7:00 am'],
  ])('"%s": %s', (text, hour) => {
    expect(hourIn(text)).toBe(hour);
  });

  test.each([
    '9',
    '9 at 10',
    '9 nowhere',
    '9 at 24:00',
    '9 at 0:15 am',
    '9 this morning at 7 cm',
    '9 at 7 am and 10 at 8 am',
  ])('"%s" names none, or more than one', (text) => {
    expect(hourIn(text)).toBeNull();
  });

  test.each([
    ['9 Grad um 7 Uhr', '7:00 ?'],
    ['9 um 7.30 Uhr', '7:30 ?'],
    ['9 um 7 Uhr 30', '7:30 ?'],
    ['9 um halb acht', '7:30 ?'],
    ['9 um halb eins', '0:30 ?'],
    ['9 viertel nach acht', '8:15 ?'],
    ['9 dreiviertel acht', '7:45 ?'],
    ['9 um ein Uhr', '1:00 ?'],
    ['9 um eins Uhr', '1:00 ?'],
    ['9 um zwölf Uhr mittags', '12:00 pm'],
    ['9 um elf Uhr mittags', '11:00 am'],
    ['9 um ein Uhr mittags', '13:00 pm'],
    ['9 um drei Uhr nachmittags', '15:00 pm'],
    ['9 um drei Uhr nachts', '3:00 am'],
    ['9 um elf Uhr nachts', '23:00 pm'],
    ['9 um Mitternacht', '0:00 said'],
    ['9 gestern um Mitternacht', null],
    ['9 gestern Mittag', '12:00 said, 1 d ago'],
    ['9 mittags', '12:00 said'],
    ['9 um 19 Uhr', '19:00 said'],
    ['9 um 7 Uhr abends', '19:00 pm'],
    ['9 heute früh um 7', '7:00 am'],
    ['9 vorgestern um 7 Uhr', '7:00 ?, 2 d ago'],
    ['9 gerade eben', 'now'],
  ])('in German, "%s": %s', (text, hour) => {
    expect(hourIn(text, 'de')).toBe(hour);
  });

  test('is blanked out, so that what is left keeps its places; "now" stays', () => {
    const { clock } = languageOf('en');
    expect(clockOf('It was 9 at 7:30 am, moist', clock)?.rest).toBe('it was 9           , moist');
    expect(clockOf('It is 9 NOW', clock)?.rest).toBe('It is 9 NOW');
  });
});
