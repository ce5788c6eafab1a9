import * as z from 'zod';
import type { ConversationView } from '../dialogue/view-types.ts';
import type { ErrorReport } from '../errors/coded-error.ts';
import { errorReportSchema, viewSchema } from './view-schema.ts';

/** A field offered at the start. */
export interface FieldOffer {
  readonly id: string;
  readonly name: string;
  readonly invented: boolean;
  readonly note: string;
}

/** A treatment offered at the start. */
export interface TreatmentOffer {
  /** Id of its pack. */
  readonly id: string;
  readonly title: string;
  readonly note: string;
  /** Ids of the fields that are offered for it. */
  readonly fields: readonly string[];
}

/** Messages that the server sends. `view` is whole each time; views are small. */
export type ServerMessage =
  | {
      readonly type: 'welcome';
      readonly protocol: number;
      /** Handed back in the next hello to go on where it was. */
      readonly token: string;
      readonly resumed: boolean;
      readonly fields: readonly FieldOffer[];
      /** Epoch seconds UTC: a client stamps its events by this clock. */
      readonly serverTime: number;
      readonly packTitle: string;
      /** Only to a client that asked for it: the treatments that can be started, that for who names none first. */
      readonly treatments?: readonly TreatmentOffer[];
    }
  /** `kept` counts the events kept so far: a page that mirrors them knows when to ask for more. */
  | {
      readonly type: 'view';
      readonly view: ConversationView;
      readonly kept: number;
      /** Only to a client that asked for treatments: id of the pack of the conversation. */
      readonly pack?: string;
    }
  /** `of` is the id of the event that it answers; null where it answers none. */
  | { readonly type: 'error'; readonly error: ErrorReport; readonly of: string | null }
  /** The person asked for another field, or to leave. */
  | { readonly type: 'notice'; readonly notice: Notice }
  /** Other rules are in force: new conversations are judged by them, those that run stay with theirs. */
  | { readonly type: 'rules' }
  | { readonly type: 'alive' };

/** What a person asked for that is not the conversation's own affair. */
export type Notice = 'choose-field' | 'choose-next' | 'leave';

/** Kind of a server message. */
export type ServerMessageType = ServerMessage['type'];
/** A server message of one kind. */
export type ServerMessageOf<K extends ServerMessageType> = Extract<ServerMessage, { type: K }>;

/** Schemas of what the server sends; a client checks each frame by them before it believes it. */
export const serverMessageSchemas: { readonly [K in ServerMessageType]: z.ZodType<ServerMessageOf<K>> } = {
  welcome: z.strictObject({
    type: z.literal('welcome'),
    protocol: z.int(),
    token: z.string().min(16).max(128),
    resumed: z.boolean(),
    fields: z.array(z.strictObject({ id: z.string(), name: z.string(), invented: z.boolean(), note: z.string() })),
    serverTime: z.number(),
    packTitle: z.string(),
    treatments: z.exactOptional(
      z.array(z.strictObject({ id: z.string(), title: z.string(), note: z.string(), fields: z.array(z.string()) })),
    ),
  }),
  view: z.strictObject({
    type: z.literal('view'),
    view: viewSchema,
    kept: z.int().min(0),
    pack: z.exactOptional(z.string()),
  }),
  error: z.strictObject({ type: z.literal('error'), error: errorReportSchema, of: z.string().nullable() }),
  notice: z.strictObject({ type: z.literal('notice'), notice: z.enum(['choose-field', 'choose-next', 'leave']) }),
  rules: z.strictObject({ type: z.literal('rules') }),
  alive: z.strictObject({ type: z.literal('alive') }),
};
