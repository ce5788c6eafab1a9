import { understandingReport } from '../../../../src/core/dialogue/understand/report.ts';
import type { FactId } from '../../../../src/core/facts/registry/index.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';

const { pack } = shipped;

/** A number as a corpus means it: as it is, a range, with doubt, or of some time ago. */
interface MeantNumber {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly band?: true;
  readonly when?: string;
}

interface MeantSigns {
  readonly present: readonly string[];
  readonly absent: readonly string[];
  readonly complete?: true;
}

type Meant = number | boolean | string | readonly string[] | MeantNumber | MeantSigns;

/** One utterance of a corpus with all that must come of it; see written-apart/README.md. */
export interface Utterance {
  readonly text: string;
  readonly asked?: string;
  readonly previous?: string;
  readonly facts: Readonly<Record<string, Meant>>;
  readonly intents: readonly string[];
  readonly ask?: readonly string[];
  readonly never?: readonly string[];
  readonly may?: Readonly<Record<string, Meant>>;
  readonly mayIntents?: readonly string[];
  readonly kind: string;
}

/** How many items were read, read rightly, and meant. */
export interface Score {
  read: number;
  right: number;
  meant: number;
}

const namesOfIntents: Readonly<Record<string, string>> = { 'what-said': 'said', 'start-again': 'restart' };
const answersOnly = new Set(['yes', 'no']);

/**
 * What came of one utterance: the score of its items, and each item that is wrong, missed or asked for nothing. A doubtful reading is
 * read back before it counts, so it is never a wrong one; it is a right one where its value is.
 */
export function judge(utterance: Utterance, language: string): Score & { readonly faults: readonly string[] } {
  const { text, asked, previous, facts, ask = [], may = {}, mayIntents = [] } = utterance;
  const intents = utterance.intents.map((intent) => (intent === 'summary' ? 'said' : intent));
  const question =
    asked === undefined ? null : (pack.questions.find((one) => one.facts.some((id) => id === asked)) ?? null);
  const recent = previous === undefined ? [] : [previous as FactId];
  const report = understandingReport(text, { asked: question, pack, recent, language });
  const faults: string[] = [];
  const score = { read: 0, right: 0, meant: Object.keys(facts).length + intents.length };
  const told: [string, unknown, boolean][] = [
    ...Object.entries(report.facts).map(([id, value]): [string, unknown, boolean] => [id, value, true]),
    ...Object.entries(report.offered).map(([id, value]): [string, unknown, boolean] => [id, value, false]),
  ];
  const found = new Set<string>();
  for (const [id, value, isTaken] of told) {
    const hoursAgo = report.hoursAgo[id as FactId];
    const said = { id, value, isTaken, hoursAgo };
    const meant = facts[id];
    if (meant === undefined && ask.includes(id) && !isTaken) continue;
    if (meant === undefined && may[id] !== undefined && fits(said, may[id])) continue;
    if (meant === undefined || !fits(said, meant)) {
      score.read += Number(isTaken);
      faults.push(`${isTaken ? 'wrong' : 'asked'} ${id} ${JSON.stringify(value)}`);
    } else if (isWholly(value, meant)) {
      score.read += 1;
      score.right += 1;
      found.add(id);
    }
  }
  for (const id of Object.keys(facts)) if (!found.has(id)) faults.push(`missed ${id} ${JSON.stringify(facts[id])}`);
  const wanted = report.intents
    .map((intent) => namesOfIntents[intent] ?? intent)
    .filter((one) => !answersOnly.has(one));
  for (const intent of wanted) {
    if (mayIntents.includes(intent)) continue;
    score.read += 1;
    if (intents.includes(intent)) score.right += 1;
    else faults.push(`wrong !${intent}`);
  }
  for (const intent of intents) if (!wanted.includes(intent)) faults.push(`missed !${intent}`);
  return { ...score, faults };
}

interface SaidValue {
  readonly id: string;
  readonly value: unknown;
  readonly isTaken: boolean;
  readonly hoursAgo: number | undefined;
}

function fits({ id, value, isTaken, hoursAgo }: SaidValue, meant: Meant): boolean {
  if (typeof meant === 'boolean') return value === (meant ? 'yes' : 'no');
  if (typeof meant === 'string') return value === meant;
  if (isList(meant)) return sameSet(isList(value) ? value : [value], meant);
  if (typeof meant === 'number') return isNear(id, middleOf(value), meant) && (!isTaken || !hasBand(value));
  if ('present' in meant) return fitsSigns(id, value, meant);
  if (meant.when !== undefined)
    return fits({ id, value, isTaken, hoursAgo }, meant.value) && isOlder(id, hoursAgo, meant.when, isTaken);
  if (meant.band) return isDoubted(value, isTaken, meant.value);
  const { low = meant.value, high = meant.value } = meant;
  const [from, to] = endsOf(value);
  const isEnd = isNear(id, from, low) || isNear(id, to, high);
  return isEnd && from <= meant.value && meant.value <= to;
}

function isOlder(id: string, hoursAgo: number | undefined, when: string, isTaken: boolean): boolean {
  const isLasting = !/^(?:wind|rain|air|sun)\./.test(id);
  return !isTaken || hoursAgo !== undefined || (when === 'this-morning' && isLasting);
}

function isDoubted(value: unknown, isTaken: boolean, meant: number): boolean {
  const [from, to] = endsOf(value);
  const isClose = Math.abs(middleOf(value) - meant) <= Math.max(0.5, Math.abs(meant) * 0.05) + 1e-9;
  return (!isTaken || from < to) && (isClose || (from <= meant && meant <= to));
}

/** True where nothing meant is left out: every sign that is there or not is named. */
function isWholly(value: unknown, meant: Meant): boolean {
  if (typeof meant !== 'object' || !('present' in meant)) return true;
  const { present, absent } = signsOf(value);
  const isAll = (some: readonly string[], all: readonly string[]) => some.every((one) => all.includes(one));
  return isAll(meant.present, present) && (isAll(meant.absent, absent) || meant.complete === true);
}

const allSigns = factDefinition('soil.surface').choices ?? [];

function signsOf(value: unknown): { present: readonly string[]; absent: readonly string[] } {
  if (isList(value)) return { present: value, absent: allSigns.filter((sign) => !value.includes(sign)) };
  const { value: present, possible } = value as { value: readonly string[]; possible: readonly string[] };
  return { present, absent: allSigns.filter((sign) => !present.includes(sign) && !possible.includes(sign)) };
}

function fitsSigns(_: string, value: unknown, { present, absent, complete }: MeantSigns): boolean {
  const said = signsOf(value);
  const isAbsent = (sign: string) => absent.includes(sign) || (complete === true && !present.includes(sign));
  return said.present.every((sign) => present.includes(sign)) && said.absent.every(isAbsent);
}

function isNear(id: string, value: number, meant: number): boolean {
  const { precision = 0 } = factDefinition(id as FactId);
  return Math.abs(value - meant) <= Math.max(Math.abs(meant) * 0.01, precision, 0.01) + 1e-9;
}

const isList = (value: unknown): value is readonly string[] => Array.isArray(value);
const sameSet = (a: readonly unknown[], b: readonly unknown[]) =>
  a.length === b.length && a.every((one) => b.includes(one));
const hasBand = (value: unknown) => typeof value === 'object';
const middleOf = (value: unknown): number => (typeof value === 'object' ? (value as MeantNumber).value : Number(value));

function endsOf(value: unknown): readonly [number, number] {
  const { low = middleOf(value), high = middleOf(value) } = typeof value === 'object' ? (value as MeantNumber) : {};
  return [low, high];
}
