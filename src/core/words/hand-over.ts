import type { ConversationView } from '../dialogue/view-types.ts';
import type { VerdictWord } from '../verdict/types.ts';
import type { Catalogue, PageCatalogue } from './catalogue.ts';
import { liftBeside } from './jobs.ts';
import { markTerms } from './mark-terms.ts';
import { capital } from './units.ts';

/** The words of a hand-over: its own and those that every page has. */
type HandOverCatalogue = PageCatalogue & Pick<Catalogue, 'handOver'>;

/** One part of a hand-over: a heading and its sentences. */
export interface HandOverPart {
  readonly id: 'reasons' | 'jobs' | 'advice' | 'dose' | 'answers' | 'cautions' | 'basis';
  readonly heading: string;
  readonly lines: readonly string[];
}

/** An answer as it is printed, sent or shown to somebody else: all words made, plain data, nothing secret. */
export interface HandOver {
  /** ISO 639-1 code. */
  readonly language: string;
  readonly title: string;
  /** The label of what is invented; null on a real field. */
  readonly invented: string | null;
  readonly verdict: VerdictWord;
  readonly headline: string;
  readonly why: string;
  /** When it was given, by the clock at the field. */
  readonly given: string;
  /** Until when a spray-today stands and that it is withdrawn after; null for other verdicts. */
  readonly goodUntil: string | null;
  readonly safety: string;
  readonly copy: string;
  readonly parts: readonly HandOverPart[];
  /** Trade terms said in it. */
  readonly terms: ConversationView['terms'];
  /** The conversation's moment at which it was handed over, and that after which a spray-today is withdrawn: ISO instants UTC. */
  readonly madeAt: string;
  readonly validUntil: string | null;
}

/** The verdict that stands, for somebody else; null where none stands. */
export function handOverOf(view: ConversationView, words: HandOverCatalogue): HandOver | null {
  const { verdict, field, packTitle } = view;
  if (verdict === null) return null;
  const said = words.handOver;
  const handOver: Omit<HandOver, 'terms'> = {
    language: words.language,
    title: said.title(packTitle, field?.name ?? said.ownField),
    invented: field?.invented ? said.invented : null,
    verdict: verdict.verdict,
    headline: verdict.headline,
    why: verdict.why,
    given: verdict.givenText,
    goodUntil: verdict.goodUntilText,
    safety: words.verdict.safety,
    copy: said.copy,
    parts: partsOf(view, verdict, words),
    madeAt: view.now,
    validUntil: verdict.verdict === 'spray-today' ? verdict.validUntil : null,
  };
  return { ...handOver, terms: saidIn(handOver, view.terms) };
}

/** Those of the terms that a hand-over says. */
function saidIn({ why, parts }: Omit<HandOver, 'terms'>, terms: HandOver['terms']): HandOver['terms'] {
  const lines = [why, ...parts.flatMap((part) => part.lines)];
  const said = new Set(
    lines.flatMap((line) => markTerms(line, terms).flatMap((part) => (typeof part === 'string' ? [] : [part.term.id]))),
  );
  return terms.filter(({ id }) => said.has(id));
}

function partsOf(
  { said }: ConversationView,
  verdict: NonNullable<ConversationView['verdict']>,
  words: HandOverCatalogue,
): HandOverPart[] {
  const { headings, reason, notKnown, answer, caution } = words.handOver;
  const { authorities } = words.verdict;
  const reasonLine = (one: (typeof verdict.reasons)[number], lift: string | null) =>
    reason(
      one.outcome === 'unknown' ? notKnown(one.title) : one.title,
      sentences(one.text, one.marginText, lift),
      authorities[one.authority],
    );
  const lines: Readonly<Record<HandOverPart['id'], readonly string[]>> = {
    reasons: verdict.reasons.map((one) => reasonLine(one, liftBeside(one, verdict.reasons))),
    jobs: verdict.jobs,
    advice: verdict.advice.map((one) => reasonLine(one, null)),
    dose: verdict.verdict === 'do-not-spray' ? [] : [verdict.doseText],
    answers: said.map(({ label, value, from }) => answer(capital(label), value, from)),
    cautions: verdict.cautions.map(({ text, authority }) => caution(text, authorities[authority])),
    basis: [verdict.forecastText, verdict.packText],
  };
  return (Object.keys(lines) as HandOverPart['id'][])
    .filter((id) => lines[id].length > 0)
    .map((id) => ({ id, heading: headings[id], lines: lines[id] }));
}

function sentences(...parts: readonly (string | null)[]): string {
  return parts.flatMap((part) => (part ? [/[.!?]$/.test(part) ? part : `${part}.`] : [])).join(' ');
}

/** A hand-over as plain text for sending, one line a sentence; headings stand alone, points begin with a dash. */
export function handOverText(handOver: HandOver): string {
  const { title, invented, headline, why, given, goodUntil, safety, copy, parts } = handOver;
  const head = [title, invented, '', headline, why, given, goodUntil, safety];
  const body = parts.flatMap(({ heading, lines }) => ['', heading, ...lines.map((line) => `- ${line}`)]);
  return `${[...head, ...body, '', copy].filter((line) => line !== null).join('\n')}\n`;
}
