import type * as z from 'zod';
import { coreFacts, type FactRegistry } from '../../facts/registry/index.ts';
import type { FactDefinition } from '../../facts/types.ts';
import type { Parameter } from '../../units/parameter.ts';
import { checkLanguages } from './check-texts.ts';
import type { factsSchema } from './facts-schema.ts';
import { factsFile } from './file-kinds.ts';
import { inside, type Place, type Report, show } from './findings.ts';
import { takingFits } from './fit-taking.ts';

type RawFact = z.output<typeof factsSchema>['facts'][number];

/** What a pack's own facts are checked against. */
export interface FactsWorld {
  readonly languages: readonly string[];
  /** Units of the pack's parameters, by id. */
  readonly parameters: ReadonlyMap<string, readonly Parameter[]>;
}

/** The registry of a pack: the facts built in, then its own that are sound; every fault is reported with its place. */
export function buildFacts(facts: readonly RawFact[], world: FactsWorld, report: Report): FactRegistry {
  if (facts.length === 0) return coreFacts;
  const own: Record<string, FactDefinition> = {};
  facts.forEach((raw, index) => {
    const place = { file: factsFile, path: ['facts', index] };
    if (Object.hasOwn(coreFacts, raw.id)) {
      const expected = 'an id that no fact built in has';
      report('PACK_FACT_BUILT_IN', inside(place, 'id'), { expected, came: raw.id, fact: raw.id });
      return;
    }
    if (Object.hasOwn(own, raw.id)) {
      report('PACK_ID_REPEATED', inside(place, 'id'), { expected: 'each fact id once', came: `${raw.id} twice` });
      return;
    }
    checkTexts(raw, world.languages, place, report);
    if (isSound(raw, world, place, report)) own[raw.id] = definitionOf(raw);
  });
  return { ...coreFacts, ...own };
}

function checkTexts(raw: RawFact, languages: readonly string[], place: Place, report: Report): void {
  checkLanguages(raw.label, languages, inside(place, 'label'), report);
  if (raw.words) checkLanguages(raw.words, languages, inside(place, 'words'), report);
  raw.choices?.forEach(({ label }, at) => {
    checkLanguages(label, languages, inside(place, 'choices', at, 'label'), report);
  });
}

function isSound(raw: RawFact, { parameters }: FactsWorld, place: Place, report: Report): boolean {
  const isNumber = raw.type === 'number';
  const isListed = raw.type === 'choice' || raw.type === 'signs';
  const unsuited = (key: keyof RawFact, expected: string): false => {
    const came = show(raw[key]);
    report('PACK_FACT_MISFIT', inside(place, key), { expected, came, fact: raw.id });
    return false;
  };
  const takes = (key: keyof RawFact, isNeeded: boolean) => {
    if ((raw[key] !== undefined) === isNeeded) return true;
    return unsuited(key, isNeeded ? `\`${key}\` for type ${raw.type}` : `no \`${key}\` for type ${raw.type}`);
  };
  const shape = [
    ...(['unit', 'range', 'precision', 'shownDecimals'] as const).map((key) => takes(key, isNumber)),
    ...(['choices'] as const).map((key) => takes(key, isListed)),
    ...(isNumber ? [] : (['plausible'] as const).map((key) => takes(key, false))),
    rises(raw.range) || unsuited('range', 'lowest, then highest'),
    rises(raw.plausible) || unsuited('plausible', 'lowest, then highest'),
    within(raw) || unsuited('plausible', 'a span within the range'),
    eachOnce(raw) || unsuited('choices', 'each choice once'),
    raw.obtained.includes('forecast') === (raw.forecast !== undefined) ||
      unsuited('forecast', '`forecast` just where `obtained` names it'),
  ];
  const read = [...parametersOf(raw)].map(([steps, id, unit]) => {
    const versions = parameters.get(id);
    const at = inside(place, ...steps);
    if (!versions) {
      const expected = `the id of a parameter in ${unit}`;
      report('RULE_PARAMETER_UNKNOWN', at, { expected, came: show(id), among: parameters.keys(), fact: raw.id });
      return false;
    }
    const other = versions.find((one) => one.unit !== unit);
    if (!other) return true;
    report('PARAMETER_UNIT_MISFIT', at, {
      expected: `${id} in ${unit}`,
      came: other.unit,
      fact: raw.id,
      parameter: id,
    });
    return false;
  });
  const isTaken = raw.forecast === undefined || takingFits(raw.forecast, raw, inside(place, 'forecast'), report);
  return [...shape, ...read].every(Boolean) && isTaken;
}

function* parametersOf({ goodFor, forecast }: RawFact): Generator<readonly [readonly string[], string, string]> {
  if (goodFor.kind === 'hours') yield [['goodFor', 'parameter'], goodFor.parameter, 'h'];
  if (goodFor.kind === 'days') yield [['goodFor', 'parameter'], goodFor.parameter, 'days'];
  if (goodFor.kind === 'hours' && goodFor.untilRainMm) yield [['goodFor', 'untilRainMm'], goodFor.untilRainMm, 'mm'];
  if (typeof forecast?.over === 'object') yield [['forecast', 'over', 'hoursAhead'], forecast.over.hoursAhead, 'h'];
}

function rises(span: readonly [number, number] | undefined): boolean {
  return span === undefined || span[0] < span[1];
}

function within({ range, plausible }: RawFact): boolean {
  return !range || !plausible || (plausible[0] >= range[0] && plausible[1] <= range[1]);
}

function eachOnce({ choices = [] }: RawFact): boolean {
  return new Set(choices.map(({ id }) => id)).size === choices.length;
}

function definitionOf({ id: _, label, choices, unit, ...rest }: RawFact): FactDefinition {
  const english = label['en'] ?? Object.values(label)[0] ?? '';
  const listed = choices && {
    choices: choices.map((choice) => choice.id),
    choiceLabels: Object.fromEntries(choices.map((choice) => [choice.id, choice.label])),
  };
  return { label: english, labels: label, unit: unit ?? null, ...rest, ...listed } as FactDefinition;
}
