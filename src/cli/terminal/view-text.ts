import type { Entry, QuestionView, VerdictView } from '../../core/dialogue/view-types.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { notJudged } from '../../core/words/jobs.ts';
import { showWhole } from '../../core/words/numbers.ts';
import { unitSuffix } from '../../core/words/units.ts';
import { adviceLine, jobsTitle, reasonLines } from '../decision-text.ts';

/** Letter of the choice at an index: a, b, c. */
export function choiceLetter(index: number): string {
  return String.fromCharCode('a'.charCodeAt(0) + index);
}

/** One entry of the log as lines; what the person typed is already on the screen and gives none. */
export function entryLines(entry: Entry, words: Catalogue): string[] {
  if (entry.kind === 'person' || entry.kind === 'question') return [];
  if (entry.kind === 'verdict') return verdictLines(entry.verdict, words);
  return [entry.text];
}

/** The open question: what is asked, why, how to find out, and the answers by letter. */
export function questionLines(question: QuestionView, words: Catalogue): string[] {
  const { before, together } = question;
  const parts = [question, ...together];
  const firsts = parts.map((_, at) => parts.slice(0, at).reduce((sum, { choices }) => sum + choices.length, 0));
  return parts.flatMap((part, at) => partLines(part, firsts[at] ?? 0, before, words));
}

function partLines(question: QuestionView, first: number, before: string | null, words: Catalogue): string[] {
  const choices = question.choices.map(
    ({ label, help }, index) => `  ${choiceLetter(first + index)}) ${label}${help ? ` (${help})` : ''}`,
  );
  const boxes = question.boxes.map(({ label, unit, low, high }) => {
    const range =
      low !== null && high !== null ? [words.terminal.range(showWhole(words, low), showWhole(words, high))] : [];
    const limits = [unitSuffix(unit, words).trim(), ...range].filter((part) => part !== '').join(', ');
    return `  ${label}${limits === '' ? '' : ` (${limits})`}`;
  });
  const many = question.form === 'signs' ? [`  (${words.terminal.severalLetters})`] : [];
  const told = [before ?? '', question.why, question.now, question.how].filter((line) => line !== '');
  return ['', question.ask, ...told.map((line) => `  ${line}`), ...boxes, ...choices, ...many];
}

/** The open question once more, in a line, where it has just been shown whole. */
export function questionAgain(question: QuestionView, { terminal }: Catalogue): string[] {
  return ['', terminal.stillOpen([question, ...question.together].map(({ ask }) => ask).join(' '))];
}

/** A verdict: sentence, why, what is met with margin and what lifts it, jobs, dose, cautions, sources; in short where nothing has changed. */
export function verdictLines(verdict: VerdictView, words: Catalogue): string[] {
  const { sections } = words.terminal;
  const isAsBefore = verdict.change === words.verdict.change.same(words.verdict.names[verdict.verdict]);
  const open = notJudged(verdict.reasons, words);
  const cautions = cautionLines(verdict, words);
  const dose = titled(
    sections.dose,
    verdict.verdict === 'do-not-spray' || verdict.doseText === '' ? [] : [verdict.doseText],
  );
  const validUntil = verdict.validUntilText ? [verdict.validUntilText] : [];
  if (isAsBefore) return ['', verdict.headline.toUpperCase(), verdict.change ?? '', ...dose, ...validUntil];
  return [
    '',
    verdict.headline.toUpperCase(),
    verdict.why,
    ...(verdict.change ? [verdict.change] : []),
    ...titled(sections.reasons, reasonLines(verdict, words)),
    ...titled(jobsTitle(verdict, words), verdict.jobs),
    ...titled(
      sections.advice,
      verdict.advice.map((one) => adviceLine(one, words)),
    ),
    ...dose,
    ...(open === null ? [] : [open]),
    ...(verdict.verdict === 'spray-today' ? cautions : []),
    verdict.forecastText,
    ...validUntil,
    verdict.packText,
  ];
}

/** What may be typed at an answer. */
export function nextWords({ canCheckRest, doseNeeds }: VerdictView, { terminal }: Catalogue): string {
  const { rest, dose, trace, cautions, again, all } = terminal.typing;
  return all([...(canCheckRest ? [rest] : []), ...(doseNeeds ? [dose] : []), trace, cautions, again].join(', '));
}

/** The cautions that always hold. */
export function cautionLines(verdict: VerdictView, { terminal }: Catalogue): string[] {
  return titled(
    terminal.sections.cautions,
    verdict.cautions.map(({ text }) => text),
  );
}

function titled(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [`${title}:`, ...lines.map((line) => `  - ${line}`)];
}

/** The whole trace of a verdict, one block a rule. */
export function traceLines(verdict: VerdictView, { terminal, verdict: { kinds } }: Catalogue): string[] {
  return verdict.rules.flatMap((rule) => [
    `${rule.title}: ${rule.outcomeText} [${rule.rule}, ${kinds[rule.effect]}, ${kinds[rule.authority]}]`,
    ...rule.facts.map(({ label, value, from }) => `    ${label}: ${value} (${from})`),
    ...rule.limits.map(({ parameter, value, source }) => `    ${terminal.limit} ${parameter}: ${value} (${source})`),
    ...rule.margins.map((margin) => `    ${margin}`),
  ]);
}
