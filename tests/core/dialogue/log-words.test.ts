import { describe, expect, test } from 'vitest';
import { viewOf } from '../../../src/core/dialogue/view.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import {
  doesNotKnow,
  fieldOf,
  filled,
  line,
  lines,
  look,
  morning,
  pressed,
  requested,
  started,
  type Told,
  talk,
  undone,
} from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const without = (...facts: Parameters<typeof fieldLess>[1][]): Told => started(pack, fieldLess(fitMorning, ...facts));

describe('what a press amounts to in words', () => {
  test.each<[string, Told, string]>([
    ['a choice', pressed('soil-feel', 'dry'), '> Dry'],
    [
      'two numbers with their units',
      filled('place', { 'field.latitude': 54.1, 'field.longitude': -2 }),
      '> 54.1 degrees and -2 degrees',
    ],
    ['a number of a fact that there is not', filled('place', { 'no.such': 7 }), '> 7'],
    ['nothing ticked', pressed('surface'), '> None of these.'],
    ['what is not known', doesNotKnow('soil-feel'), "> I don't know."],
    ['a yes to a question that offers none', pressed('soil-temperature', 'yes'), '> Yes'],
    ['a no to a question that offers none', pressed('soil-temperature', 'no'), '> No'],
    ['a choice that there is not', pressed('soil-feel', 'purple'), '> purple'],
    ['a choice of a question that there is not', pressed('no-such', 'purple'), '> purple'],
    [
      'a choice and a number',
      { ...pressed('soil-feel', 'dry'), numbers: { 'soil.temperature30cmC': 9 } } as Told,
      '> Dry and 9 C',
    ],
  ])('%s', (_, told, text) => {
    const shown = lines(talk([without('soil.feel', 'soil.surface', 'soil.temperature30cmC'), told], world), pack);
    expect(shown).toContain(text);
  });

  test.each<[string, Told, string]>([
    [
      'a band that stands for a button is said by the words of the button',
      pressed('slope', 'gentle'),
      'slope towards water: gentle, 2 % to under 5 %',
    ],
    [
      'a band of what is counted is said with what it counts',
      pressed('true-leaves', 'three-to-five'),
      'true leaves of the crop: 3 to 5',
    ],
    ['a number filled in is said as a number', filled('true-leaves', { 'crop.trueLeaves': 4 }), 'crop with 4 leaves'],
  ])('%s', (_, told, text) => {
    const shown = lines(talk([without('crop.trueLeaves', 'field.slopePercent'), told], world), pack);
    expect(shown).toContain(`= Understood: ${text}.`);
  });
});

describe('the log', () => {
  test('marks what was taken back, whoever said it and what was understood', () => {
    const view = look(
      talk([without('soil.feel', 'soil.temperature30cmC'), pressed('soil-feel', 'dry'), undone('phone-1')], world),
      pack,
    );
    const marks = view.entries.flatMap((entry) => ('undone' in entry ? [[line(entry), entry.undone]] : []));
    expect(marks).toEqual([
      ['> Dry', true],
      ['= Understood: soil feels dry.', true],
    ]);
    const before = look(
      talk([without('soil.feel', 'soil.temperature30cmC'), pressed('soil-feel', 'dry')], world),
      pack,
    );
    expect(before.entries.flatMap((entry) => ('undone' in entry ? [entry.undone] : []))).toEqual([false, false]);
    const understood = before.entries.find(({ kind }) => kind === 'understood');
    expect(understood).toMatchObject({ undo: 'phone-1' });
  });

  test('names each entry by its event and place, so that none has the id of another', () => {
    const { entries } = look(talk([without('soil.feel'), pressed('soil-feel', 'dry')], world), pack);
    expect(entries.slice(0, 4).map(({ id }) => id)).toEqual(['phone-0/0', 'phone-0/1', 'phone-1/2', 'phone-1/3']);
  });

  test('says what is pressed beside the answers, but not that another language was chosen', () => {
    const begin = without('soil.feel');
    const shown = (request: Parameters<typeof requested>[0]) =>
      lines(talk([begin, requested(request)], world), pack).slice(2);
    expect(shown('why-asked')[0]).toBe('> Why do you ask?');
    expect(shown('keep')).toEqual(['> Leave it as it is.', '- There is no answer of that kind to change.']);
    expect(shown('change')).toEqual(['> Change an answer.', '- There is no answer of that kind to change.']);
    expect(shown('confirm')).toEqual(['> Yes, that is right.', '- There is nothing to say yes or no to just now.']);
    expect(shown('deny')).toEqual(['> No, that is wrong.', '- There is nothing to say yes or no to just now.']);
    expect(shown('same-for')).toEqual([
      '> The same for the next field.',
      '- Choose the next field. What holds for the whole farm is not asked again.',
    ]);
    expect(shown('language')).toEqual([]);
  });

  test('goes on in the language chosen, in that before where none is named', () => {
    const german = talk([without('soil.feel'), { ...requested('language'), language: 'de' } as Told], world);
    expect(german.state.language).toBe('de');
    expect(
      talk([{ ...without('soil.feel'), language: 'de' } as Told, requested('language')], world).state.language,
    ).toBe('de');
    expect(look(german, pack).language).toBe('de');
    expect(viewOf(german, { pack, now: morning, language: 'en' }).question?.ask).toBe(
      'How does the soil feel in the hand?',
    );
    expect(look(german, pack).question?.ask).not.toBe('How does the soil feel in the hand?');
  });

  test.each([
    [{ ...fieldOf({}), invented: false }, 'Mill Piece. Choose an answer'],
    [
      { ...fieldOf({}), note: 'Wet in the north corner.' },
      'Mill Piece, an invented field. Wet in the north corner. Choose an answer',
    ],
    [null, 'Choose an answer'],
  ])('begins with the field and its note', (field, text) => {
    const [first] = lines(talk([started(pack, field)], world), pack);
    expect(first).toBe(`- ${text} or say it in your own words; "don't know" is an answer too.`);
  });

  test('says so where the rules are not in the language, and where what is typed is read as English', () => {
    const english = { ...pack, languages: ['en'] };
    const told = [{ ...started(english), language: 'de' } as Told];
    expect(lines(talk(told, { pack: english, forecast: null }), english)[0]).toMatch(
      /nicht in diese Sprache übersetzt|noch nicht/,
    );
    const [native] = lines(talk([{ ...started(pack), language: 'de' } as Told], world), pack);
    expect(native).not.toMatch(/noch nicht/);
    expect(lines(talk([started(pack)], world), pack)[0]).not.toContain('read as English');
  });

  test('says of a forecast that failed what failed and what to do, without what was expected and came', () => {
    const home = started(pack, fieldLess({ ...fitMorning, 'field.latitude': 54, 'field.longitude': -2 }, 'soil.feel'));
    expect(lines(talk([home], world), pack).slice(2)).toEqual([
      'x The forecast service could not be reached. Check the connection. Tell the weather by hand in a few questions, or look again later.',
      '- Until there is a forecast, I ask for the weather.',
    ]);
  });

  test('says of a forecast that came when it was fetched, and from whom', () => {
    const home = started(pack, fieldLess({ ...fitMorning, 'field.latitude': 54, 'field.longitude': -2 }, 'soil.feel'));
    expect(lines(talk([home], { pack, forecast: inventedForecast(morning) }), pack).slice(2)).toEqual([
      '- Forecast fetched at 09:00. Invented weather of Hollin Bank Farm: not a forecast of any place.',
    ]);
  });
});
