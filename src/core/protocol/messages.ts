import * as z from 'zod';
import { languageSchema } from './language-schema.ts';
import { requestKinds } from './request-kinds.ts';

export type { FieldOffer, Notice, ServerMessage, ServerMessageType, TreatmentOffer } from './server-messages.ts';

export { protocolVersion } from './version.ts';

/** Most bytes that one frame from a client may hold. */
export const largestClientFrameBytes = 8192;

const id = z.string().min(1).max(64);
/** Epoch seconds UTC from 1970 to the end of 9999. */
const moment = z.number().min(0).max(253_402_300_799);
const given = {
  question: id,
  choices: z.array(id).max(20),
  numbers: z.record(id, z.number().finite()),
  doesNotKnow: z.boolean(),
};
const stamp = { id, at: moment, device: z.string().min(1).max(64), count: z.int().min(0) };

/** Messages that a page or terminal sends, one JSON object a text frame of at most 8 kB. */
export const clientMessageSchemas = {
  hello: z.strictObject({
    type: z.literal('hello'),
    protocol: z.int(),
    /** Token of an earlier welcome, to go on where it was. */
    resume: z.string().max(128).nullable(),
    /** Of the welcome's words. */
    language: languageSchema,
    /** True where the client lets people choose among treatments. */
    treatments: z.exactOptional(z.boolean()),
  }),
  start: z.strictObject({
    type: z.literal('start'),
    ...stamp,
    field: id.nullable(),
    /** Treatment that it is begun for; that of the conversation so far, or the first, where absent. */
    pack: z.exactOptional(z.string().min(1).max(100)),
    carry: z.exactOptional(z.boolean()),
    language: languageSchema,
  }),
  say: z.strictObject({
    type: z.literal('say'),
    ...stamp,
    text: z.string().min(1).max(2000),
    language: languageSchema,
  }),
  answer: z.strictObject({
    type: z.literal('answer'),
    ...stamp,
    ...given,
    /** Answers to the questions shown together with it. */
    also: z.exactOptional(z.array(z.strictObject(given)).max(4)),
  }),
  request: z.strictObject({
    type: z.literal('request'),
    ...stamp,
    request: z.enum(requestKinds),
    /** With `change`: the fact whose answer is opened again. */
    fact: z.exactOptional(id),
    /** With `language`: that to go on in. */
    language: languageSchema,
  }),
  undo: z.strictObject({ type: z.literal('undo'), ...stamp, of: id }),
  alive: z.strictObject({ type: z.literal('alive') }),
} as const;

/** Kind of a client message. */
export type ClientMessageType = keyof typeof clientMessageSchemas;
/** A client message of one kind. */
export type ClientMessageOf<K extends ClientMessageType> = z.infer<(typeof clientMessageSchemas)[K]>;
/** A parsed client message. */
export type ClientMessage = { [K in ClientMessageType]: ClientMessageOf<K> }[ClientMessageType];
/** The client messages that become events of a conversation. */
export type EventMessage = ClientMessageOf<'start' | 'say' | 'answer' | 'request' | 'undo'>;
