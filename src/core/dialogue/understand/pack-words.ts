import { coreFacts, type FactId, factIdsOf, isFactOf } from '../../facts/registry/index.ts';
import type { FactDefinition } from '../../facts/types.ts';
import type { Pack } from '../../rules/pack-types.ts';
import { reachedFacts } from '../../rules/reach.ts';
import { type UnitId, unitTable } from '../../units/table.ts';
import { wordsText } from './clauses.ts';
import { plantOfHeight, thingsOf } from './heights.ts';
import { type Language, languageFrom } from './language.ts';
import { languageOf } from './languages.ts';
import type { SaidUnit } from './lexicon-types.ts';
import { type Measure, measures } from './measures.ts';
import { cropsNamed, withoutCrops } from './pack-crop.ts';
import { isYesNo, rowsOf, subjectOf } from './pack-rows.ts';

type Measures = Readonly<Partial<Record<FactId, Measure>>>;

const languages = new WeakMap<Pack, Map<string, Language>>();
const measured = new WeakMap<Pack, Measures>();

/**
 * The language of a code with the words of a pack: its own facts by their words and the labels of their choices; facts built in
 * that the pack does not reach are not spoken of.
 */
export function languageFor(pack: Pack, code: string | undefined): Language {
  const base = languageOf(code);
  const reached = reachedFacts(pack);
  if (reached === coreFacts) return base;
  const known = languages.get(pack) ?? new Map<string, Language>();
  languages.set(pack, known);
  const key = code ?? 'en';
  const ready = known.get(key) ?? withPackWords(base, ownFacts(pack), reached, key, pack.title[key] ?? '');
  known.set(key, ready);
  return ready;
}

/** How each number is said that a pack reaches: its own before those built in. */
export function measuresFor(pack: Pack): Measures {
  const reached = reachedFacts(pack);
  if (reached === coreFacts) return measures;
  const known = measured.get(pack);
  if (known) return known;
  const facts = ownFacts(pack);
  const own = facts.flatMap(([id, definition]) =>
    definition.type === 'number' ? [[id, measureOf(id, definition, thingsOf(definition, facts))] as const] : [],
  );
  const builtIn = Object.entries(measures).filter(([id]) => isFactOf(reached, id));
  const all: Measures = Object.fromEntries([...own, ...builtIn]);
  measured.set(pack, all);
  return all;
}

function ownFacts(pack: Pack): (readonly [FactId, FactDefinition])[] {
  const reached = reachedFacts(pack);
  return factIdsOf(reached).flatMap((id) => {
    const definition = reached[id];
    return definition && !isFactOf(coreFacts, id) ? [[id, definition] as const] : [];
  });
}

function withPackWords(
  base: Language,
  own: readonly (readonly [FactId, FactDefinition])[],
  reached: Parameters<typeof isFactOf>[0],
  code: string,
  title: string,
): Language {
  const plain = (text: string) => wordsText(text, base).replaceAll('|', ' ').replaceAll('?', '');
  const named = ({ words, labels, label }: FactDefinition) =>
    [...(words?.[code] ?? []), labels?.[code] ?? label].map(plain).filter((phrase) => phrase !== '');
  const subjects = own.flatMap(([id, definition]) =>
    isYesNo(definition) ? [] : [[subjectOf(id), named(definition)] as const],
  );
  const plants = own.flatMap(([id, definition]) => {
    const things = thingsOf(definition, own);
    const names = own.flatMap(([thing, one]) => (things.includes(thing) ? named(one) : []));
    return names.length === 0 ? [] : [[plantOfHeight(id), names] as const];
  });
  const rows = own.flatMap(([id, definition]) => rowsOf(id, definition, code, plain, named(definition), base));
  const crops = cropsNamed(plain(title), base);
  return languageFrom({
    ...base,
    flags: { ...base.flags, block: withoutCrops(base.flags.block, crops) },
    rows: [...base.rows.filter(({ fact }) => isFactOf(reached, fact)), ...rows],
    subjects: {
      ...base.subjects,
      crop: [...(base.subjects.crop ?? []), ...crops],
      ...Object.fromEntries([...subjects, ...plants]),
    },
  });
}

/** How a number of a pack's own is said: of its words, in its unit or one that can be converted into it. */
function measureOf(id: FactId, { unit, forecast }: FactDefinition, things: readonly FactId[]): Measure {
  const own = unit !== null && Object.hasOwn(unitTable, unit) ? (unit as UnitId) : null;
  const said = own === null ? plainUnits(unit) : kindred(own);
  const isAhead = forecast !== undefined && forecast.over !== 'now';
  return {
    of: [subjectOf(id)],
    units: said,
    own,
    bare: 'yes',
    asked: true,
    ...(things.length > 0 ? { heightOf: [plantOfHeight(id)], grows: things } : {}),
    ...(unit === 'BBCH' ? { stage: true, alone: ['bbch'] } : {}),
    ...(isAhead ? { anyTime: true } : {}),
  };
}

function plainUnits(unit: string | null): Measure['units'] {
  if (unit === null) return {};
  return unit === 'BBCH' ? { bbch: null } : { [unit]: null };
}

function kindred(own: UnitId): Measure['units'] {
  const { kind } = unitTable[own];
  const alike = (Object.keys(unitTable) as UnitId[]).filter((unit) => unitTable[unit].kind === kind);
  const units = alike.map((unit): [SaidUnit, UnitId] => [unit, unit]);
  return Object.fromEntries(kind === 'temperature' ? [...units, ['deg', 'C']] : units);
}
