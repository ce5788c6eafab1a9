import { describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import { fakeIo } from './fake-io.ts';

/** Names the treatment, so that nothing is asked of it. */
const rape = ['--pack', 'propyzamide-winter-oilseed-rape'] as const;

/** Types lines into `loamward ask` and gives what it printed. */
async function ask(lines: readonly string[], ...options: string[]): Promise<string> {
  const io = fakeIo({}, lines);
  expect(await runCommandLine(['ask', ...options], io)).toBe(0);
  expect(io.err()).toBe('');
  return io.out();
}

/** Answers to what is asked about the invented Mill Piece on its fit day, by question. */
const fitAnswers: Readonly<Record<string, string>> = {
  surface: 'a',
  'soil-feel': 'c',
  'soil-temperature': '8.4',
  'soil-trend': 'a',
  'rain-now': 'a',
  wind: 'c',
  gusts: 'a',
  frost: 'b',
  inversion: 'b',
  'air-temperature': 'c',
  'drains-running': 'b',
  'drains-expected': 'b',
  'wind-towards': 'b',
  'weed-present': 'a',
  'true-leaves': 'b',
};

/** Holds the conversation by answering each question from a table; ends when none is open. */
async function askByTable(answers: Readonly<Record<string, string>>): Promise<ConversationView> {
  const lines: string[] = [];
  for (let turn = 0; turn < 25; turn++) {
    const view: ConversationView = JSON.parse(await ask(lines, '--field', 'mill-piece', '--json'));
    if (!view.question) return view;
    lines.push(answers[view.question.id] ?? "don't know");
  }
  throw new Error('the conversation does not end');
}

describe('loamward ask', () => {
  test('lets the person choose a field, and labels the demo farm invented', async () => {
    const text = await ask(['mill'], ...rape);
    expect(text).toContain('Which field?');
    expect(text).toContain('1) Mill Piece (invented)');
    expect(text).toContain('Mill Piece, an invented field on');
  });

  test('stop: says how each field stands and how to leave, and goes on with whatever is said', async () => {
    const text = await ask(['stop', 'help', 'quit', 'moist'], '--field', 'mill-piece');
    expect(text).toContain('Here we stop. All that you told is kept, and a question that is open waits for you.');
    expect(text).toMatch(/Mill Piece: no answer yet\. .*Top Brow: not looked at today\./);
    expect(text).toContain('Type quit to leave');
    expect(text).toMatch(/Words used here that can be explained: .*saturated soil/);
    expect(text).not.toContain('soil feels moist');
  });

  test('asks again where the choice is no field', async () => {
    expect(await ask(['9', '3'], ...rape)).toContain('Type a number from 1 to');
  });

  test('comes to spray today on the fit day of Mill Piece, with cautions to read', async () => {
    const { verdict, field } = await askByTable(fitAnswers);
    expect(field?.invented).toBe(true);
    expect(verdict?.verdict).toBe('spray-today');
    expect(verdict?.cautions.length).toBeGreaterThan(9);
  });

  test('comes to wait where the person cannot say, and asks nothing twice', async () => {
    const view = await askByTable({});
    expect(view.verdict?.verdict).toBe('wait');
    const asked = view.entries.filter(({ kind }) => kind === 'question').map(({ id }) => id);
    expect(new Set(asked).size).toBe(asked.length);
  });

  test('says do not spray of Long Ing at once, and unfolds trace and cautions', async () => {
    const text = await ask(['trace', 'cautions', 'quit', 'not read'], '--field', 'long-ing');
    expect(text).toContain('DO NOT SPRAY');
    expect(text).toContain('[water-risk-field, stop, water]');
    expect(text).toContain('The label in hand and its conditions come first');
  });

  test('an own field without a connection still comes to a verdict', async () => {
    const text = await ask(['own', 'england', ...Array.from({ length: 40 }, () => "don't know")], ...rape);
    expect(text).toMatch(/\nWAIT/);
  });

  test('what is supposed is judged beside what was told, and changes nothing of it', async () => {
    const told = 'crumbly, not cracked, not sticky, no puddles, not frozen, no snow, moist, 10.6 at 30 cm';
    const lines = [told, 'what if it were 9?', 'what if it is cracked', 'suppose it is 900', 'what if pigs fly'];
    const text = await ask([...lines, 'what have I told you'], '--field', 'mill-piece');
    expect(text).toContain('Supposing soil at 30 cm 9 C: spray today, as far as what you told and the forecast go.');
    expect(text).toContain('Supposing surface cracked: wait, because of cracks in the soil and soil too warm.');
    expect(text).toContain('I did not understand "what if pigs fly". Nothing was taken from it.');
    expect(text).toContain('soil temperature at 30 cm: 10.6 C (you said, just now)');
    const view: ConversationView = JSON.parse(
      await ask([told, 'what if it were 9?'], '--field', 'mill-piece', '--json'),
    );
    expect(view.verdict?.verdict).toBe('wait');
    expect(view.entries.filter(({ kind }) => kind === 'verdict')).toHaveLength(1);
  });
});
