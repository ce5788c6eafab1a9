import type { SoilModelConstants } from '../../src/core/science/soil/temperature/model-constants.ts';
import { type LeadError, sharesHeld } from '../../src/tools/soil-records/errors.ts';
import type { SoilRecord } from '../../src/tools/soil-records/types.ts';
import { hold } from './validator.ts';

/** Forecasts of one station by what was known, with the constants that made them. */
export interface BandsOf {
  readonly record: SoilRecord;
  readonly of: SoilModelConstants;
  readonly errors: readonly LeadError[];
  readonly one: readonly LeadError[];
  readonly withAirError: readonly LeadError[];
}

/** Shares that each band must hold. */
const goal = { least80: 0.75, most80: 0.85, least95: 0.93 };
/** Least forecasts scored from which on a station is judged by itself: about three autumns, since the days of one hang together. */
const leastScored = 1500;

/** Least stations over which one reading is judged: it cannot tell a calm soil from a restless one. */
const leastStations = 3;

const perStation = { errors: 'all readings', withAirError: 'errors of the air forecast' } as const;

/** What the bands must hold: at every station with enough forecasts where its readings are known; over all stations with one reading. */
export function bandClaims(scored: readonly BandsOf[]): (readonly [string, () => void])[] {
  const single = scored
    .filter(({ errors }) => errors.length >= leastScored)
    .flatMap((station) =>
      (['errors', 'withAirError'] as const).map((kind): readonly [string, () => void] => [
        `${station.record.station}: bands hold (${perStation[kind]})`,
        () => {
          const { at80, at95 } = sharesHeld(station[kind], station.of);
          hold(isHeld(at80, at95), () => `${at80} and ${at95}`);
        },
      ]),
    );
  const pooled: readonly [string, () => void] = [
    'bands hold over all stations together (one reading)',
    () => {
      const shares = scored.map(({ of, one }) => sharesHeld(one, of));
      const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
      const [at80, at95] = [mean(shares.map((one) => one.at80)), mean(shares.map((one) => one.at95))];
      hold(shares.length < leastStations || isHeld(at80, at95), () => `${at80} and ${at95}`);
    },
  ];
  return [...single, pooled];
}

function isHeld(at80: number, at95: number): boolean {
  return at80 >= goal.least80 && at80 <= goal.most80 && at95 >= goal.least95;
}

/** What both bands held, in words, beside the goal where missed. */
export function coverText(errors: readonly LeadError[], of: SoilModelConstants): string {
  const { at80, at95 } = sharesHeld(errors, of);
  const said = `80 % holds ${(at80 * 100).toFixed(0)}, 95 % holds ${(at95 * 100).toFixed(0)}`;
  return isHeld(at80, at95) ? said : `${said} (goal 75 to 85 and 93: NOT REACHED)`;
}
