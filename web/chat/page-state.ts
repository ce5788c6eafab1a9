import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import type { FieldOffer } from '../../src/core/protocol/messages.ts';
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
  readonly view: ConversationView | null;
  /** This device's time at which the view came, epoch seconds. */
  readonly viewCameAt: number;
  readonly outbox: Outbox;
  /** True while the choice of a field is shown though a conversation stands. */
  readonly isChoosing: boolean;
  /** Why the server refused something, until put away. */
  readonly refusal: ErrorReport | null;
  /** True once the person has done something: only then is the focus moved. */
  readonly hasActed: boolean;
}

/** Nothing has come yet. */
export const emptyPageState: PageState = {
  link: 'connecting',
  cameBack: false,
  fields: null,
  packTitle: '',
  view: null,
  viewCameAt: 0,
  outbox: [],
  isChoosing: false,
  refusal: null,
  hasActed: false,
};

/** The moment of the conversation now, epoch seconds: that of the view and what has passed since it came. */
export function conversationNow(state: PageState, now: number): number {
  return Date.parse(state.view?.now ?? '') / 1000 + (now - state.viewCameAt);
}
