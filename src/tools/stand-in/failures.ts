import { Unit } from '@openmeteo/sdk/unit.js';
import { buildReply, type ReplyDescription } from './build-forecast.ts';

/** What goes back over the wire in place of a good reply. */
export interface Reply {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Uint8Array;
}

/** A way to fail: another reply, or something done to the connection. */
export type Failure = ((good: ReplyDescription) => Reply) | 'reset' | 'silence';

const text = new TextEncoder();
const binary = { 'content-type': 'application/octet-stream' };
const html = { 'content-type': 'text/html' };
const json = { 'content-type': 'application/json' };

const page = '<html><head><title>503 Service Temporarily Unavailable</title></head><body></body></html>\n';

/** Every way in which the stand-in can fail, by name. */
export const failures = {
  'page-503': () => reply(503, html, page),
  'page-500': () => reply(500, html, page.replaceAll('503', '500')),
  'page-404': () => reply(404, html, page.replaceAll('503', '404')),
  'page-200': () => reply(200, html, page),
  'json-401': () => reply(401, json, refusal('The API key is not valid.')),
  'json-400': () => reply(400, json, refusal('Latitude must be in range of -90 to 90.')),
  'busy-429': () => reply(429, json, refusal('Too many requests.')),
  'busy-429-text': () => reply(429, html, 'Too Many Requests'),
  'busy-429-retry-after': () => reply(429, { ...json, 'retry-after': '2' }, refusal('Too many requests.')),
  'busy-429-long': () => reply(429, { ...json, 'retry-after': '3600' }, refusal('Hourly limit passed.')),
  'json-200': () => reply(200, json, refusal('No data for this place.')),
  truncated: (good) => bytes(buildReply(good).slice(0, -101)),
  'spliced-in': (good) => bytes(splice(buildReply(good), 0)),
  'spliced-over': (good) => bytes(splice(buildReply(good), spliced.length)),
  appended: (good) => bytes(concat(buildReply(good), spliced)),
  'negative-length': () => bytes(Uint8Array.of(0xf8, 0xff, 0xff, 0xff, 0, 0, 0, 0)),
  'zero-length': () => bytes(new Uint8Array(8)),
  empty: () => bytes(new Uint8Array()),
  'two-places': (good) => bytes(concat(buildReply(good), buildReply(good))),
  'nan-tail': (good) => rebuilt(everyColumn(good, (value, index) => (index > nearTail(good) ? null : value))),
  'nothing-ahead': (good) => rebuilt(everyColumn(good, () => null)),
  'zeros-beside-gaps': (good) => rebuilt(withColumn(good, 'precipitation', (index) => (index % 20 === 0 ? null : 0))),
  'zeros-past-end': (good) => {
    const cut = everyColumn(good, (value, index) => (index > nearTail(good) ? null : value));
    return rebuilt(withColumn(cut, 'precipitation', () => 0));
  },
  'absent-needed': (good) => rebuilt(without(good, 'precipitation')),
  'absent-optional': (good) => rebuilt(without(good, 'soil_moisture_9_to_27cm')),
  'undefined-optional': (good) => {
    const name = 'soil_moisture_9_to_27cm';
    return rebuilt({ ...withColumn(good, name, () => null), units: { [name]: Unit.undefined } });
  },
  'unasked-twice': (good) => rebuilt({ ...good, order: [...Object.keys(good.variables).slice(1), 'precipitation'] }),
  'wrong-unit': (good) => rebuilt({ ...good, units: { wind_speed_10m: Unit.metre_per_second } }),
  'wrong-order': (good) => rebuilt({ ...good, order: Object.keys(good.variables).reverse() }),
  'wrong-place': (good) => rebuilt({ ...good, latitude: -good.latitude || 45, longitude: good.longitude }),
  'wrong-step': (good) => rebuilt({ ...good, intervalSeconds: 10_800 }),
  'impossible-value': (good) => rebuilt(withColumn(good, 'wind_speed_10m', () => 4000)),
  'all-past': (good) => rebuilt({ ...good, start: good.start - 60 * 86_400 }),
  'too-short': (good) => rebuilt(shortened(good, nearTail(good))),
  'clock-change': (good) => rebuilt({ ...good, utcOffsetSeconds: 3600, timezone: 'Europe/London' }),
  reset: 'reset',
  silence: 'silence',
} as const satisfies Record<string, Failure>;

/** Name of a way to fail. */
export type FailureName = keyof typeof failures;

const spliced = text.encode('Unexpected error while streaming data: timeout reached');

/** The stamp some hours after the middle of a reply: soon after now, since as many days are asked for on either side. */
function nearTail(good: ReplyDescription): number {
  return Math.floor(good.hours / 2) + 30;
}

function reply(status: number, headers: Record<string, string>, body: string): Reply {
  return { status, headers, body: text.encode(body) };
}

function bytes(body: Uint8Array): Reply {
  return { status: 200, headers: binary, body };
}

function rebuilt(description: ReplyDescription): Reply {
  return bytes(buildReply(description));
}

function refusal(reason: string): string {
  return JSON.stringify({ error: true, reason });
}

function splice(whole: Uint8Array, replaced: number): Uint8Array {
  const middle = Math.floor(whole.length / 2);
  return concat(whole.slice(0, middle), spliced, whole.slice(middle + replaced));
}

function concat(...parts: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(parts.flatMap((part) => [...part]));
}

function withColumn(good: ReplyDescription, name: string, value: (index: number) => number | null): ReplyDescription {
  const column = Array.from({ length: good.hours }, (_, index) => value(index));
  return { ...good, variables: { ...good.variables, [name]: column } };
}

function everyColumn(
  good: ReplyDescription,
  change: (value: number | null, index: number) => number | null,
): ReplyDescription {
  const columns = Object.entries(good.variables).map(([name, column]) => [name, column.map(change)]);
  return { ...good, variables: Object.fromEntries(columns) };
}

function without(good: ReplyDescription, name: string): ReplyDescription {
  const { [name]: _, ...variables } = good.variables;
  return { ...good, variables };
}

function shortened(good: ReplyDescription, hours: number): ReplyDescription {
  const columns = Object.entries(good.variables).map(([name, column]) => [name, column.slice(0, hours)]);
  return { ...good, hours, variables: Object.fromEntries(columns) };
}
