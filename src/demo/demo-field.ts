import type { FieldProfile } from '../core/dialogue/events.ts';
import type { EpochSeconds } from '../core/units/brands.ts';
import type { Forecast } from '../core/weather/forecast.ts';

/** A field that a conversation can be opened on, with its own invented day and weather. */
export interface DemoField {
  readonly profile: FieldProfile;
  /** The invented moment at which a conversation about it begins, epoch seconds UTC. */
  readonly inventedNow: EpochSeconds;
  /** The invented forecast as it would be fetched at an invented moment. */
  readonly forecastAt: (at: EpochSeconds) => Forecast;
  /** Ids of the treatment packs that it is offered for. */
  readonly packs: readonly string[];
}
