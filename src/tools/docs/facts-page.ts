import { coreFactIds, coreFacts } from '../../core/facts/registry/index.ts';
import type { FactDefinition, GoodFor } from '../../core/facts/types.ts';
import { markdownTable } from './table.ts';

/** docs/facts.md: the registry of facts. */
export function factsPage(): string {
  const rows = coreFactIds.map((id) => {
    const definition = coreFacts[id];
    return [
      `\`${id}\``,
      definition.label,
      takes(definition),
      howItComes(definition),
      goodForText(definition.goodFor, definition.forecastAt),
    ];
  });
  return [
    '# Facts',
    '',
    'Made from `src/core/facts/registry/` by `npm run docs`; a test keeps it fresh.',
    '',
    'A fact is one named value with a unit. It is *known* (a value, where it came from, when, and a band where that matters)',
    'or *unknown* (and why). Ids are public: case files, the command line and the protocol use them.',
    '',
    'In a facts file for `loamward decide` a value is plain, or `{ "value": 9.8, "low": 9.4, "high": 10.3 }` with a band.',
    'A soil temperature may add `"depthCm"` and `"readAt"` (ISO 8601 with its offset): from 5 to 100 cm it is worked out at 30 cm,',
    'with a wider band. A list of such values is several readings.',
    'A choice may be a list: one of these; for `soil.surface` a list holds all the signs seen, and with',
    '`{ "value": ["friable"], "possible": ["cracked"] }` those that may be there too. A missing key or `null` is derived where',
    'that can be done, else unknown. Yes and no may also be written `true` and `false`. A key that stands twice is refused.',
    '',
    markdownTable(['Fact', 'What', 'Takes', 'How it comes', 'Stays good'], rows),
    '',
    'Where a person may give a value that is also derived or forecast, the value given counts; for rain, wind and frost',
    'now, eyes outrank the forecast. Lengths of time in quotes are parameters of the pack.',
    '',
  ].join('\n');
}

function howItComes({ obtained, noQuestion }: FactDefinition): string {
  const ways = obtained.map((way) => (way === 'asked' && noQuestion !== undefined ? 'given' : way)).join(', then ');
  return noQuestion === undefined ? ways : `${ways}; no question asks for it: ${noQuestion}`;
}

function takes(definition: FactDefinition): string {
  if (definition.choices) return definition.choices.join(', ');
  if (definition.type === 'date') return 'ISO date';
  if (definition.type === 'country') return 'GB-ENG, GB-SCT, GB-WLS, GB-NIR (ISO 3166-2) or another ISO 3166-1 code';
  const range = definition.range ? `${definition.range[0]} to ${definition.range[1]} ` : '';
  return `${range}${definition.unit ?? ''}, kept to ${definition.precision ?? 1}`;
}

function goodForText(goodFor: GoodFor, forecastAt: FactDefinition['forecastAt']): string {
  const observed = {
    season: () => 'the season',
    moment: () => 'the moment asked about',
    'same-day': () => 'the same day',
    hours: (each: GoodFor) =>
      each.kind === 'hours' ? `"${each.parameter}"${each.untilRainMm ? ` or until "${each.untilRainMm}"` : ''}` : '',
    days: (each: GoodFor) => (each.kind === 'days' ? `"${each.parameter}"` : ''),
  }[goodFor.kind](goodFor);
  return forecastAt ? `${observed}; from the forecast by its age` : observed;
}
