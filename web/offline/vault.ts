import type { ConversationEvent, FieldProfile } from '../../src/core/dialogue/events.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import type { EpochSeconds } from '../../src/core/units/brands.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';

/** One event as this device keeps it. */
export interface KeptEvent {
  readonly token: string;
  readonly id: string;
  readonly event: ConversationEvent;
  /** True once the server has it. */
  readonly handed: boolean;
}

/** What this device notes of a conversation, for the list of earlier ones and for asking the server only for what is new. */
export interface ConversationNote {
  readonly token: string;
  /** Time of its last event, epoch seconds UTC. */
  readonly usedAt: number;
  /** Name of the field; null for an own field. */
  readonly fieldName: string | null;
  /** True for the demo farm: labelled so in the list. */
  readonly invented: boolean;
  /** The last verdict in a sentence; null before the first. */
  readonly headline: string | null;
  /** How many events of the server, in the server's order, have come. */
  readonly serverCount: number;
  /** How many of its events the server does not have yet. */
  readonly unsent: number;
  /** Hash of the rules that it was begun under. */
  readonly packHash: string | null;
  /** Id of its treatment; absent where this was noted by an earlier version of the page. */
  readonly packId?: string | null;
}

/** A field as the server offers it. */
export interface KeptField {
  readonly profile: FieldProfile;
  /** Epoch seconds UTC of its invented moment; null for the present. */
  readonly inventedNow: EpochSeconds | null;
  /** Ids of the treatments that it is offered for; all where absent. */
  readonly packs?: readonly string[];
}

/** What has to be at hand to answer without a server. */
export interface Supplies {
  readonly coreVersion: string;
  /** Hashes of the rules that the server has, those in force before older ones. */
  readonly current: readonly string[];
  readonly fields: readonly KeptField[];
}

/** Everything that this device keeps. Each rejects where the device refuses. */
export interface Vault {
  readonly readEvents: (token: string) => Promise<readonly KeptEvent[]>;
  /** Keeps rows and the note of their conversation in one go: all or nothing. */
  readonly keepEvents: (rows: readonly KeptEvent[], note: ConversationNote) => Promise<void>;
  readonly notes: () => Promise<readonly ConversationNote[]>;
  readonly readPacks: () => Promise<readonly Pack[]>;
  readonly keepPacks: (packs: readonly Pack[]) => Promise<void>;
  readonly readSupplies: () => Promise<Supplies | null>;
  readonly keepSupplies: (supplies: Supplies) => Promise<void>;
  /** The last forecast of a place. */
  readonly readForecast: (place: string) => Promise<Forecast | null>;
  readonly keepForecast: (place: string, forecast: Forecast) => Promise<void>;
}
