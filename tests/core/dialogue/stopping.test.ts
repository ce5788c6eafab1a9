import { describe, expect, test } from 'vitest';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { look, pressed, said, stamp, started, type Told, take, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const field = { ...fieldLess(fitMorning, 'soil.feel'), id: 'mill-piece', name: 'Mill Piece' };
const fields = [
  { id: 'mill-piece', name: 'Mill Piece' },
  { id: 'top-brow', name: 'Top Brow' },
];
const begin = (more: object = {}): Told => ({ ...started(pack, field), fields, ...more }) as Told;
const lastText = (told: readonly Told[]) => {
  const entry = look(talk(told, world), pack).entries.findLast(({ kind }) => kind === 'said');
  return entry?.kind === 'said' ? entry.text : '';
};

describe('whoever stops', () => {
  test.each(['stop', 'that will do', "that's all for today"])(
    '"%s": is told how each field stands, and that all is kept',
    (words) => {
      expect(lastText([begin(), pressed('soil-feel', 'dry'), said(words)])).toBe(
        'Here we stop. All that you told is kept, and a question that is open waits for you. Mill Piece: wait, days. Top Brow: not looked at today. Say anything to go on.',
      );
    },
  );

  test('is told of a spray today until when it stands, and of a field without an answer that there is none', () => {
    expect(lastText([begin(), pressed('soil-feel', 'moist'), said('stop')])).toMatch(
      / Mill Piece: spray today until \d\d:\d\d\. /,
    );
    expect(lastText([begin(), said('stop')])).toContain('Mill Piece: no answer yet.');
  });

  test('on a field of their own, which has no name', () => {
    expect(lastText([{ ...started(pack), fields } as Told, said('stop')])).toContain(
      'This field: no answer yet. Mill Piece: not looked at today. Top Brow: not looked at today.',
    );
  });

  test('in German, in German', () => {
    expect(lastText([begin({ language: 'de' }), pressed('soil-feel', 'dry'), said('Schluss')])).toMatch(
      /^Hier halten wir an\. Alles, was Sie gesagt haben, bleibt.* Mill Piece: .*Top Brow: heute noch nicht betrachtet\./,
    );
  });

  test('keeps all: what was said before holds after, and the open question waits', () => {
    const before = talk([begin()], world);
    const after = take(before, { ...said('stop'), ...stamp(9) } as never, world);
    expect(look(after, pack).question?.id).toBe(look(before, pack).question?.id);
    expect(look(after, pack).said).toEqual(look(before, pack).said);
  });
});

describe('whoever asks for help', () => {
  test('is told what may be said, and which words of the open question can be explained', () => {
    const text = lastText([begin(), said('help')]);
    expect(text).toMatch(
      /^Say what you see, .* Words used here that can be explained: saturated soil, .*\. Ask "what does … mean\?"\.$/,
    );
  });

  test('in German by the German words', () => {
    expect(lastText([begin({ language: 'de' }), said('Hilfe')])).toMatch(
      /Wörter, die hier vorkommen .*: wassergesättigt, .*\. Fragen Sie „Was heißt …\?“\.$/,
    );
  });
});

describe('the terms of a view', () => {
  test('are those that its sentences say, with every form and the source', () => {
    const { terms } = look(talk([begin(), pressed('soil-feel', 'dry')], world), pack);
    const label = terms.find(({ id }) => id === 'label');
    expect(label).toMatchObject({ said: expect.arrayContaining(['label', 'labels']) });
    expect(label?.text).toMatch(/\(common practice, no source\)$/);
    expect(terms.map(({ id }) => id)).not.toContain('volunteer-cereals');
  });

  test('come in the language of the view', () => {
    const { terms } = look(talk([begin({ language: 'de' }), pressed('soil-feel', 'dry')], world), pack);
    expect(terms.find(({ id }) => id === 'label')?.said).toContain('Gebrauchsanleitung');
  });
});
