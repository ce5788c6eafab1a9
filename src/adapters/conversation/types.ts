import type { CarriedOver, ConversationEvent, Effect, FieldProfile } from '../../core/dialogue/events.ts';
import type { ConversationView } from '../../core/dialogue/view-types.ts';
import type { ErrorReport } from '../../core/errors/coded-error.ts';
import type { EventMessage, Notice } from '../../core/protocol/messages.ts';
import type { Outcome } from '../../core/rules/trace-types.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import type { Forecast } from '../../core/weather/forecast.ts';
import type { Clock } from '../clock.ts';

/** A field that a conversation can be opened on. */
export interface OfferedField {
  readonly profile: FieldProfile;
  /** Moment at which a conversation about it begins, epoch seconds UTC; null for the present. */
  readonly inventedNow: EpochSeconds | null;
  /** Its own weather instead of the forecast service. */
  readonly forecastAt?: (at: EpochSeconds) => Forecast;
  /** Ids of the treatment packs that it is offered for; all where absent. */
  readonly packs?: readonly string[];
}

/** Which rules a conversation is begun under. */
export interface PackName {
  readonly id: string;
  readonly hash: string;
}

/** Forecast for a point, or the coded error why there is none. Never rejects. */
export interface ForecastSource {
  readonly forecastFor: (point: {
    readonly latitude: number;
    readonly longitude: number;
  }) => Promise<{ readonly forecast: Forecast; readonly warning?: ErrorReport } | { readonly error: ErrorReport }>;
}

/** A conversation's state: whatever it is, it holds the events that it came of. */
export interface ConversationState {
  readonly events: readonly ConversationEvent[];
}

/** What one event comes to: the next state, what to carry out, and why the event was refused, if it was. */
export interface DialogueStep<C extends ConversationState> {
  readonly conversation: C;
  readonly effects: readonly Effect[];
  readonly refused: ErrorReport | null;
}

/** The pure conversation as the runner uses it; `now` is epoch seconds UTC of the clock, never of an invented day. */
export interface Dialogue<C extends ConversationState> {
  /** From kept events, with what is still to be carried out. */
  readonly open: (events: readonly ConversationEvent[], now: EpochSeconds) => DialogueStep<C>;
  readonly step: (conversation: C, event: ConversationEvent, now: EpochSeconds) => DialogueStep<C>;
  readonly viewOf: (conversation: C, now: EpochSeconds) => ConversationView;
  /** What was told that holds for another field too, at a moment of the conversation; nothing is carried where this is absent. */
  readonly carriedOver?: (conversation: C, to: FieldProfile | null, at: EpochSeconds) => CarriedOver | null;
  /** Why an event that another device hands over cannot be taken in; null where it can. All can where this is absent. */
  readonly refuseHandedOver?: (event: ConversationEvent) => ErrorReport | null;
  /** Runs the engine for what `tag` names; rejects with a coded error. */
  readonly evaluate: (conversation: C, tag: string) => Promise<Readonly<Record<string, Outcome>>>;
}

/** What a running conversation needs from outside. */
export interface ConversationMeans<C extends ConversationState> {
  readonly dialogue: Dialogue<C>;
  readonly clock: Clock;
  readonly newId: () => string;
  /** Device name in the stamps of events that the runner itself makes; `runner` where it is absent. */
  readonly device?: string;
  /** Lets what waits have its turn before an effect is carried out; a timer where it is absent. */
  readonly nextTurn?: () => Promise<void>;
  readonly forecastService: ForecastSource;
  readonly fields: readonly OfferedField[];
  /** Packs that new conversations are begun under, one for each treatment, the first where none is named; read at each start. */
  readonly packs: readonly [PackName, ...PackName[]];
  /** Keeps events for good before they count; absent where nothing is kept. Rejects with a coded error. */
  readonly keep?: (events: readonly ConversationEvent[]) => Promise<void>;
}

/** Hears of one conversation. */
export interface ConversationListener {
  readonly onView: (view: ConversationView) => void;
  /** The person wants to choose another field, or to leave: whoever shows the conversation sees to it. */
  readonly onNotice: (notice: Notice) => void;
  /** What came of an effect could not be taken in. */
  readonly onError: (error: ErrorReport) => void;
}

/** What came of events that were handed over, by id; nothing is taken twice. */
export interface HandedOver {
  readonly taken: readonly string[];
  /** Those that were there already. */
  readonly already: readonly string[];
  readonly refused: readonly { readonly id: string; readonly error: ErrorReport }[];
}

/** One conversation with its effects carried out. */
export interface RunningConversation {
  /** Takes what a person did. Resolves when it has taken hold (its effects may still run), or with why it was refused. */
  readonly receive: (message: EventMessage) => Promise<ErrorReport | null>;
  /** Takes in events that another device made, in the order in which they were said. Rejects where they cannot be kept. */
  readonly takeIn: (events: readonly ConversationEvent[]) => Promise<HandedOver>;
  /** What to show now; null before a field is chosen. */
  readonly view: () => ConversationView | null;
  /** Calls back with each new view, in order; returns how to stop. */
  readonly listen: (listener: ConversationListener) => () => void;
  readonly events: () => readonly ConversationEvent[];
  /** Resolves once nothing is under way any more. */
  readonly settled: () => Promise<void>;
}
