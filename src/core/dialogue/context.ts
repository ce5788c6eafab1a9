import type { Pack } from '../rules/pack-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Understand } from './understand/types.ts';

/** What a conversation is folded with. */
export interface FoldContext {
  readonly pack: Pack;
  readonly understand: Understand;
}

/** What `step` is called with. */
export interface DialogueContext {
  readonly pack: Pack;
  /** Newest known time of the server, epoch seconds UTC: later times are clamped to it. Absent where none is known. */
  readonly now?: EpochSeconds;
  readonly understand?: Understand;
}
