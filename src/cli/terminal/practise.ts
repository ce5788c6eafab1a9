import type { ProgressFile } from '../../adapters/practice/progress-file.ts';
import { checkAnswer, type LearnerAnswer } from '../../core/practice/check-answer.ts';
import { reasonChoices } from '../../core/practice/deciding.ts';
import { judgeDay } from '../../core/practice/judge-day.ts';
import { matchReason } from '../../core/practice/match-reason.ts';
import { nextDay } from '../../core/practice/next-day.ts';
import { type Review, reviewsOf } from '../../core/practice/schedule.ts';
import { type PracticeSpeech, tellDay } from '../../core/practice/tell-day.ts';
import type { PracticeDay, PracticeWorld } from '../../core/practice/types.ts';
import type { VerdictWord } from '../../core/verdict/types.ts';
import { titlesOf } from '../../core/words/say-rule.ts';
import type { Io } from '../io.ts';
import { firstPack } from '../packs.ts';
import { answerLines, dayText, progressLines, reasonLines, ruleLines } from './practice-text.ts';
import { choiceLetter } from './view-text.ts';

/** What practice in a terminal needs. */
export interface PractiseMeans {
  readonly io: Io;
  readonly world: PracticeWorld;
  /** Days of a file; null where they are made from the pack. */
  readonly days: readonly PracticeDay[] | null;
  readonly seed: string;
  readonly speech: PracticeSpeech;
  /** Null where nothing is kept. */
  readonly progress: ProgressFile | null;
  /** One day only. */
  readonly once: boolean;
}

const verdicts: readonly VerdictWord[] = ['spray-today', 'wait', 'do-not-spray'];

/** Puts day after day until the input ends or one is enough; resolves to the exit status. */
export async function practise(means: PractiseMeans): Promise<number> {
  const { io, world, progress, speech } = means;
  const lines = io.lines()[Symbol.asyncIterator]();
  const say = (text: readonly string[]) => io.write(`${text.join('\n')}\n`);
  const ask = async (): Promise<string | null> => {
    if (io.interactive) io.write('> ');
    const next = await lines.next();
    const line = next.done ? null : next.value.trim();
    return line === null || speech.words.terminal.typed.end.includes(line.toLowerCase()) ? null : line;
  };
  const { id: pack } = world.pack;
  let reviews: readonly Review[] = reviewsOf((await progress?.read()) ?? [], pack, pack === firstPack);
  for (;;) {
    const day = nextDay({ world, days: means.days, reviews, now: io.now(), seed: means.seed });
    if (day === null) {
      say([speech.practice.noDays]);
      return 1;
    }
    const answer = await takeAnswer(day, means, say, ask);
    if (answer === null) break;
    const checked = await checkAnswer(day, answer, world, speech.words);
    const { rule, typed, verdict } = answer;
    const review: Review = {
      pack,
      rule: day.rule,
      kind: day.kind,
      at: io.now(),
      day: day.id,
      verdict,
      result: checked.result,
      reason: rule,
      ...(typed === undefined ? {} : { typed }),
    };
    await progress?.add(review);
    reviews = [...reviews, review];
    say(answerLines(checked, answer, review, reviews, world, speech));
    if (means.once) break;
    say(['', speech.practice.typing.next]);
    let next = await ask();
    for (; next !== null && next !== ''; next = await ask()) {
      const word = next.toLowerCase();
      if (speech.words.terminal.typed.trace.includes(word)) say(ruleLines(checked.trace, speech));
      else if (speech.practice.typing.progress.includes(word)) say(progressLines(reviews, world, speech, io.now()));
      else say([speech.practice.typing.next]);
    }
    if (next === null) break;
  }
  say(['', ...progressLines(reviews, world, speech, io.now())]);
  return 0;
}

/** By its number, or by so much of its words that no other is meant: "w", "do not". */
function verdictOf(line: string, practice: PracticeSpeech['practice']): VerdictWord | undefined {
  if (line === '') return undefined;
  const meant = verdicts.filter(
    (one, index) => line === String(index + 1) || practice.verdicts[one].toLowerCase().startsWith(line.toLowerCase()),
  );
  return meant.length === 1 ? meant[0] : undefined;
}

/** Verdict first, then the reason; null where the input ends. */
async function takeAnswer(
  day: PracticeDay,
  { world, speech, seed }: PractiseMeans,
  say: (text: readonly string[]) => void,
  ask: () => Promise<string | null>,
): Promise<LearnerAnswer | null> {
  const { practice, words } = speech;
  const judged = judgeDay(day, world.pack);
  if (!judged) return null;
  say(dayText(tellDay(day, world, speech)));
  say(['', practice.decide, ...verdicts.map((one, index) => `  ${index + 1}  ${practice.verdicts[one]}`)]);
  let verdict: VerdictWord | undefined;
  while (verdict === undefined) {
    const line = await ask();
    if (line === null) return null;
    verdict = verdictOf(line, practice);
    if (verdict === undefined) say([practice.typing.verdict]);
  }
  let offered: readonly (string | null)[] = [...reasonChoices(day, judged, world.pack, seed), null];
  const titleOf = titlesOf(world.pack.rules, words);
  const titles = () => offered.map((one) => (one === null ? practice.nothing : titleOf(one)));
  say(['', practice.reason, practice.reasonLead, ...reasonLines(titles()), practice.typing.reason]);
  let typed: string | undefined;
  for (;;) {
    const line = await ask();
    if (line === null) return null;
    const index = offered.findIndex((_, at) => choiceLetter(at) === line.toLowerCase());
    const kept = typed === undefined ? {} : { typed };
    if (index >= 0) return { verdict, rule: offered[index] ?? null, ...kept };
    if (line === '') continue;
    typed = line;
    const found = matchReason(line, world.pack, world.definitionOf, words, practice);
    if ('rule' in found) return { verdict, rule: found.rule, typed };
    if ('nothing' in found) return { verdict, rule: null, typed };
    if ('perhaps' in found) offered = [...found.perhaps, null];
    say(['perhaps' in found ? practice.perhaps : practice.noMatch, ...reasonLines(titles())]);
  }
}
