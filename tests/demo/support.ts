import { join } from 'node:path';
import { createConversation } from '../../src/adapters/conversation/create-conversation.ts';
import { dialogueOver } from '../../src/adapters/conversation/dialogue-over.ts';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import type { QuestionView, VerdictView } from '../../src/core/dialogue/view-types.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { hollinBankFarm } from '../../src/demo/hollin-bank-farm.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { root } from '../repo/files.ts';

/** Every pack that a demo field is offered for. */
export const demoPacks: readonly [Pack, ...Pack[]] = [
  shipped.pack,
  loadPack(await readPackFolder(join(root, 'rules', 'fluroxypyr-winter-wheat'))).pack,
];

/** Answers of somebody who stands in a good field: ids of choices by question. */
export const goodChoices: Readonly<Record<string, readonly string[]>> = {
  surface: ['friable'],
  'soil-feel': ['moist'],
  'soil-trend': ['about-the-same'],
  'label-read': ['yes'],
  'crop-stress': ['no'],
  'leaves-wet': ['no'],
  'wind-direction': ['no'],
};

/** Numbers that suit, by fact id. */
export const goodNumbers: Readonly<Record<string, number>> = { 'soil.temperature30cmC': 8.6 };

/** What a demo conversation came to. */
export interface DemoOutcome {
  readonly verdict: VerdictView | null;
  readonly questions: readonly string[];
  readonly labels: string;
}

/** A conversation about a demo field begun at a real moment, answered by `goodChoices` and `goodNumbers`. */
export async function tryDemo(field: string, startsAt: number): Promise<DemoOutcome> {
  let now = startsAt;
  let ids = 0;
  const newId = () => `00000000-0000-4000-8000-${String(++ids).padStart(12, '0')}`;
  const conversation = createConversation({
    dialogue: dialogueOver(() => demoPacks),
    clock: { now: () => epochSeconds(now) },
    newId,
    fields: hollinBankFarm,
    packs: demoPacks,
    forecastService: { forecastFor: () => Promise.reject(new Error('the demo farm asks no service')) },
  });
  const stamp = () => ({ id: newId(), at: now, device: 'phone', count: ids });
  const questions: string[] = [];
  const pack = hollinBankFarm.find(({ profile }) => profile.id === field)?.packs[0] ?? '';
  await conversation.receive({ type: 'start', ...stamp(), field, pack });
  await conversation.settled();
  for (let open = conversation.view()?.question; open && questions.length < 12; ) {
    questions.push(open.id);
    now += 8;
    await conversation.receive({ type: 'answer', ...stamp(), ...goodAnswer(open) });
    await conversation.settled();
    open = conversation.view()?.question;
  }
  const view = conversation.view()!;
  return { verdict: view.verdict, questions, labels: JSON.stringify([view.entries, view.field]) };
}

function goodAnswer({ id, boxes }: QuestionView) {
  const facts = boxes.map(({ fact }) => fact).filter((fact) => fact in goodNumbers);
  const numbers = Object.fromEntries(facts.map((fact) => [fact, goodNumbers[fact]!]));
  return { question: id, choices: [...(goodChoices[id] ?? [])], numbers, doesNotKnow: false };
}
