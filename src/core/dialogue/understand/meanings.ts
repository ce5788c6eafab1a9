import { definitionIn, type FactId } from '../../facts/registry/index.ts';
import type { Reading } from '../../facts/types.ts';
import type { Pack } from '../../rules/pack-types.ts';
import type { Means, Row } from './lexicon-types.ts';

/** A reading of a fact. */
export interface FactReading {
  readonly fact: FactId;
  readonly reading: Reading;
}

const opposites: Readonly<Record<string, string>> = { yes: 'no', no: 'yes', inside: 'outside', outside: 'inside' };

/** The readings of an answer that the pack offers for a fact; none where the pack has no such answer. */
export function readingsOfAnswer(pack: Pack, fact: FactId, id: string): readonly FactReading[] {
  const question = pack.questions.find(({ facts }) => facts.includes(fact));
  const gives = question?.choices?.find((choice) => choice.id === id)?.gives ?? {};
  return (Object.entries(gives) as [FactId, Reading][])
    .filter(([, reading]) => reading.type !== 'does-not-know')
    .map(([id, reading]) => ({ fact: id, reading }));
}

/** The readings of a row, said as it is or under "not"; none where "not" leaves it open. */
export function readingsOfRow(row: Row, isNegated: boolean, pack: Pack): readonly FactReading[] {
  const { fact, means, unless } = row;
  if (isNegated && means.kind === 'sign' && means.isAbsent) return [];
  if (means.kind === 'sign' && (isNegated || means.isAbsent)) {
    return [{ fact, reading: { type: 'signs', present: [], absent: [means.sign], complete: false } }];
  }
  const meant = isNegated ? (unless ?? turned(means)) : means;
  return meant === null ? [] : readingsOfMeans(fact, meant, pack);
}

function turned(means: Means): Means | null {
  if (means.kind !== 'choices' || means.choices.length !== 1) return null;
  const opposite = opposites[means.choices[0]!];
  return opposite === undefined ? null : { kind: 'choices', choices: [opposite] };
}

function readingsOfMeans(fact: FactId, means: Means, pack: Pack): readonly FactReading[] {
  switch (means.kind) {
    case 'answer':
      return readingsOfAnswer(pack, fact, means.id);
    case 'choices':
      return [{ fact, reading: { type: 'choice', possible: means.choices } }];
    case 'number':
      return [{ fact, reading: { type: 'number', value: means.value } }];
    case 'sign':
      return [{ fact, reading: { type: 'signs', present: [means.sign], absent: [], complete: false } }];
  }
}

/** True where a fact takes yes or no, or signs: where "hardly" still means that it is there. */
export function isThereOrNot(fact: FactId, pack: Pack): boolean {
  const { type, choices = [] } = definitionIn(pack.facts, fact);
  return type === 'signs' || choices.includes('yes');
}
