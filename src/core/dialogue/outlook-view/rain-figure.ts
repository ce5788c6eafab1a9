import { rainAheadHours } from '../../facts/forecast-facts.ts';
import type { FactId } from '../../facts/registry/index.ts';
import type { Outlook } from '../../outlook/types.ts';
import type { CompiledRules } from '../../rules/types.ts';
import { upperLimitOf } from '../../rules/upper-limit.ts';
import { epochSeconds } from '../../units/brands.ts';
import { atField } from '../../units/field-clock.ts';
import type { Forecast } from '../../weather/forecast.ts';
import { rainAhead } from '../../weather/rain-ahead.ts';
import { sumAhead } from '../../weather/sums.ts';
import { growthAhead, trustIn } from '../../weather/trust.ts';
import { showNumber, showWhole } from '../../words/numbers.ts';
import { showShortDay, showWeekday } from '../../words/outlook-times.ts';
import type { OutlookWording } from '../../words/outlook-windows.ts';
import { dayTicks, hoursBetween, tenth } from './day-ticks.ts';
import type { RainFigure } from './types.ts';

const hourSeconds = 3600;
/** Hours in one bar, and hours from one point of the sum's line to the next. */
const [barHours, stepHours] = [6, 3] as const;
/** The fact that the line tells, whose limit is drawn. */
const sumAheadFact: FactId = 'rain.next48hMm';

/**
 * Rain in bars of six hours and the 48 h sum to come, mm, at the wetter end of the forecast's band as the rules read it. The
 * line ends where the forecast no longer reaches 48 h ahead. Null where the forecast tells no hour of rain, or is not trusted, or no
 * rule has an upper limit of that sum.
 */
export function rainFigure(
  { at, zone, reachesTo }: Outlook,
  forecast: Forecast,
  compiled: CompiledRules,
  { words }: OutlookWording,
): RainFigure | null {
  const { parameters } = compiled;
  const trust = trustIn(forecast, at, null, parameters);
  const limitMm = upperLimitOf(compiled, sumAheadFact);
  if (reachesTo === null || !trust.usable || limitMm === null) return null;
  const from = epochSeconds(Math.floor(at / hourSeconds) * hourSeconds);
  const hours = Math.floor(hoursBetween(from, reachesTo));
  const starts = (step: number) => Array.from({ length: Math.ceil(hours / step) }, (_, index) => index * step);
  const momentAt = (hour: number) => epochSeconds(from + hour * hourSeconds);
  const sums = starts(stepHours).flatMap((hour) => {
    const growth = growthAhead(trust.growth, at, momentAt(hour), parameters);
    const ahead = rainAhead(forecast, momentAt(hour), rainAheadHours, growth, parameters);
    return ahead === null ? [] : [{ hour, mm: tenth(ahead.totalMm.high) }];
  });
  const bars = starts(barHours).map((hour) => {
    const long = Math.min(barHours, hours - hour);
    return { hour, hours: long, mm: tenth(sumAhead(forecast, 'precipitationMm', momentAt(hour), long).total) };
  });
  if (hours < 1) return null;
  const said = words.outlook.figures.rain;
  const mm = (value: number) => `${showNumber(words, value, 1, [limitMm])} mm`;
  const most = sums.toSorted((a, b) => b.mm - a.mm || a.hour - b.hour)[0];
  const dayOf = (hour: number) => atField(momentAt(hour), zone);
  const limit = `${showWhole(words, limitMm)} mm`;
  return {
    title: said.title,
    description: [
      said.total(mm(sumOf(bars))),
      ...(most === undefined ? [] : [said.most(mm(most.mm), showWeekday(dayOf(most.hour), words), limit)]),
    ].join(' '),
    hours,
    days: dayTicks(from, hours, zone, words),
    limitMm,
    limitText: said.limit(limit),
    bars: bars.filter((bar) => bar.mm > 0),
    sums,
    table: {
      columns: [words.outlook.figures.day, said.fallen, said.sum],
      rows: groupByDay(starts(1), (hour) => showShortDay(dayOf(hour), words)).map(([label, ofDay]) => {
        const highest = sums.filter(({ hour }) => ofDay.includes(hour)).map((one) => one.mm);
        const first = ofDay[0] ?? 0;
        const fallen = sumAhead(forecast, 'precipitationMm', momentAt(first), ofDay.length).total;
        return [
          label,
          showNumber(words, fallen, 1),
          highest.length === 0
            ? words.outlook.states['beyond-forecast']
            : showNumber(words, Math.max(...highest), 1, [limitMm]),
        ];
      }),
    },
  };
}

function sumOf(bars: RainFigure['bars']): number {
  return bars.reduce((sum, bar) => sum + bar.mm, 0);
}

function groupByDay(hours: readonly number[], dayOf: (hour: number) => string): [string, number[]][] {
  const groups = new Map<string, number[]>();
  for (const hour of hours) groups.set(dayOf(hour), [...(groups.get(dayOf(hour)) ?? []), hour]);
  return [...groups];
}
