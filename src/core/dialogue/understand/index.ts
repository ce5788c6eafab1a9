import type { FactId } from '../../facts/registry/index.ts';
import { choiceOfLabel } from './answers.ts';
import { splitClauses, wordsText } from './clauses.ts';
import { clockOf } from './clock.ts';
import { fold } from './fold.ts';
import type { Language } from './language.ts';
import { readingsOfAnswer } from './meanings.ts';
import { mendWords } from './mend.ts';
import { joinNumbers } from './number-words.ts';
import { languageFor } from './pack-words.ts';
import { readPlace } from './place.ts';
import { findQuantities } from './quantities.ts';
import { readText } from './read-text.ts';
import { tokenise } from './tokens.ts';
import type { Understand, UnderstandContext, Understanding, UnderstoodReading } from './types.ts';
import { askedField, askedTerm } from './wishes.ts';

/**
 * Reads what a person typed or spoke: facts, wishes, corrections. A grammar over word lists: pure, the same text in the same
 * context gives the same understanding, in time linear in its length. Nothing is guessed.
 */
export const understand: Understand = (text, context) => {
  const language = languageFor(context.pack, context.language);
  if (askedTerm(text, context.pack.glossary) !== null) return { ...nothing, intents: ['define'] };
  if (askedField(text, context.fields ?? []) !== undefined) return { ...nothing, intents: ['same-for'] };
  const whole = wholeAnswer(text, context, language);
  if (whole.length > 0) return { ...nothing, readings: whole };
  return withHour(text, context, language) ?? readText(text, clausesIn(text, language), context, language);
};

/** A text that names an hour for a soil temperature; null for any other. */
function withHour(text: string, context: UnderstandContext, language: Language): Understanding | null {
  const named = clockOf(text, language.clock);
  if (named === null) return null;
  const understanding = readText(text, clausesIn(named.rest, language), { ...context, hasHour: true }, language);
  const found = [...understanding.readings, ...understanding.refused];
  if (!found.some(({ fact }) => fact === soilTemperature)) return null;
  const readings = understanding.readings.map((one) =>
    one.fact === soilTemperature ? { ...one, clock: named.clock } : one,
  );
  return { ...understanding, readings };
}

function clausesIn(text: string, language: Language) {
  const tokens = joinNumbers(mendWords(tokenise(text, language), language), language.numbers);
  return splitClauses(findQuantities(tokens, language), language);
}

const soilTemperature: FactId = 'soil.temperature30cmC';

const nothing: Understanding = {
  readings: [],
  intents: [],
  correction: false,
  notUnderstood: [],
  refused: [],
  remarks: [],
};

/** The whole text as a place, or as the words of an answer of the open question; none where it is yes or no to a reading back. */
function wholeAnswer(text: string, context: UnderstandContext, language: Language): readonly UnderstoodReading[] {
  const { asked, pack, confirming } = context;
  const quote = text.trim();
  const place = readPlace(fold(text), asked?.form === 'place');
  if (place.length > 0) return place.map((one) => ({ ...one, quote, doubtful: false }));
  const fact: FactId | undefined = asked?.facts[0];
  const id = asked === null ? null : choiceOfLabel(asked, wordsText(text, language), language);
  if (id === null || fact === undefined || (confirming && (id === 'yes' || id === 'no'))) return [];
  return readingsOfAnswer(pack, fact, id).map((one) => ({ ...one, quote, doubtful: false }));
}
