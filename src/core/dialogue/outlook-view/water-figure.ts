import type { Outlook, SoilWaterDay } from '../../outlook/types.ts';
import { dayAtField } from '../../units/field-clock.ts';
import { showNumber } from '../../words/numbers.ts';
import { showShortDay, showWeekday } from '../../words/outlook-times.ts';
import type { OutlookWording } from '../../words/outlook-windows.ts';
import { tenth } from './day-ticks.ts';
import type { WaterFigure } from './types.ts';

/** Water held day by day against field capacity, mm; null where fewer than two days are told. */
export function waterFigure({ soilWater, zone }: Outlook, wording: OutlookWording): WaterFigure | null {
  const [first, last] = [soilWater[0], soilWater.at(-1)];
  if (first === undefined || last === undefined || first === last) return null;
  const { words } = wording;
  const said = words.outlook.figures.water;
  const local = (day: SoilWaterDay) => dayAtField(day.day, zone);
  return {
    title: said.title,
    description: said.description(against(first, wording), against(last, wording), showWeekday(local(last), words)),
    capacityText: said.capacity,
    days: soilWater.map((day) => ({
      label: showShortDay(local(day), words),
      level: tenth(levelOf(day)),
      low: tenth(Math.min(levelOf(day), -day.deficitHighMm)),
      high: tenth(Math.max(levelOf(day), -day.deficitLowMm)),
    })),
    table: {
      columns: [words.outlook.figures.day, said.level, said.band, said.ofCapacity, said.ofAvailable],
      rows: soilWater.map((day) => [
        showShortDay(local(day), words),
        showNumber(words, levelOf(day), 0),
        `${showNumber(words, -day.deficitHighMm, 0)} ${words.outlook.figures.to} ${showNumber(words, Math.max(levelOf(day), -day.deficitLowMm), 0)}`,
        showNumber(words, day.fieldCapacityPercent, 0),
        showNumber(words, day.availableWaterPercent, 0),
      ]),
    },
  };
}

/** Water against field capacity, mm: what is too much, else what is lacking as a negative number. */
function levelOf({ surplusMm, deficitMm }: SoilWaterDay): number {
  return surplusMm > 0 ? surplusMm : 0 - deficitMm;
}

function against(day: SoilWaterDay, { words }: OutlookWording): string {
  const said = words.outlook.figures.water;
  const level = levelOf(day);
  if (Math.round(level) === 0) return said.at;
  const amount = `${showNumber(words, Math.abs(level), 0)} mm`;
  return level > 0 ? said.above(amount) : said.below(amount);
}
