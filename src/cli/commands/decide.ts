import { parseForecastJson } from '../../adapters/openmeteo/json-reply.ts';
import { type DecideRequest, decideFacts, observationsOf } from '../../core/dialogue/decide.ts';
import type { Decision } from '../../core/dialogue/decision-types.ts';
import { parseInstant } from '../../core/dialogue/moment.ts';
import { isOver, outlookBeside } from '../../core/dialogue/view-outlook.ts';
import { decideWhatIf, parseWhatIf } from '../../core/dialogue/what-if.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { isCalendarDay, localDate, noonOf } from '../../core/facts/local-day.ts';
import { outlookOf } from '../../core/outlook/index.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import { type EpochSeconds, epochSeconds } from '../../core/units/brands.ts';
import type { Forecast } from '../../core/weather/forecast.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import type { Command, Parsed } from '../command.ts';
import { textOption } from '../command.ts';
import { decisionText } from '../decision-text.ts';
import type { Io } from '../io.ts';
import { readJsonFile, readNamedFile } from '../json-file.ts';
import { languageOption, wordsFor } from '../language.ts';
import { overlayOption } from '../overlay-option.ts';
import { packOf, packOption } from '../pack-option.ts';
import { layLocal } from '../packs.ts';
import { wholeOutlookLines } from '../terminal/outlook-text.ts';
import { whatIfText } from '../what-if-text.ts';

/** `loamward decide`: judges a file of facts once. */
export const decide: Command = {
  name: 'decide',
  summary: 'Judges a file of facts once: spray today, wait or do not spray.',
  options: {
    pack: packOption,
    facts: { type: 'string', value: 'FILE', help: 'flat JSON object of fact ids and values; - for standard input' },
    forecast: { type: 'string', value: 'FILE', help: 'forecast as JSON: the service’s reply or our own form' },
    fetched: { type: 'string', value: 'INSTANT', help: 'when that forecast was fetched, where the file does not say' },
    at: { type: 'string', value: 'INSTANT', help: 'moment asked about, ISO 8601 with its offset; now without it' },
    'what-if': {
      type: 'string',
      value: 'FACT=VALUE',
      repeats: true,
      help: 'what the answer would be if; may be repeated',
    },
    overlay: overlayOption,
    language: languageOption,
    outlook: { type: 'boolean', help: 'with --json: the days ahead, windows, what would have to change' },
    json: { type: 'boolean', help: 'print the whole answer as JSON' },
  },
  examples: [
    'npx loamward decide --facts facts.json',
    'npx loamward decide --facts facts.json --forecast forecast.json --at 2026-11-06T09:00Z --json',
    'npx loamward decide --facts facts.json --what-if soil.temperature30cmC=9 --what-if soil.feel=moist',
  ],
  run: async (parsed, io) => {
    const file = textOption(parsed, 'facts');
    if (file === undefined) throw codedError('OPTION_VALUE', { expected: '--facts FILE', came: 'no --facts' });
    const loaded = await packOf(parsed, io);
    const words = wordsFor(parsed, io);
    const shipped: DecideRequest = {
      pack: loaded.pack,
      facts: await readJsonFile(io, file),
      forecast: await namedForecast(parsed, io),
      at: momentAsked(parsed, loaded.pack),
      now: epochSeconds(io.now()),
      language: words.language,
    };
    const { at: asked } = observationsOf(shipped);
    const { pack } = await layLocal(loaded, parsed.lists['overlay'] ?? [], localDate(asked, loaded.pack.zone));
    const request = { ...shipped, pack };
    const changes = (parsed.lists['what-if'] ?? []).map((text) => parseWhatIf(text, asked, pack));
    const decision = await decideFacts(request);
    const whatIf = changes.length === 0 ? null : await decideWhatIf(request, decision, changes);
    if (parsed.options['json']) {
      const outlook = parsed.options['outlook']
        ? { outlook: outlookOf({ ...request, ...observationsOf(request) }) }
        : {};
      io.write(`${JSON.stringify({ ...decision, ...(whatIf && { whatIf }), ...outlook })}\n`);
    } else
      io.write(
        decisionText(decision, pack, words) +
          (whatIf ? whatIfText(whatIf, pack.facts, words) : '') +
          comingDays(request, decision, words),
      );
    return 0;
  },
};

/** The coming days as text; empty without a forecast, and where a stop holds for the season. */
function comingDays(request: DecideRequest, decision: Decision, words: Catalogue): string {
  if (request.forecast === null || isOver(decision)) return '';
  const view = outlookBeside(decision, { ...request, ...observationsOf(request) }, words);
  return `\n${wholeOutlookLines(view, words).join('\n')}\n`;
}

async function namedForecast(parsed: Parsed, io: Io): Promise<Forecast | null> {
  const file = textOption(parsed, 'forecast');
  if (file === undefined) return null;
  const fetched = textOption(parsed, 'fetched');
  const text = await readNamedFile(io, file);
  return parseForecastJson(text, fetched === undefined ? {} : { fetchedAt: parseInstant(fetched) });
}

function momentAsked(parsed: Parsed, pack: Pack): EpochSeconds | null {
  const at = textOption(parsed, 'at');
  if (at === undefined) return null;
  return isCalendarDay(at) ? noonOf(at, pack.zone) : parseInstant(at);
}
