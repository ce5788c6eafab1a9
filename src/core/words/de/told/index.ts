import { factPhrases } from './facts.ts';
import { filePhrases } from './files.ts';
import { forecastPhrases } from './forecast.ts';
import { overlayPhrases } from './overlays.ts';
import { packFactPhrases } from './pack-facts.ts';
import { sciencePhrases } from './science.ts';
import { serverPhrases } from './server.ts';

/** What errors expected and got, in German by the English phrase. */
export const errorPhrases: Readonly<Record<string, string>> = {
  ...filePhrases,
  ...packFactPhrases,
  ...factPhrases,
  ...forecastPhrases,
  ...serverPhrases,
  ...sciencePhrases,
  ...overlayPhrases,
};
