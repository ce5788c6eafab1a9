import type { FactId } from '../../facts/registry/index.ts';
import type { UnitId } from '../../units/table.ts';

/** What a word may speak of. `none` in a row: the word says enough alone. */
export type Subject =
  | 'soil'
  | 'surface'
  | 'drains'
  | 'air'
  | 'wind'
  | 'gust'
  | 'leaves'
  | 'tillers'
  | 'weed'
  | 'crop'
  | 'tank'
  | 'buffer'
  | 'plan'
  | 'zone'
  | 'water'
  | 'slope'
  | 'area'
  | 'rain'
  | 'peak'
  | 'delta-t'
  | 'humidity'
  | 'capacity'
  | 'product'
  | 'label'
  | 'temperature'
  | 'depth'
  | 'treatment'
  /** A fact of the pack's own, by its id. */
  | `fact:${string}`
  /** What grows and has a height that is a fact of the pack's own, by the id of that fact. */
  | `plant:${string}`;

/** What a phrase says of its fact: choices, a sign, an answer of the pack's question by its id, or a number. */
export type Means =
  | { readonly kind: 'choices'; readonly choices: readonly string[] }
  | { readonly kind: 'sign'; readonly sign: string; readonly isAbsent?: true }
  | { readonly kind: 'answer'; readonly id: string }
  | { readonly kind: 'number'; readonly value: number };

/** One meaning of a phrase. */
export interface Row {
  readonly fact: FactId;
  readonly means: Means;
  /** Subjects that it may be said of; `none` where it says enough alone. The open question always counts as said. */
  readonly of: readonly (Subject | 'none')[];
  /** Clear enough to be taken, with doubt, beside words that are not known. */
  readonly strong?: true;
  /** Another reading is likely enough to ask. */
  readonly doubtful?: true;
  /** What it means under "not", where that can be said; yes and no, inside and outside, and signs turn by themselves. */
  readonly unless?: Means;
}

/** A unit as said. Beside the convertible ones: degrees of either kind, a plain percent, counts, rain an hour, wind force. */
export type SaidUnit =
  | UnitId
  | 'deg'
  | '%'
  | '% of field capacity'
  | 'leaves'
  | 'tillers'
  | 'plants/m2'
  | 'mm/h'
  | 'in/h'
  | 'force'
  | 'bbch'
  | 'time'
  | 'foreign';

/**
 * What a word does to the clause that it stands in. `ended`: what was said before it is there no more ("the cracks have closed");
 * `mostly`: what it says does not hold everywhere; `spread`: its number is how far the one before may be out ("give or take half a degree").
 */
export type Flag =
  | 'filler'
  | 'not'
  | 'or'
  | 'doubt'
  | 'unsure'
  | 'block'
  | 'ahead'
  | 'scant'
  | 'ended'
  | 'spread'
  | 'mostly';

/** All that a phrase may do. */
export interface Entry {
  readonly rows: readonly Row[];
  readonly subjects: readonly Subject[];
  readonly flags: readonly Flag[];
  readonly agoHours?: number;
}
