import type { RuleBook } from './rule-book.ts';

/** What /health tells: the rules in force, the overlays laid over them, and why files that were found since were not taken. */
export function healthOf(rules: Pick<RuleBook, 'packs' | 'refused'>): object {
  const [pack] = rules.packs();
  const { id, version, hash, overlays = [] } = pack;
  const refused = rules.refused();
  return {
    status: 'ok',
    pack: { id, version, hash },
    rules: {
      overlays: overlays.map((one) => ({ id: one.id, hash: one.hash })),
      refused: refused && { at: new Date(refused.at * 1000).toISOString(), error: refused.error },
    },
  };
}
