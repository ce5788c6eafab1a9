import type { ErrorReport } from '../../errors/coded-error.ts';
import type { FactId } from '../../facts/registry/index.ts';
import type { Reading } from '../../facts/types.ts';
import type { Pack, Question } from '../../rules/pack-types.ts';
import type { FieldName } from '../events.ts';
import type { Clock } from './clock.ts';

/** What a text is understood against: the open question, the pack, and the facts last spoken of, newest first. */
export interface UnderstandContext {
  readonly asked: Question | null;
  readonly pack: Pack;
  /** Facts that a correction ("no, it was 11") may mean, newest first. */
  readonly recent: readonly FactId[];
  /** True where a reading of the asked fact was read back: yes and no then answer that, and give no reading. */
  readonly confirming?: boolean;
  /** The language that the text is in, an ISO 639-1 code; English where absent. */
  readonly language?: string;
  /** The fields on offer, by whose names a person may ask for the next. */
  readonly fields?: readonly FieldName[];
  /** True where the text names the hour at which a temperature was read. */
  readonly hasHour?: boolean;
}

/** One reading found in a text. */
export interface UnderstoodReading {
  readonly fact: FactId;
  readonly reading: Reading;
  /** The words that it was read from. */
  readonly quote: string;
  /** True where another meaning is possible: read back before a spray-today rests on it. */
  readonly doubtful: boolean;
  /** How long ago it was seen or measured, hours; absent where it holds for the moment of speaking. */
  readonly agoHours?: number;
  /** The hour at which a soil temperature was read; it goes before `agoHours`. */
  readonly clock?: Clock;
  /** Depth in cm of a soil temperature that was not read at 30 cm; its reading is as read there, not yet worked out. */
  readonly depthCm?: number;
}

/** What a person may want beside telling facts. */
export type Intent =
  | 'why'
  | 'what-said'
  | 'start-again'
  | 'another-field'
  | 'dont-know'
  | 'undo'
  | 'yes'
  | 'no'
  | 'verdict'
  | 'help'
  | 'stop'
  | 'dose'
  | 'check-the-rest'
  | 'look-again'
  | 'why-not'
  | 'when'
  | 'needs'
  | 'define'
  | 'same-for'
  | 'fields';

/** Something noticed that is no error, as a code with the words that it stands on. */
export interface Remark {
  readonly code: string;
  readonly quote: string;
}

/** All that was understood of one text; nothing is guessed. */
export interface Understanding {
  readonly readings: readonly UnderstoodReading[];
  readonly intents: readonly Intent[];
  /** True where the person takes back what was said before ("no, it was 11"). */
  readonly correction: boolean;
  /** Pieces of the text that nothing was made of. */
  readonly notUnderstood: readonly string[];
  /** What cannot be taken and why: impossible values, another depth. */
  readonly refused: readonly ErrorReport[];
  readonly remarks: readonly Remark[];
}

/** Reads a text: pure, the same text in the same context gives the same understanding. */
export type Understand = (text: string, context: UnderstandContext) => Understanding;
