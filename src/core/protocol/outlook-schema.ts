import * as z from 'zod';
import type { OutlookView } from '../dialogue/outlook-view/types.ts';

const text = z.string();
const number = z.number();
const figure = {
  title: text,
  description: text,
  table: z.strictObject({ columns: z.array(text), rows: z.array(z.array(text)) }),
};
const overTime = { ...figure, hours: number, days: z.array(z.strictObject({ hour: number, label: text })) };
const state = z.enum(['clear', 'clear-if', 'blocked', 'beyond-forecast']);

const hours = z.strictObject({
  ...figure,
  rows: z.array(
    z.strictObject({
      label: text,
      hours: number,
      runs: z.array(z.strictObject({ from: number, until: number, state })),
    }),
  ),
});

const soil = z.strictObject({
  ...overTime,
  limitC: number,
  limitText: text,
  beyondFrom: number.nullable(),
  points: z.array(
    z.strictObject({ hour: number, value: number, low80: number, high80: number, low95: number, high95: number }),
  ),
});

const rain = z.strictObject({
  ...overTime,
  limitMm: number,
  limitText: text,
  bars: z.array(z.strictObject({ hour: number, hours: number, mm: number })),
  sums: z.array(z.strictObject({ hour: number, mm: number })),
});

const water = z.strictObject({
  ...figure,
  capacityText: text,
  days: z.array(z.strictObject({ label: text, level: number, low: number, high: number })),
});

/** The coming days as they come over the socket. */
export const outlookSchema: z.ZodType<OutlookView> = z.strictObject({
  heading: text,
  paragraph: text,
  further: text,
  windows: z.array(z.strictObject({ text, state: z.enum(['clear', 'clear-if']), from: text, until: text })),
  changes: z.array(text),
  least: text.nullable(),
  hours: hours.nullable(),
  soil: soil.nullable(),
  rain: rain.nullable(),
  water: water.nullable(),
});
