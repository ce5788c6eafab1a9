import { describe, expect, test } from 'vitest';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { look, pressed, started, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const without = (...facts: Parameters<typeof fieldLess>[1][]) => started(pack, fieldLess(fitMorning, ...facts));

describe('starting again', () => {
  test('a new start keeps the sentence of the answer before, and marks where it begins', () => {
    const conversation = talk(
      [without('soil.feel'), pressed('soil-feel', 'dry'), without('soil.feel'), pressed('soil-feel', 'moist')],
      world,
    );
    const { entries, earlier } = look(conversation, pack);
    const text = (entry: (typeof entries)[number] | undefined) =>
      entry?.kind === 'verdict' ? entry.verdict.headline : entry?.text;
    expect(text(entries[earlier - 1])).toBe('The answer then: Wait: it will take days, not hours.');
    expect(text(entries[earlier])).toMatch(/^Mill Piece, an invented field\./);
    expect(text(entries.at(-1))).toMatch(/^Spray today/);
  });

  test('what was said before it is read as it was, word for word', () => {
    const events = [without('soil.feel'), pressed('soil-feel', 'dry')];
    const before = look(talk(events, world), pack).entries.filter(({ kind }) => kind !== 'verdict');
    const { entries, earlier } = look(talk([...events, without('soil.feel')], world), pack);
    const texts = (all: typeof before) => all.map((entry) => [entry.kind, 'text' in entry ? entry.text : '']);
    expect(before.length).toBeGreaterThan(2);
    expect(texts(entries.slice(0, earlier - 1))).toEqual(texts(before));
  });
});
