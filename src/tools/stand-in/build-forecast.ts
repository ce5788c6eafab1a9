import { Aggregation } from '@openmeteo/sdk/aggregation.js';
import { Unit } from '@openmeteo/sdk/unit.js';
import { Builder } from 'flatbuffers';
import { type AskedVariable, askedVariables } from '../../adapters/openmeteo/variables.ts';

/** A reply in plain words: columns by the service's own names; null becomes NaN, as the service writes what is missing. */
export interface ReplyDescription {
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation?: number;
  /** First stamp, epoch seconds UTC. */
  readonly start: number;
  readonly hours: number;
  readonly intervalSeconds?: number;
  /** True for a block of days, whose step is then a day and `hours` counts days. */
  readonly daily?: boolean;
  readonly utcOffsetSeconds?: number;
  readonly timezone?: string;
  readonly variables: Readonly<Record<string, readonly (number | null)[]>>;
  /** Units that differ from those asked for. */
  readonly units?: Readonly<Record<string, Unit>>;
  /** Order in which the variables are written; that of `variables` when absent. */
  readonly order?: readonly string[];
}

/** Slot numbers of the service's FlatBuffers tables, in the order of its published schema (@openmeteo/sdk). */
const slots = {
  reply: { latitude: 0, longitude: 1, elevation: 2, utcOffset: 6, timezone: 7, daily: 10, hourly: 11, count: 15 },
  hourly: { time: 0, timeEnd: 1, interval: 2, variables: 3, count: 4 },
  variable: {
    variable: 0,
    unit: 1,
    values: 3,
    altitude: 5,
    aggregation: 6,
    depth: 8,
    depthTo: 9,
    member: 10,
    count: 13,
  },
} as const;

/** The bytes of a reply with one place: real FlatBuffers behind their length, as the service sends them. */
export function buildReply(description: ReplyDescription): Uint8Array {
  const builder = new Builder(4096);
  const names = description.order ?? Object.keys(description.variables);
  const variables = names.map((name) => writeVariable(builder, description, name));
  const hourly = writeHourly(builder, description, variables);
  const timezone = builder.createString(description.timezone ?? 'GMT');
  const { reply } = slots;
  builder.startObject(reply.count);
  builder.addFieldFloat32(reply.latitude, description.latitude, 0);
  builder.addFieldFloat32(reply.longitude, description.longitude, 0);
  builder.addFieldFloat32(reply.elevation, description.elevation ?? 0, 0);
  builder.addFieldInt32(reply.utcOffset, description.utcOffsetSeconds ?? 0, 0);
  builder.addFieldOffset(reply.timezone, timezone, 0);
  builder.addFieldOffset(description.daily ? reply.daily : reply.hourly, hourly, 0);
  builder.finishSizePrefixed(builder.endObject());
  return builder.asUint8Array().slice();
}

function writeVariable(builder: Builder, description: ReplyDescription, name: string): number {
  const asked = variableNamed(name);
  const column = description.variables[name] ?? [];
  const { variable: slot } = slots;
  builder.startVector(4, column.length, 4);
  for (const value of [...column].reverse()) builder.addFloat32(value ?? Number.NaN);
  const values = builder.endVector();
  builder.startObject(slot.count);
  builder.addFieldInt8(slot.variable, asked.sdk, 0);
  builder.addFieldInt8(slot.unit, description.units?.[name] ?? asked.unit, Unit.undefined);
  builder.addFieldOffset(slot.values, values, 0);
  builder.addFieldInt16(slot.altitude, asked.altitude, 0);
  builder.addFieldInt8(slot.aggregation, name.endsWith('_mean') ? Aggregation.mean : Aggregation.none, 0);
  builder.addFieldInt16(slot.depth, asked.depth, 0);
  builder.addFieldInt16(slot.depthTo, asked.depthTo, 0);
  builder.addFieldInt16(slot.member, memberOf(name), 0);
  return builder.endObject();
}

function writeHourly(builder: Builder, description: ReplyDescription, variables: readonly number[]): number {
  const { hourly: slot } = slots;
  const interval = description.intervalSeconds ?? (description.daily ? 86_400 : 3600);
  builder.startVector(4, variables.length, 4);
  for (const offset of [...variables].reverse()) builder.addOffset(offset);
  const vector = builder.endVector();
  builder.startObject(slot.count);
  builder.addFieldInt64(slot.time, BigInt(description.start), 0n);
  builder.addFieldInt64(slot.timeEnd, BigInt(description.start + description.hours * interval), 0n);
  builder.addFieldInt32(slot.interval, interval, 0);
  builder.addFieldOffset(slot.variables, vector, 0);
  return builder.endObject();
}

/** Number of a run of an ensemble in a name such as precipitation_member07; 0 without one, the control run. */
function memberOf(name: string): number {
  return Number(/_member(\d+)$/.exec(name)?.[1] ?? 0);
}

function variableNamed(name: string): AskedVariable {
  const base = name.replace(/_(?:member\d+|mean)$/, '');
  const found = askedVariables.find((variable) => variable.service === base);
  if (found) return found;
  throw new RangeError(`No variable of the table is called ${name}.`);
}
