import './register.ts';
import { type ComponentChild, render } from 'preact';
import { act } from 'preact/test-utils';
import { describe, expect, test, vi } from 'vitest';
import { reportOf } from '../../src/core/errors/coded-error.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { errorIn } from '../../src/core/words/errors.ts';
import { hollinBankFarm } from '../../src/demo/hollin-bank-farm.ts';
import { createChat } from '../../web/chat/chat.ts';
import { emptyPageState, type PageState } from '../../web/chat/page-state.ts';
import { createStore } from '../../web/store.ts';
import { languages, nameOfLanguage } from '../../web/words/language.ts';
import { fakeMeans } from '../web/fake-means.ts';
import { byRight } from './by-right.ts';
import { plainWords } from './decorate.ts';
import { decoratedPack } from './pack.ts';
import { talkIn } from './talks.ts';
import { readTexts, tinyNode, useTinyDocument } from './tiny-dom.ts';

vi.mock('../../web/words.ts', async () => {
  const { page } = await import('../../web/words/en/page.ts');
  const { default: later } = await import('../../web/words/en/later.ts');
  const { decorateWords } = await import('./decorate.ts');
  const { catalogueOf: coreOf } = await import('../../src/core/words/catalogue.ts');
  const { pictures: pictureWords, learn: learnWords, card: cardWords } = decorateWords(later);
  const loadLaterWords = async () => {};
  return {
    pageWords: decorateWords(page),
    pictureWords,
    learnWords,
    cardWords,
    loadLaterWords,
    coreWords: coreOf('zz'),
    outlookWords: coreOf('zz').outlook,
    handOverWords: coreOf('zz').handOver,
  };
});
useTinyDocument();
const { App } = await import('../../web/parts/app.tsx');
const { Outlook } = await import('../../web/figures/outlook.tsx');
const { Panel } = await import('../../web/hand-over/panel.tsx');
const { Picture } = await import('../../web/pictures/index.tsx');
const { fullView } = await import('../web/outlook-views.ts');
const { pictureIds } = await import('../../src/core/rules/pack/picture-ids.ts');

/** What is typed into the conversations below, which the log shows as it was typed. */
const firstLines = [
  'crumbly',
  '8.4 at 30 cm',
  'nonsense',
  'undo',
  '8.4',
  "don't know",
  'check the rest',
  'what does field capacity mean',
];
const otherLines = ['friable', 'moist', '7', '50 at 30 cm'];
const ids = decoratedPack.rules.map(({ id }) => id);
const asItIs = new Set([...ids, ...firstLines, ...otherLines, 'England', ...languages.map(nameOfLanguage)]);

/** Draws a part of the page, and gives what in it is not of the made-up language. */
async function leftIn(part: ComponentChild): Promise<string[]> {
  const root = tinyNode('div');
  await act(() => render(part, root as never));
  const texts = readTexts(root);
  expect(texts.length).toBeGreaterThan(0);
  render(null, root as never);
  return texts.filter((text) => !asItIs.has(text) && plainWords(text, byRight).length > 0);
}

/** The page in a state. */
function pageIn(state: Partial<PageState>) {
  const means = fakeMeans();
  const chat = createChat(means);
  return <App chat={{ ...chat, state: createStore({ ...emptyPageState, link: 'ready', ...state }) }} means={means} />;
}

const first = (await talkIn(decoratedPack, 'mill-piece', firstLines)).views;
const other = (await talkIn(decoratedPack, 'top-brow', otherLines)).views;
const own = (await talkIn(decoratedPack, null, ['England'])).views;
const views = [...first, ...other, ...own];
const withVerdict = views.findLast(({ verdict }) => verdict !== null)!;
const mill = hollinBankFarm.map(({ profile: { id, name, invented, note } }) => ({
  id,
  name,
  invented,
  note: note ?? '',
}));
const refusal = errorIn(reportOf('ANSWER_MISFIT', { expected: 'a number', came: '5' }), catalogueOf('zz'));
const message = { type: 'say', text: '8.4', asked: null, id: 'a', at: 1, device: 'b', count: 1 } as never;

const states: readonly (readonly [string, Partial<PageState>])[] = [
  ['the start', { fields: mill, packTitle: withVerdict.packTitle }],
  ['a lost connection', { view: withVerdict, link: 'lost', outbox: [message, message] }],
  ['a refusal', { view: withVerdict, refusal }],
  [
    'the page answering by itself',
    { view: withVerdict, answers: 'page', link: 'lost', canBeAlone: 'always', storage: 'full' },
  ],
  ['handing over', { view: withVerdict, answers: 'page', handingOver: 2, storage: 'none' }],
  ['what was handed over', { view: withVerdict, handedOver: 1, canBeAlone: 'while-open', newRules: true }],
  ['an older page', { view: withVerdict, link: 'other-version', newVersion: () => {} }],
  ['a wrong clock', { view: withVerdict, clockFault: { kind: 'off', aheadSeconds: 200_000 } as never }],
  ['a clock set back', { view: withVerdict, clockFault: { kind: 'set-back' } as never }],
  ['another tab', { isElsewhere: true }],
];

describe('the page in a language made up on the spot', () => {
  test('shows no word outside the catalogue at any step of three conversations', async () => {
    const left = await Promise.all(views.map((view) => leftIn(pageIn({ view, packTitle: view.packTitle }))));
    expect([...new Set(left.flat())]).toEqual([]);
  });

  test.each(states)('nor of %s', async (_, state) => {
    expect(await leftIn(pageIn(state))).toEqual([]);
  });

  test.each(['spray-today', 'wait', 'do-not-spray'] as const)('nor of the figures beside %s', async (verdict) => {
    expect(await leftIn(<Outlook outlook={fullView(decoratedPack, verdict, undefined, 'zz')} />)).toEqual([]);
  });

  test('nor of what is handed over', async () => {
    expect(await leftIn(<Panel view={withVerdict} token="t" isOnline={false} />)).toEqual([]);
  });

  test.each(pictureIds)('nor of the drawing %s', async (id) => {
    expect(await leftIn(<Picture id={id} />)).toEqual([]);
  });
});
