import { readdirSync, readFileSync } from 'node:fs';
import { applyOverlays } from '../../../../src/core/rules/overlay/apply-overlays.ts';
import { type Overlay, parseOverlay } from '../../../../src/core/rules/overlay/parse-overlay.ts';
import { loadPack } from '../../../../src/core/rules/pack/load-pack.ts';
import type { Question } from '../../../../src/core/rules/pack-types.ts';
import type { Rule } from '../../../../src/core/rules/types.ts';

const folder = new URL('../../../../rules/propyzamide-winter-oilseed-rape/', import.meta.url);

/** The pack as shipped. */
export const shipped = loadPack(
  new Map(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.json'))
      .sort()
      .map((file) => [file, readFileSync(new URL(file, folder), 'utf8')]),
  ),
).pack;

/** Parts of an overlay's file beside its head, and parts of the head that differ. */
export interface Parts {
  readonly overlay?: Readonly<Record<string, unknown>>;
  readonly parameters?: readonly unknown[];
  readonly rules?: readonly unknown[];
  readonly questions?: readonly unknown[];
  readonly cautions?: readonly unknown[];
  readonly glossary?: readonly unknown[];
  readonly cases?: readonly unknown[];
  readonly removes?: unknown;
}

const head = {
  id: 'invented-farm',
  title: { en: 'Invented farm', de: 'Erfundener Hof' },
  author: 'A. N. Adviser',
  place: 'an invented farm',
  reason: 'a test needs it',
  layer: 'farm',
  pack: { id: 'propyzamide-winter-oilseed-rape' },
  validFrom: '2026-10-01',
};

/** An overlay with a usual head, parsed. */
export function overlayOf({ overlay, ...parts }: Parts, file = 'farm.overlay.json'): Overlay {
  const parsed = parseOverlay(file, JSON.stringify({ overlay: { ...head, ...overlay }, ...parts }));
  if (!parsed.overlay) throw new TypeError(JSON.stringify(parsed.findings));
  return parsed.overlay;
}

/** Lays one overlay over the pack as shipped. */
export function apply(parts: Parts) {
  return applyOverlays(shipped, [overlayOf(parts)]);
}

/** A short parameter entry. */
export function parameter(id: string, value: unknown, more: object = {}) {
  return { id, value, source: 'a test', why: { en: 'a test needs it', de: 'ein Test braucht es' }, ...more };
}

/** A rule of the pack as its file holds it, changed in parts. */
export function rule(id: string, changed: object = {}) {
  const found = shipped.rules.find((each) => each.id === id) as Rule;
  const { lifts, protectedByPractice, topic: _topic, ...rest } = found;
  return {
    ...rest,
    ...(lifts === null ? {} : { lifts }),
    ...(protectedByPractice ? { protected: true } : {}),
    ...changed,
  };
}

/** A new rule that holds, of practice unless told otherwise. */
export function newRule(id: string, when: object, changed: object = {}) {
  const text = { title: 'Local', met: 'A local rule holds.', unknown: 'Look.', lift: 'Wait.' };
  const why = { en: 'a test needs it', de: 'ein Test braucht es' };
  return {
    id,
    effect: 'hold',
    authority: 'practice',
    lifts: 'days',
    source: 'a test',
    why,
    when,
    text: { en: text, de: text },
    ...changed,
  };
}

/** A question of the pack, changed in parts. */
export function question(id: string, changed: object = {}) {
  return { ...shipped.questions.find((each) => each.id === id), ...changed };
}

/** A question of the pack with one answer cut in two at a value of a fact: up to it, and from one step above it. */
export function split(
  id: string,
  answer: string,
  fact: string,
  upTo: number,
  from: number,
  found: Partial<Question> | undefined = shipped.questions.find((each) => each.id === id),
) {
  const choices = (found?.choices ?? []).flatMap((choice) => {
    const reading = (choice.gives as Record<string, { low: number; high: number }>)[fact];
    if (choice.id !== answer || !reading) return [choice];
    const part = (name: string, low: number, high: number) => ({
      id: `${answer}-${name}`,
      label: { en: `${low} to ${high}`, de: `${low} bis ${high}` },
      gives: { ...choice.gives, [fact]: { type: 'number' as const, value: low, low, high } },
    });
    return [part('less', reading.low, upTo), part('more', from, reading.high)];
  });
  return { ...found, choices };
}

/** The question for the rain ahead with its answers shared out at 5 mm in all and 2 mm in an hour; one answer may be left out. */
export function rainSharedOut(without?: string) {
  const [total, hour] = ['rain.next48hMm', 'rain.next48hMaxMmPerH'] as const;
  const totals = split('rain-ahead', 'bursts', total, 4.99, 5, split('rain-ahead', 'showers', total, 4.99, 5));
  const less = split('rain-ahead', 'showers-less', hour, 1.99, 2, totals);
  const more = split('rain-ahead', 'showers-more', hour, 1.99, 2, less);
  return { ...more, choices: more.choices.filter(({ id }) => id !== without) };
}
