import type { HourState } from '../../outlook/types.ts';

/** What stands behind a figure, row by row. Every cell is ready to be shown. */
export interface TableView {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** What every figure has: a name, what it shows in a sentence or two, and its numbers as a table. */
export interface FigureView {
  readonly title: string;
  readonly description: string;
  readonly table: TableView;
}

/** A day that begins along the figure: hours from its left edge, and "Thu 12". */
export interface DayTick {
  readonly hour: number;
  readonly label: string;
}

/** Figures that share the way of the hours: how many there are, and where days begin. */
export interface TimeFigure extends FigureView {
  readonly hours: number;
  readonly days: readonly DayTick[];
}

/** Hours of one day in one state, counted from the midnight that opens the day (a day has 23 to 25). */
export interface HourRun {
  readonly from: number;
  readonly until: number;
  readonly state: HourState;
}

/** Windows along the hours: a row a day. */
export interface HoursFigure extends FigureView {
  readonly rows: readonly { readonly label: string; readonly hours: number; readonly runs: readonly HourRun[] }[];
}

/** The 30 cm line with its bands, C, and the limit. */
export interface SoilFigure extends TimeFigure {
  readonly limitC: number;
  readonly limitText: string;
  /** Hour from which climatology stands in for the forecast; null where it does not come to that. */
  readonly beyondFrom: number | null;
  readonly points: readonly {
    readonly hour: number;
    readonly value: number;
    readonly low80: number;
    readonly high80: number;
    readonly low95: number;
    readonly high95: number;
  }[];
}

/** Rain in bars of some hours, and the 48 h sum to come at the wetter end of the forecast, mm. */
export interface RainFigure extends TimeFigure {
  readonly limitMm: number;
  readonly limitText: string;
  readonly bars: readonly { readonly hour: number; readonly hours: number; readonly mm: number }[];
  readonly sums: readonly { readonly hour: number; readonly mm: number }[];
}

/** Water held against field capacity, mm: below zero there is room left, above it water runs off or to the drains. */
export interface WaterFigure extends FigureView {
  readonly capacityText: string;
  readonly days: readonly {
    readonly label: string;
    readonly level: number;
    readonly low: number;
    readonly high: number;
  }[];
}

/** The coming days as shown: a paragraph, sentences, figures. Plain data. */
export interface OutlookView {
  readonly heading: string;
  readonly paragraph: string;
  /** What else is worth knowing, in sentences; may be empty. */
  readonly further: string;
  readonly windows: readonly {
    readonly text: string;
    readonly state: 'clear' | 'clear-if';
    /** ISO instants UTC. */
    readonly from: string;
    readonly until: string;
  }[];
  /** For each rule in the way the smallest change that lifts it, as a sentence. */
  readonly changes: readonly string[];
  /** The least that would turn today's answer; null where there is nothing to change. */
  readonly least: string | null;
  readonly hours: HoursFigure | null;
  readonly soil: SoilFigure | null;
  readonly rain: RainFigure | null;
  readonly water: WaterFigure | null;
}
