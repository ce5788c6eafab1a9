import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import type { FieldOffer, TreatmentOffer } from '../../src/core/protocol/messages.ts';
import type { StorageState } from '../offline/safe-vault.ts';
import type { ClockFault } from '../offline/server-clock.ts';
import type { ConversationNote } from '../offline/vault.ts';
import type { UseNewVersion } from '../offline/worker.ts';
import type { LinkState } from './link.ts';
import type { Outbox } from './outbox.ts';

/** All that the page draws. */
export interface PageState {
  readonly link: LinkState;
  /** True for some seconds after a lost connection came back. */
  readonly cameBack: boolean;
  /** Fields offered; null before the first welcome. */
  readonly fields: readonly FieldOffer[] | null;
  readonly packTitle: string;
  /** Treatments that can be started; none before the first welcome. */
  readonly treatments: readonly TreatmentOffer[];
  /** Id of the treatment of the conversation that is shown; null where it is not known. */
  readonly treatment: string | null;
  readonly view: ConversationView | null;
  /** This device's time at which the view came, epoch seconds. */
  readonly viewCameAt: number;
  readonly outbox: Outbox;
  /** True while the choice of a field is shown though a conversation stands. */
  readonly isChoosing: boolean;
  /** True where what holds for the whole farm goes along to the field that is chosen. */
  readonly isNext: boolean;
  /** Why the server refused something, until put away. */
  readonly refusal: ErrorReport | null;
  /** Who answers: the server, or this page by itself. */
  readonly answers: 'server' | 'page';
  /** How much of what was said is being handed over; 0 where nothing is. */
  readonly handingOver: number;
  /** How much was handed over just now; 0 some seconds later. */
  readonly handedOver: number;
  /** Whether this page can answer by itself: not yet, as long as it stays open, or also after it is opened anew. */
  readonly canBeAlone: 'no' | 'while-open' | 'always';
  /** Whether what is said outlives the page; null before it was tried. */
  readonly storage: StorageState | null;
  readonly clockFault: ClockFault | null;
  /** True where the conversation goes on in another page of this browser. */
  readonly isElsewhere: boolean;
  /** Puts a newer page to use; null where none waits. */
  readonly newVersion: UseNewVersion | null;
  /** True where the server has newer rules than this conversation was begun under. */
  readonly newRules: boolean;
  /** True where the server lacks the rules of this conversation: it stays on this device. */
  readonly staysHere: boolean;
  /** Conversations that this device keeps, that last used first. */
  readonly conversations: readonly ConversationNote[];
  /** Token of the conversation that is shown; null before there is one. */
  readonly token: string | null;
  /** True once the person has done something: only then is the focus moved. */
  readonly hasActed: boolean;
}

/** Nothing has come yet. */
export const emptyPageState: PageState = {
  link: 'connecting',
  cameBack: false,
  fields: null,
  packTitle: '',
  treatments: [],
  treatment: null,
  view: null,
  viewCameAt: 0,
  outbox: [],
  isChoosing: false,
  isNext: false,
  refusal: null,
  answers: 'server',
  handingOver: 0,
  handedOver: 0,
  canBeAlone: 'no',
  storage: null,
  clockFault: null,
  isElsewhere: false,
  newVersion: null,
  newRules: false,
  staysHere: false,
  conversations: [],
  token: null,
  hasActed: false,
};

/** The moment of the conversation now, epoch seconds: that of the view and what has passed since it came. */
export function conversationNow(state: PageState, now: number): number {
  return Date.parse(state.view?.now ?? '') / 1000 + (now - state.viewCameAt);
}
