import { changedOf, type Sides, type Transition } from '../../core/compare/index.ts';
import { parseReading } from '../../core/facts/parse/index.ts';
import { definitionIn } from '../../core/facts/registry/index.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { compareWordsOf } from '../../core/words/compare-words.ts';
import { labelOf } from '../../core/words/facts.ts';
import { showWhole } from '../../core/words/numbers.ts';
import { phraseOf } from '../../core/words/phrases.ts';
import { errorLine } from '../error-line.ts';
import { sideLine } from './report.ts';
import type { ComparisonReport } from './report-schema.ts';
import { seasonLines } from './text-picture.ts';

/** Most differing cases or verdicts that are written out. */
const mostShown = 20;

/** A comparison as a person reads it. */
export function reportText(report: ComparisonReport, sides: Sides, words: Catalogue): string {
  const told = compareWordsOf(words.language);
  const { heading } = told;
  const part = (title: string, lines: readonly string[]) => [
    '',
    title,
    ...lines.map((line) => (line === '' ? '' : `  ${line}`)),
  ];
  const lines = [
    told.sides(sideLine(report.a, told), sideLine(report.b, told)),
    ...part(heading.differences, differenceLines(report, words)),
    ...part(heading.cases, caseLines(report, words)),
    ...part(heading.limits, limitLines(report, sides, words)),
    ...(report.verdicts === null ? [] : part(heading.verdicts, verdictLines(report.verdicts, words))),
    ...part(heading.seasons, weatherLines(report, sides, words)),
    ...seasonLines(report.seasons, words),
  ];
  return `${lines.join('\n')}\n`;
}

function differenceLines({ differences }: ComparisonReport, words: Catalogue): string[] {
  const told = compareWordsOf(words.language);
  if (differences.length === 0) return [told.same];
  return differences.flatMap(({ line, before, after }) => [
    line,
    ...(before === null ? [] : [`  ${told.was(before)}`]),
    ...(after === null ? [] : [`  ${told.is(after)}`]),
  ]);
}

function countLines(transitions: readonly Transition[], words: Catalogue): string[] {
  const told = compareWordsOf(words.language);
  const { names } = words.verdict;
  const { changed, all } = changedOf(transitions);
  return [
    told.counted(changed, all),
    ...transitions
      .filter(({ way }) => way !== 'same')
      .map(({ a, b, count, way }) => `${told.transition(count, names[a], names[b])} (${told.way[way]})`),
  ];
}

function caseLines({ cases: { transitions, differing, notJudged } }: ComparisonReport, words: Catalogue): string[] {
  const told = compareWordsOf(words.language);
  const { names } = words.verdict;
  const doseOf = (dose: (typeof differing)[number]['a']['dose']) =>
    'needs' in dose
      ? told.noDose
      : told.gramsPerHa(showWhole(words, Number(dose.activeGPerHa)), showWhole(words, Number(dose.productLPerHa)));
  const first = differing.toSorted((one, other) => Number(one.way === 'same') - Number(other.way === 'same'));
  const rows = first.map(({ name, file, a, b, way, by }) => {
    const only = (one: readonly string[], other: readonly string[]) =>
      one.filter((rule) => !other.includes(rule)).join(', ');
    const [gained, lost] = [only(b.met, a.met), only(a.met, b.met)];
    const lifts = Object.entries(a.lifts).flatMap(([rule, was]) => {
      const is = b.lifts[rule];
      const said = (how: string) => words.say.lifts[how as keyof typeof words.say.lifts];
      return is === undefined || is === was ? [] : [told.lifts(rule, said(was), said(is))];
    });
    const parts = [
      way === 'same'
        ? `${names[a.verdict]}, ${told.way.same}`
        : `${names[a.verdict]} → ${names[b.verdict]}, ${told.by(by.join(', '))}`,
      ...(gained === '' ? [] : [told.met(gained)]),
      ...(lost === '' ? [] : [told.notMet(lost)]),
      ...lifts,
      ...(doseOf(a.dose) === doseOf(b.dose) ? [] : [told.dose(doseOf(a.dose), doseOf(b.dose))]),
    ];
    return `${file}: ${name}: ${parts.join('; ')}`;
  });
  const unread = notJudged.map(({ name, error }) => told.notJudged(name, errorLine(error as never, words)));
  return [...countLines(transitions, words), ...cut(rows, words), ...unread];
}

