import * as z from 'zod';

const text = z.string();
const count = z.int().min(0);
const day = z.iso.date();
const word = z.enum(['spray-today', 'wait', 'do-not-spray']);
const way = z.enum(['stricter', 'looser', 'same']);
const transition = z.strictObject({ a: word, b: word, way, count });
const rules = z.array(text);
const error = z.looseObject({ code: text, says: text, expected: text, came: text, next: text });
const unjudged = z.array(z.strictObject({ error, count }));

const side = z.strictObject({
  pack: text,
  version: text,
  hash: text,
  title: text,
  overlays: z.array(z.strictObject({ id: text, title: text, author: text, place: text, hash: text })),
});

const dose = z.union([
  z.strictObject({ needs: z.array(text) }),
  z.looseObject({ activeGPerHa: z.number(), productLPerHa: z.number(), labelMaxGPerHa: z.number() }),
]);
const answer = z.strictObject({ verdict: word, met: rules, lifts: z.record(text, text), dose });

const difference = z.strictObject({
  kind: z.enum(['parameter', 'rule', 'question', 'caution', 'term', 'fact']),
  id: text,
  change: z.enum(['added', 'removed', 'changed']),
  way: z.enum(['tighter', 'looser']).nullable(),
  line: text,
  before: text.nullable(),
  after: text.nullable(),
});

const run = z.strictObject({ first: day, last: day });
const season = z.strictObject({
  station: text,
  season: z.int(),
  first: day,
  /** A letter a day: s spray today, w wait, n do not spray. */
  a: z.string().regex(/^[swn]+$/),
  b: z.string().regex(/^[swn]+$/),
  changed: z.array(z.strictObject({ iso: day, a: word, b: word, way, by: rules })),
  windows: z.array(
    z.strictObject({
      change: z.enum(['appears', 'vanishes', 'grows', 'shrinks', 'moves']),
      a: z.array(run),
      b: z.array(run),
    }),
  ),
  held: z.array(text),
});

/** What `loamward rules compare --json` prints. */
export const reportSchema = z.strictObject({
  format: z.literal('loamward-comparison'),
  /** Day whose limits hold through all seasons. */
  day,
  a: side,
  b: side,
  differences: z.array(difference),
  cases: z.strictObject({
    transitions: z.array(transition),
    differing: z.array(z.strictObject({ name: text, file: text, way, a: answer, b: answer, by: rules })),
    notJudged: z.array(z.strictObject({ name: text, error })),
  }),
  limits: z.strictObject({
    base: z.strictObject({ name: text, file: text, day, moved: z.record(text, z.unknown()) }).nullable(),
    alone: count,
    pairs: count,
    changed: count,
    transitions: z.array(
      z.strictObject({
        ...transition.shape,
        alone: count,
        example: z.strictObject({ facts: z.record(text, z.unknown()), by: rules }),
      }),
    ),
  }),
  verdicts: z
    .strictObject({
      events: count,
      unread: unjudged,
      verdicts: count,
      transitions: z.array(transition),
      asThen: count,
      differing: z.array(z.strictObject({ at: text, saved: word, a: word, b: word, way, by: rules })),
      notKept: z.array(text),
      unjudged,
    })
    .nullable(),
  seasons: z.strictObject({
    weather: z.enum(['recorded', 'invented']),
    stations: z.array(text),
    field: z.strictObject({ from: z.enum(['file', 'plain']), facts: z.record(text, z.unknown()) }),
    transitions: z.array(transition),
    windows: z.record(z.enum(['appears', 'vanishes', 'grows', 'shrinks', 'moves']), count),
    deciding: z.array(z.strictObject({ rule: text, stricter: count, looser: count })),
    held: z.array(text),
    seasons: z.array(season),
  }),
});

/** A comparison of two rule sets as plain data. */
export type ComparisonReport = z.output<typeof reportSchema>;
