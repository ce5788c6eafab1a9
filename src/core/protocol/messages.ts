import * as z from 'zod';
import type { ConversationView } from '../dialogue/view-types.ts';
import type { ErrorReport } from '../errors/coded-error.ts';

/** Version of the socket protocol; a client of another version is told to reload. */
export const protocolVersion = 1;

const id = z.string().min(1).max(64);
const stamp = { id, at: z.number().finite(), device: z.string().min(1).max(64), count: z.int().min(0) };

/** Messages that a page or terminal sends, one JSON object a text frame of at most 8 kB. */
export const clientMessageSchemas = {
  hello: z.strictObject({
    type: z.literal('hello'),
    protocol: z.int(),
    /** Token of an earlier welcome, to go on where it was. */
    resume: z.string().max(128).nullable(),
  }),
  start: z.strictObject({ type: z.literal('start'), ...stamp, field: id.nullable() }),
  say: z.strictObject({ type: z.literal('say'), ...stamp, text: z.string().min(1).max(2000) }),
  answer: z.strictObject({
    type: z.literal('answer'),
    ...stamp,
    question: id,
    choices: z.array(id).max(20),
    numbers: z.record(id, z.number().finite()),
    doesNotKnow: z.boolean(),
  }),
  request: z.strictObject({
    type: z.literal('request'),
    ...stamp,
    request: z.enum([
      'why-asked',
      'what-said',
      'check-the-rest',
      'look-again',
      'dose',
      'verdict-now',
      'confirm',
      'deny',
    ]),
  }),
  undo: z.strictObject({ type: z.literal('undo'), ...stamp, of: id }),
  alive: z.strictObject({ type: z.literal('alive') }),
} as const;

/** Kind of a client message. */
export type ClientMessageType = keyof typeof clientMessageSchemas;
/** A parsed client message. */
export type ClientMessage = { [K in ClientMessageType]: z.infer<(typeof clientMessageSchemas)[K]> }[ClientMessageType];

/** A field offered at the start. */
export interface FieldOffer {
  readonly id: string;
  readonly name: string;
  readonly invented: boolean;
  readonly note: string;
}

/** Messages that the server sends. `view` is whole each time; views are small. */
export type ServerMessage =
  | {
      readonly type: 'welcome';
      readonly protocol: number;
      readonly token: string;
      readonly resumed: boolean;
      readonly fields: readonly FieldOffer[];
      readonly serverTime: number;
      readonly packTitle: string;
    }
  | { readonly type: 'view'; readonly view: ConversationView }
  | { readonly type: 'error'; readonly error: ErrorReport; readonly of: string | null }
  | { readonly type: 'alive' };
