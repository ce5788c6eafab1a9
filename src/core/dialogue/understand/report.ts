import { definitionIn, type FactId, type FactRegistry } from '../../facts/registry/index.ts';
import type { Reading } from '../../facts/types.ts';
import { understand } from './index.ts';
import { supposedText } from './supposed.ts';
import type { UnderstandContext, UnderstoodReading } from './types.ts';

/** A value in the form of a facts file: plain, with a band, or a list where a fact takes several. */
export type ToldValue =
  | number
  | string
  | readonly string[]
  | { readonly value: number; readonly low: number; readonly high: number }
  | { readonly value: readonly string[]; readonly possible: readonly string[] };

/** Values by fact id. */
export type ToldFacts = Readonly<Partial<Record<FactId, ToldValue>>>;

/** What one text was understood as, in the form of a facts file. */
export interface UnderstandingReport {
  /** Taken as they are. */
  readonly facts: ToldFacts;
  readonly intents: readonly string[];
  readonly notUnderstood: readonly string[];
  /** Facts read with doubt: they are asked about, not taken. */
  readonly needsConfirming: readonly FactId[];
  /** What would be taken of those if the person said yes. */
  readonly offered: ToldFacts;
  /** How long ago it was seen or measured, hours, where that was said. */
  readonly hoursAgo: Readonly<Partial<Record<FactId, number>>>;
  /** What is only supposed ("what if it were 9?"). */
  readonly supposed: ToldFacts;
  /** Soil temperatures read at another depth than 30 cm, as read there: they are worked out with their hour, never taken as they are. */
  readonly otherDepths: readonly { readonly depthCm: number; readonly value: ToldValue }[];
  /** True where something said before is put right. */
  readonly correction: boolean;
  /** Codes of what cannot be taken. */
  readonly refused: readonly string[];
}

/** Reads a text as the chat does and says in plain values what came of it. */
export function understandingReport(text: string, context: UnderstandContext): UnderstandingReport {
  const registry = context.pack.facts;
  const supposed = supposedText(text, context.language);
  const read = understand(supposed ?? text, context);
  const known = read.readings.filter(({ depthCm }) => depthCm === undefined);
  const isNewest = ({ fact, agoHours = 0 }: UnderstoodReading) =>
    known.every((other) => other.fact !== fact || (other.agoHours ?? 0) >= agoHours);
  const sure = known.filter((one) => !one.doubtful && isNewest(one));
  const isOfSure = ({ fact }: UnderstoodReading) => sure.some((other) => other.fact === fact);
  const doubtful = known.filter((one) => one.doubtful && (one.reading.type === 'signs' || !isOfSure(one)));
  const isSupposed = supposed !== null;
  return {
    facts: isSupposed ? {} : valuesOf(sure, registry),
    intents: isSupposed ? ['what-if'] : read.intents,
    notUnderstood: read.notUnderstood,
    needsConfirming: isSupposed ? [] : [...new Set(doubtful.map(({ fact }) => fact))],
    offered: isSupposed
      ? {}
      : valuesOf(
          known.filter((one) => doubtful.includes(one) || isBesideSign(one, doubtful)),
          registry,
        ),
    hoursAgo: Object.fromEntries(
      known.filter(isNewest).flatMap(({ fact, agoHours }) => (agoHours === undefined ? [] : [[fact, agoHours]])),
    ),
    supposed: isSupposed ? valuesOf(known, registry) : {},
    otherDepths: read.readings.flatMap(({ fact, reading, depthCm }) =>
      depthCm === undefined ? [] : [{ depthCm, value: plainValue(fact, reading, registry) }],
    ),
    correction: !isSupposed && read.correction,
    refused: read.refused.map(({ code }) => code),
  };
}

/** True for a sign beside which another one is doubtful: a yes takes both. */
function isBesideSign({ fact, reading }: UnderstoodReading, doubtful: readonly UnderstoodReading[]): boolean {
  return reading.type === 'signs' && doubtful.some((other) => other.fact === fact);
}

/** Readings of one text in order: a later one of the same fact stands, but signs named one by one are put together. */
function valuesOf(readings: readonly UnderstoodReading[], registry: FactRegistry): ToldFacts {
  const values = new Map<FactId, Reading>();
  for (const { fact, reading } of readings) {
    const before = values.get(fact);
    const joined =
      before?.type === 'signs' && reading.type === 'signs' && !reading.complete
        ? {
            ...before,
            present: [...new Set([...before.present, ...reading.present])],
            absent: [...new Set([...before.absent, ...reading.absent])],
          }
        : reading;
    values.set(fact, joined);
  }
  return Object.fromEntries([...values].map(([fact, reading]) => [fact, plainValue(fact, reading, registry)]));
}

function plainValue(fact: FactId, reading: Reading, registry: FactRegistry): ToldValue {
  if (reading.type === 'number') {
    const { value, low = value, high = value } = reading;
    return low === high ? value : { value, low, high };
  }
  if (reading.type === 'choice') return reading.possible.length === 1 ? reading.possible[0]! : reading.possible;
  if (reading.type === 'signs') {
    const { present, absent, complete } = reading;
    if (complete) return present;
    const possible = (definitionIn(registry, fact).choices ?? []).filter(
      (sign) => !present.includes(sign) && !absent.includes(sign),
    );
    return { value: present, possible };
  }
  return reading.type === 'date' ? reading.iso : '';
}
