import type { Pack } from '../../core/rules/pack-types.ts';
import type { RefusedRules } from './follow-pack.ts';
import type { RuleBook } from './rule-book.ts';

/**
 * What /health tells: the rules in force, the overlays laid over them, and why files that were found since were not taken; the same of
 * each other treatment, `pack` being null where nothing sound of it was there yet.
 */
export function healthOf(rules: Pick<RuleBook, 'packs' | 'refused' | 'others'>): object {
  const [first] = rules.packs();
  return {
    status: 'ok',
    pack: nameOf(first),
    rules: { overlays: overlaysOf(first), refused: told(rules.refused()) },
    others: rules.others().map(({ id, pack, refused }) => ({
      id,
      pack: pack && nameOf(pack),
      rules: { overlays: pack ? overlaysOf(pack) : [], refused: told(refused) },
    })),
  };
}

function nameOf({ id, version, hash }: Pack): object {
  return { id, version, hash };
}

function overlaysOf({ overlays = [] }: Pack): readonly object[] {
  return overlays.map(({ id, hash }) => ({ id, hash }));
}

function told(refused: RefusedRules | null): object | null {
  return refused && { at: new Date(refused.at * 1000).toISOString(), error: refused.error };
}
