import type { Source } from '../../src/core/units/texts.ts';
import { decoratedPack } from './pack.ts';

/** A source that is a title, the same in every language. */
const titleOnly = (source: Source) => (typeof source === 'string' ? [source] : []);

/** What stays as it is by right: codes of errors, names of fields, units, what was typed, the hash of the rules, titles of publications. */
export const byRight: readonly (string | RegExp)[] = [
  ...decoratedPack.parameters.flatMap(({ id, source }) => [...titleOnly(source), id]),
  ...decoratedPack.rules.map(({ id }) => `[${id}`),
  ...decoratedPack.glossary.flatMap(({ source }) => titleOnly(source)),
  /\b[A-Z]+(?:_[A-Z]+)+\b/g,
  /Mill Piece|Long Ing|Top Brow|Barn Close/g,
  /^mm$/g,
  /(?<=[\d(-] ?)(?:mm\/h|mm|km\/h|g\/ha|g\/L|L\/ha|ha|cm)\b/g,
  /(?<=ćóńŧéńŧ )[0-9a-f]{12}/g,
  /(?<=")[^"]*(?=")/g,
];
