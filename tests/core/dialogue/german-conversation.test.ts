import { describe, expect, test } from 'vitest';
import { words as english } from '../../../src/core/words/en/index.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { lines, look, said, started, type Told, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = { ...started(pack, fieldLess(fitMorning, 'soil.temperature30cmC')), language: 'de' } as Told;
const german = (text: string): Told => ({ ...said(text), language: 'de' }) as Told;

/** Every sentence of a catalogue that stands as it is, long enough not to be a name, an id or a number. */
function sentencesOf(value: unknown): string[] {
  if (typeof value === 'string') return value.length > 12 && value.includes(' ') ? [value] : [];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(sentencesOf) : [];
}

describe('a conversation in German', () => {
  test('is read and answered in German, with the decimal comma', () => {
    const conversation = talk([begin, german('9,2 Grad in 30 cm'), german('kälter als vor einer Woche')], world);
    const text = lines(conversation, pack).join('\n');
    expect(text).toContain('Verstanden: Boden in 30 cm 9,2 °C.');
    const { verdict, language } = look(conversation, pack, 4);
    expect([language, verdict?.headline]).toEqual([
      'de',
      'Heute spritzen: Nichts, was geprüft wurde, spricht dagegen.',
    ]);
  });

  test('says no sentence of the English catalogue, in whatever is shown', () => {
    const conversation = talk(
      [
        begin,
        german('11,4 Grad'),
        german('Unsinn und mehr'),
        german('was habe ich gesagt'),
        german('warum nicht'),
        german('rückgängig'),
        german('weiß nicht'),
        german('Hilfe'),
      ],
      world,
    );
    const { entries, question, said: told, verdict } = look(conversation, pack, 8);
    // Sources, and why a rule is there, stand in the pack in the words of whoever wrote them.
    const own = JSON.stringify({ entries, question: { ...question, terms: [] }, told, headline: verdict?.headline });
    const shown = own.replace(/"(terms|rules)":\[.*?\]/g, '');
    expect(sentencesOf(english).filter((sentence) => shown.includes(sentence))).toEqual([]);
  });

  test('goes on in another language once that is asked for', () => {
    const conversation = talk(
      [begin, german('11,4 Grad'), { kind: 'requested', request: 'language', language: 'en' } as Told],
      world,
    );
    expect(look(conversation, pack).language).toBe('en');
    expect(lines(conversation, pack).join('\n')).toContain('Understood: soil at 30 cm 11.4 C.');
  });
});
