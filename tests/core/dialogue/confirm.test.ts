import { describe, expect, test } from 'vitest';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { doesNotKnow, filled, lines, look, pressed, requested, said, started, talk, undone } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = started(pack, fieldLess(fitMorning, 'soil.temperature30cmC'));
const warm = filled('soil-temperature', { 'soil.temperature30cmC': 31 });

describe('a value far outside what is usual', () => {
  test('is questioned once and taken when confirmed', () => {
    const asked = talk([begin, warm], world);
    expect(look(asked, pack).question).toMatchInlineSnapshot(`
      {
        "ask": "Soil at 30 cm 31 C is far outside what is usual. Is it right?",
        "before": null,
        "boxes": [
          {
            "fact": "soil.temperature30cmC",
            "high": 45,
            "label": "soil temperature at 30 cm",
            "low": -20,
            "step": 0.1,
            "unit": "C",
          },
        ],
        "choices": [
          {
            "help": null,
            "id": "yes",
            "label": "Yes",
          },
          {
            "help": null,
            "id": "no",
            "label": "No",
          },
        ],
        "form": "confirm",
        "hours": [],
        "how": "Answer yes or no, or give the right value.",
        "id": "confirm:soil.temperature30cmC",
        "now": "",
        "picture": null,
        "together": [],
        "why": "A slip of the finger here would change the answer.",
      }
    `);
    const told = talk([begin, warm, requested('confirm')], world);
    expect(lines(told, pack).slice(2)).toMatchInlineSnapshot(`
      [
        "> 31 C",
        "? Soil at 30 cm 31 C is far outside what is usual. Is it right?",
        "> Yes, that is right.",
        "- Taken: soil at 30 cm 31 C.",
        "! Wait: it will take days, not hours. The soil at 30 cm is 31.0 C; the limit is 10 C.",
      ]
    `);
  });

  test.each([
    ['the button', pressed('confirm:soil.temperature30cmC', 'yes')],
    ['saying it again', warm],
  ])('is taken by %s too', (_, confirmation) => {
    expect(look(talk([begin, warm, confirmation], world), pack).verdict?.verdict).toBe('wait');
  });

  test.each([
    ['denied', requested('deny')],
    ['taken back', undone('phone-1')],
    ['denied by the button', pressed('confirm:soil.temperature30cmC', 'no')],
  ])('is not taken when %s, and the question is put again', (_, denial) => {
    const conversation = talk([begin, warm, denial], world);
    expect(look(conversation, pack).question?.id).toBe('soil-temperature');
    expect(look(conversation, pack).said.map(({ fact }) => fact)).not.toContain('soil.temperature30cmC');
  });

  test('is put right by giving the right value instead', () => {
    const conversation = talk(
      [begin, warm, filled('confirm:soil.temperature30cmC', { 'soil.temperature30cmC': 8.1 })],
      world,
    );
    expect(look(conversation, pack).verdict?.verdict).toBe('spray-today');
  });

  test('counts as not known where the person cannot say after all', () => {
    const conversation = talk([begin, warm, doesNotKnow('confirm:soil.temperature30cmC')], world);
    const { question, verdict } = look(conversation, pack);
    expect(question).toBeNull();
    expect(verdict?.reasons.map(({ rule, outcome }) => [rule, outcome])).toEqual([
      ['soil-too-warm', 'unknown'],
      ['soil-warming', 'unknown'],
    ]);
  });
});

describe('what was understood with doubt', () => {
  const understand = listener({
    'soil about 8': heard('soil.temperature30cmC', 8, { doubtful: true, quote: 'soil about 8' }),
    'soil about 12': heard('soil.temperature30cmC', 12, { doubtful: true, quote: 'soil about 12' }),
    yes: { intents: ['yes'] },
    no: { intents: ['no'] },
  });
  const heardWorld = { ...world, understand };

  test('is read back before a spray-today rests on it', () => {
    const asked = talk([begin, said('soil about 8')], heardWorld);
    expect(look(asked, pack).verdict).toBeNull();
    expect(look(asked, pack).question?.ask).toMatchInlineSnapshot(
      `"From "soil about 8" I took: soil at 30 cm 8 C. Is that right?"`,
    );
    expect(look(talk([begin, said('soil about 8'), said('yes')], heardWorld), pack).verdict?.verdict).toBe(
      'spray-today',
    );
    const denied = look(talk([begin, said('soil about 8'), said('no')], heardWorld), pack);
    expect(denied.question?.id).toBe('soil-temperature');
  });

  test('cannot be hurried past by asking for the verdict', () => {
    const hurried = talk([begin, said('soil about 8'), requested('verdict-now')], heardWorld);
    expect(hurried.state.verdicts).toEqual([]);
  });

  test('is not read back where it holds the spraying up anyway', () => {
    expect(look(talk([begin, said('soil about 12')], heardWorld), pack).verdict?.verdict).toBe('wait');
  });
});
