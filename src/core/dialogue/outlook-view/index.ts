import { definitionsOf } from '../../facts/registry/index.ts';
import type { Outlook } from '../../outlook/types.ts';
import type { Pack } from '../../rules/pack-types.ts';
import type { CompiledRules } from '../../rules/types.ts';
import type { VerdictWord } from '../../verdict/types.ts';
import type { Forecast } from '../../weather/forecast.ts';
import type { Catalogue } from '../../words/catalogue.ts';
import { describeFurther, describeOutlook } from '../../words/outlook.ts';
import { describeLeast, describeNeed } from '../../words/outlook-changes.ts';
import { describeWindow, type OutlookWording } from '../../words/outlook-windows.ts';
import { instantText } from '../moment.ts';
import { ruleText } from '../worded-reason.ts';
import { hoursFigure } from './hours-figure.ts';
import { rainFigure } from './rain-figure.ts';
import { soilFigure } from './soil-figure.ts';
import type { OutlookView } from './types.ts';
import { waterFigure } from './water-figure.ts';

/** What an outlook is shown with. */
export interface OutlookViewInput {
  readonly outlook: Outlook;
  readonly verdict: VerdictWord;
  readonly forecast: Forecast | null;
  readonly pack: Pack;
  /** The rules of the pack on the day of the outlook: figures draw their limits, whatever these are called. */
  readonly compiled: CompiledRules;
  readonly words: Catalogue;
}

/** The coming days as shown: sentences in the field's zone, and figures already reduced to what a screen can show. */
export function outlookView(input: OutlookViewInput): OutlookView {
  const { outlook, verdict, forecast, pack, compiled, words } = input;
  const wording: OutlookWording = {
    words,
    zone: outlook.zone,
    definitionOf: definitionsOf(pack.facts),
    titleOf: (rule) => ruleText(pack, rule, words.language)?.title ?? rule,
  };
  const isSpray = verdict === 'spray-today';
  return {
    heading: isSpray ? words.outlook.heading.now : words.outlook.heading.later,
    paragraph: describeOutlook(outlook, verdict, wording),
    further: describeFurther(outlook, verdict, wording),
    windows: outlook.windows.map((stretch, index, all) => ({
      text: describeWindow(stretch, wording, all[index - 1]),
      state: stretch.state,
      from: instantText(stretch.from),
      until: instantText(stretch.until),
    })),
    changes: isSpray ? [] : [...new Set(outlook.changes.map((change) => describeNeed(change, wording, outlook)))],
    least: isSpray ? null : describeLeast(outlook.smallestSet, wording),
    hours: hoursFigure(outlook, wording),
    soil: soilFigure(outlook, wording),
    rain: forecast && rainFigure(outlook, forecast, compiled, wording),
    water: waterFigure(outlook, wording),
  };
}
