import { describe, expect, test } from 'vitest';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { dryland, fieldLess, fitMorning } from './ready-field.ts';
import { doesNotKnow, filled, lines, look, morning, pressed, requested, said, started, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const without = (...facts: Parameters<typeof fieldLess>[1][]) => started(pack, fieldLess(fitMorning, ...facts));

describe('what a person reads', () => {
  test('a certain stop ends the questions at once', () => {
    const read = lines(talk([started(pack, fieldLess({})), pressed('country', 'northern-ireland')], world), pack);
    expect(read).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "? In which country does the field lie?",
        "> Northern Ireland",
        "= Understood: field in Northern Ireland.",
        "! Do not spray this field this season. These rules are written for England, Scotland and Wales; the field lies elsewhere.",
      ]
    `);
  });

  test('warm soil: wait, and what is still unknown is not asked any more', () => {
    const conversation = talk(
      [started(pack, fieldLess(dryland)), filled('soil-temperature', { 'soil.temperature30cmC': 11.2 })],
      world,
    );
    expect(lines(conversation, pack)).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "? Where is the field?",
        "> 11.2 C",
        "= Understood: soil at 30 cm 11.2 C.",
        "! Wait: it will take days, not hours. The soil at 30 cm is 11.2 C; the limit is 10 C.",
      ]
    `);
    expect(look(conversation, pack).verdict?.canCheckRest).toBe(true);
    const rest = talk(
      [
        started(pack, fieldLess(dryland)),
        filled('soil-temperature', { 'soil.temperature30cmC': 11.2 }),
        requested('check-the-rest'),
      ],
      world,
    );
    expect(look(rest, pack).question?.ask).toMatchInlineSnapshot(`"Where is the field?"`);
  });

  test('all suits: spray today, with what is nearest to its limit', () => {
    const conversation = talk(
      [without('soil.temperature30cmC'), filled('soil-temperature', { 'soil.temperature30cmC': 8.4 })],
      world,
    );
    expect(lines(conversation, pack)).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "? How warm is the soil at 30 cm?",
        "> 8.4 C",
        "= Understood: soil at 30 cm 8.4 C.",
        "! Spray today: nothing that was checked speaks against it. None of the 27 reasons to stop or wait applies. Nearest to its limit: soil temperature at 30 cm, 1.6 C room left.",
      ]
    `);
  });

  test('what a person cannot say makes it wait, with what to find out', () => {
    const conversation = talk([without('soil.feel'), doesNotKnow('soil-feel')], world);
    expect(lines(conversation, pack)).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "? How does the soil feel in the hand?",
        "> I don't know.",
        "- Noted as not known: feel of the soil in the hand.",
        "! Wait: something that matters is not known. Find it out first. Cannot be judged yet: soil saturated and soil too dry.",
      ]
    `);
    expect(look(conversation, pack).verdict?.jobs).toMatchInlineSnapshot(`
      [
        "How does the soil feel in the hand? Take a handful from the top 10 cm and squeeze it hard, several times, in several spots. Sand and clay differ: go by what fits best, and between two take the one nearer the trouble.",
      ]
    `);
  });

  test('a correction replaces what was said, and the answer that follows says what changed', () => {
    const understand = listener({
      '9.2 at 30 cm': heard('soil.temperature30cmC', 9.2),
      'no, it was 11': { ...heard('soil.temperature30cmC', 11), correction: true },
    });
    const told = [without('soil.temperature30cmC'), said('9.2 at 30 cm', 'soil-temperature'), said('no, it was 11')];
    expect(lines(talk(told, { ...world, understand }), pack)).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "? How warm is the soil at 30 cm?",
        "> 9.2 at 30 cm",
        "= Understood: soil at 30 cm 9.2 C.",
        "? Is the soil colder than a week ago?",
        "> no, it was 11",
        "= Corrected: soil at 30 cm 11 C.",
        "! Wait: it will take days, not hours. The soil at 30 cm is 11.0 C; the limit is 10 C.",
      ]
    `);
  });

  test('undo takes the last thing back, asks it again, and keeps the log', () => {
    const understand = listener({ undo: { intents: ['undo'] } });
    const told = [without('soil.feel'), pressed('soil-feel', 'dry'), said('undo')];
    const conversation = talk(told, { ...world, understand });
    expect(lines(conversation, pack)).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "? How does the soil feel in the hand?",
        "> Dry",
        "= Understood: soil feels dry.",
        "! Wait: it will take days, not hours. The soil is too dry: it should feel moist or wetter, or measure at least 80 % of field capacity.",
        "> undo",
        "- Taken back: soil feels dry.",
        "? How does the soil feel in the hand?",
      ]
    `);
    expect(look(conversation, pack).question?.id).toBe('soil-feel');
  });

  test('no forecast to be had: the weather is asked by hand, and what is told of it counts as told', () => {
    const home = { ...dryland, 'field.latitude': 54, 'field.longitude': -2 };
    const conversation = talk([started(pack, fieldLess(home)), pressed('rain-ahead', 'wet')], world);
    expect(lines(conversation, pack)).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "? Is black-grass or rye-grass there? How many true leaves has the crop?",
        "x The forecast service could not be reached. Check the connection. Tell the weather by hand in a few questions, or look again later.",
        "- Until there is a forecast, I ask for the weather.",
        "> 10 mm or more",
        "= Understood: rain in the next 48 h: 10 mm or more.",
        "! Wait: the weather is against it for now. Look again in some hours. Heavy rain is due within 48 hours. The limits are 10 mm in all and 4 mm/h in any hour.",
      ]
    `);
    expect(look(conversation, pack).said.find(({ fact }) => fact === 'rain.next48hMm')).toMatchInlineSnapshot(`
      {
        "canChange": true,
        "fact": "rain.next48hMm",
        "from": "the forecast as you told it, 29 min ago",
        "label": "rain in the next 48 hours",
        "undo": "phone-1",
        "value": "15.0 mm (10.0 to 80.0)",
      }
    `);
  });

  test('with a forecast nobody is asked what it tells', () => {
    const home = { ...dryland, 'field.latitude': 54, 'field.longitude': -2 };
    const conversation = talk([started(pack, fieldLess(home))], { pack, forecast: inventedForecast(morning) });
    expect(lines(conversation, pack)).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "? Is black-grass or rye-grass there? How many true leaves has the crop?",
        "- Forecast fetched at 09:00. Invented weather of Hollin Bank Farm: not a forecast of any place.",
      ]
    `);
  });

  test('talk beside the matter is answered plainly and changes nothing', () => {
    const understand = listener({
      'why do you ask?': { intents: ['why'] },
      'what have I told you?': { intents: ['what-said'] },
      help: { intents: ['help'] },
      undo: { intents: ['undo'] },
      yes: { intents: ['yes'] },
      'start again': { intents: ['start-again'] },
      'another field': { intents: ['another-field'] },
    });
    const talked = [
      'why do you ask?',
      'what have I told you?',
      'undo',
      'yes',
      'the cat sat',
      'start again',
      'another field',
    ];
    const conversation = talk([without('soil.feel'), ...talked.map((text) => said(text, 'soil-feel'))], {
      ...world,
      understand,
    });
    expect(lines(conversation, pack)).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "? How does the soil feel in the hand?",
        "> why do you ask?",
        "- Roots meet the active only in moist soil; in saturated soil it washes out. With your answer I can check for: soil saturated and soil too dry.",
        "> what have I told you?",
        "- You have told me nothing yet.",
        "> undo",
        "- There is nothing to take back.",
        "> yes",
        "- There is nothing to say yes or no to just now.",
        "> the cat sat",
        "- I did not understand "the cat sat". Nothing was taken from it.",
        "> start again",
        "- Starting again: what you told is put aside.",
        "> another field",
        "- Choose the field.",
      ]
    `);
    expect(look(conversation, pack).question?.id).toBe('soil-feel');
  });

  test('the dose is asked about only on request, and told with the answer', () => {
    const told = [without(), requested('dose'), filled('product-content', { 'product.activeGPerL': 500 })];
    const half = talk(told, world);
    expect(look(half, pack).question?.id).toBe('label-maximum');
    const whole = talk(
      [...told, filled('label-maximum', { 'product.labelMaxGPerHa': 840 }), doesNotKnow('weed-count')],
      world,
    );
    expect(lines(whole, pack)).toMatchInlineSnapshot(`
      [
        "- Mill Piece, an invented field. Choose an answer or say it in your own words; "don't know" is an answer too.",
        "! Spray today: nothing that was checked speaks against it. None of the 27 reasons to stop or wait applies. Nearest to its limit: soil temperature at 30 cm, 2.4 C room left.",
        "> What is the dose?",
        "- For the dose I ask two things from the label in hand, once nothing else is open.",
        "? How much propyzamide is in the product?",
        "> 500 g/L",
        "= Understood: product 500 g/L.",
        "? How much active per hectare does the label allow at most?",
        "> 840 g/ha",
        "= Understood: label maximum 840 g/ha.",
        "? How many weed plants stand on a square metre?",
        "> I don't know.",
        "- Noted as not known: weed plants per square metre. The dose is told without it where that can be done.",
        "! Spray today: nothing that was checked speaks against it. None of the 27 reasons to stop or wait applies. Nearest to its limit: soil temperature at 30 cm, 2.4 C room left. [As before: spray today.]",
      ]
    `);
    expect(look(whole, pack).verdict?.doseText).toMatchInlineSnapshot(
      `"750 g/ha of active: 1.50 L/ha of a 500 g/L product (rounded down); the label in hand allows 840 g/ha at most. For a solid product read kg/ha and g/kg."`,
    );
  });
});