function limitLines({ limits }: ComparisonReport, sides: Sides, words: Catalogue): string[] {
  const told = compareWordsOf(words.language);
  const { base, alone, pairs, transitions, changed } = limits;
  if (base === null) return [told.noBase];
  const { names } = words.verdict;
  return [
    `${told.counted(changed, alone + pairs)} ${told.made(alone, pairs)}`,
    told.base(base.name, phrasesOf(base.moved, sides, words)),
    ...transitions.map(
      ({ a: from, b: to, count, way, example }) =>
        `${told.transition(count, names[from], names[to])} (${told.way[way]}), ${told.example(phrasesOf(example.facts, sides, words), example.by.join(', '))}`,
    ),
  ];
}

/** Facts as said back: "soil at 30 cm 8 C; drains not running". */
function phrasesOf(facts: Readonly<Record<string, unknown>>, { a, b }: Sides, words: Catalogue): string {
  const registry = { ...b.pack.facts, ...a.pack.facts };
  const definitionOf = (id: string) => definitionIn(registry, id);
  return Object.entries(facts)
    .map(([id, given]) =>
      given === null
        ? words.say.tried.factNotKnown(labelOf(id, definitionOf, words))
        : phraseOf(id, parseReading(registry, id, given), definitionOf, words),
    )
    .join('; ');
}

function verdictLines(verdicts: NonNullable<ComparisonReport['verdicts']>, words: Catalogue): string[] {
  const told = compareWordsOf(words.language);
  const { names } = words.verdict;
  const rows = verdicts.differing.map(
    ({ at, saved, a, b, by }) =>
      `${told.saved(at, names[saved], names[a], names[b])}${by.length === 0 ? '' : `, ${told.by(by.join(', '))}`}`,
  );
  return [
    ...countLines(verdicts.transitions, words),
    told.asThen(verdicts.asThen, verdicts.verdicts),
    ...cut(rows, words),
    ...(verdicts.notKept.length === 0 ? [] : [told.notKept(verdicts.notKept.join(', '))]),
    ...[...verdicts.unread, ...verdicts.unjudged].map(({ error, count }) =>
      told.unjudged(count, errorLine(error as never, words)),
    ),
  ];
}

function weatherLines({ seasons }: ComparisonReport, sides: Sides, words: Catalogue): string[] {
  const told = compareWordsOf(words.language);
  const { weather, stations, field, transitions, windows, deciding, held } = seasons;
  const moved = (Object.keys(windows) as (keyof typeof windows)[]).filter((change) => windows[change] > 0);
  const facts = Object.fromEntries(held.map((id) => [id, field.facts[id] ?? null]));
  return [
    weather === 'invented' ? told.invented : told.recorded(stations.join(', ')),
    told.field[field.from],
    ...(held.length === 0 ? [] : [told.held(phrasesOf(facts, sides, words))]),
    told.noForecastError,
    ...countLines(transitions, words),
    ...deciding.map(({ rule, stricter, looser }) => told.deciding(rule, stricter, looser)),
    ...(moved.length === 0
      ? []
      : [told.windowsTold(moved.map((change) => told.windows[change](windows[change])).join(', '))]),
    ...(transitions.some(({ way }) => way !== 'same') ? [told.signs] : []),
  ];
}

function cut(rows: readonly string[], words: Catalogue): string[] {
  const rest = rows.length - mostShown;
  return rest <= 0 ? [...rows] : [...rows.slice(0, mostShown), compareWordsOf(words.language).more(rest)];
}
