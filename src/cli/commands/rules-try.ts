import { definitionsOf } from '../../core/facts/registry/index.ts';
import { casesThatHold, type TriedRules, tryRules } from '../../core/verdict/cases/try-rules.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import type { Command } from '../command.ts';
import { languageOption, wordsFor } from '../language.ts';
import { overlayOption } from '../overlay-option.ts';
import { firstPack, layLocal, loadNamedPack, today } from '../packs.ts';
import { type SaidSurvivor, sayEqual, sayFailing, saySurvivor } from '../say-change.ts';

/** `loamward rules try`: every single change of a pack's rules, and those that no case notices. */
export const rulesTry: Command = {
  name: 'rules try',
  summary: 'Changes each limit, operator and connective of a pack and shows which changes no case notices.',
  words: '[PACK]',
  options: {
    overlay: overlayOption,
    language: languageOption,
    json: { type: 'boolean', help: 'print one JSON object' },
  },
  examples: [
    'npx loamward rules try',
    'npx loamward rules try my-packs/spring-treatment --json',
    'npx loamward rules try --overlay our-farm.json',
  ],
  run: async (parsed, io) => {
    const overlays = parsed.lists['overlay'] ?? [];
    const shipped = await loadNamedPack(io, parsed.words[0] ?? firstPack);
    const { pack, cases: all } = await layLocal(shipped, overlays, today(io)(shipped.pack.zone));
    const local = all.slice(shipped.cases.length);
    const cases = pack.overlays ? [...casesThatHold(pack, shipped.cases), ...local] : all;
    const words = wordsFor(parsed, io);
    const tried = tryRules(pack, cases, definitionsOf(pack.facts));
    const said = {
      pack: pack.id,
      version: pack.version,
      cases: tried.cases,
      changes: tried.changes,
      noticed: tried.changes - tried.equal.length - tried.survivors.length,
      failing: tried.failing.map((failed) => ({
        file: failed.one.file,
        name: failed.one.name,
        came: sayFailing(failed, words),
      })),
      unjudged: tried.unjudged.map(({ one, day, parameter }) => ({ file: one.file, name: one.name, day, parameter })),
      equal: tried.equal.map((change) => sayEqual(change, pack, words)),
      survivors: tried.survivors.map((one) => saySurvivor(one, pack, words)),
    };
    io.write(parsed.options['json'] ? `${JSON.stringify(said)}\n` : asText(tried, said, words));
    return tried.failing.length + tried.survivors.length > 0 || tried.cases === 0 ? 1 : 0;
  },
};

interface Said {
  readonly failing: readonly { readonly file: string; readonly name: string; readonly came: string }[];
  readonly unjudged: readonly { readonly day: string; readonly parameter: string }[];
  readonly equal: readonly { readonly what: string }[];
  readonly survivors: readonly SaidSurvivor[];
  readonly noticed: number;
}

function asText(
  { cases, changes }: TriedRules,
  { failing, unjudged, equal, survivors, noticed }: Said,
  { say: { tried } }: Catalogue,
): string {
  const part = (title: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', title, ...lines]);
  const survivorLines = (alike: readonly SaidSurvivor[]): readonly string[] => {
    const { id, was, kill } = alike[0] as SaidSurvivor;
    const limit = alike.every(({ kind }) => kind === 'limit');
    const changes = limit
      ? alike.map(({ what }) => `  ${what}`)
      : [`  ${id}`, `    ${tried.was(was)}`, ...alike.map(({ now }) => `    ${tried.now(now)}`)];
    return [...changes, `    ${kill}`];
  };
  const lines = [
    ...(failing.length > 0 ? [] : [tried.sum(cases, changes, noticed, equal.length, survivors.length)]),
    ...part(
      tried.failing,
      failing.flatMap(({ file, name, came }) => [`  ${file}: ${name}`, `    ${came}`]),
    ),
    ...part(tried.unjudged, linesOf(unjudged, tried)),
    ...part(
      tried.equal,
      equal.map(({ what }) => `  ${what}`),
    ),
    ...part(tried.survivors, byCase(survivors).flatMap(survivorLines)),
  ];
  return `${lines.join('\n').trimStart()}\n`;
}

/** Each day on which cases cannot be judged, with how many they are and the limit that does not hold then. */
function linesOf(unjudged: Said['unjudged'], { leftOut }: Catalogue['say']['tried']): readonly string[] {
  const counts = new Map<string, { readonly count: number; readonly day: string; readonly parameter: string }>();
  for (const { day, parameter } of unjudged) {
    const key = `${day} ${parameter}`;
    counts.set(key, { count: (counts.get(key)?.count ?? 0) + 1, day, parameter });
  }
  return [...counts.values()].map(({ count, day, parameter }) => `  ${leftOut(count, day, parameter)}`);
}

/** Survivors that the same case would notice, together, in the order of the first of each. */
function byCase(survivors: readonly SaidSurvivor[]): readonly (readonly SaidSurvivor[])[] {
  const groups = new Map<string, SaidSurvivor[]>();
  for (const one of survivors) {
    const key = `${one.kind === 'limit'} ${one.id} ${one.kill}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()];
}
