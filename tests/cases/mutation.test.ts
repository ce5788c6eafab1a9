import { describe, expect, test } from 'vitest';
import { sayEqual, saySurvivor } from '../../src/cli/say-change.ts';
import { type TriedRules, tryRules } from '../../src/core/verdict/cases/try-rules.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { packTable } from './shipped-pack.ts';

const english = catalogueOf('en');

/** Fewest changes that there are to make, so that a trial that changes nothing is noticed. */
const fewestChanges: Readonly<Record<string, number>> = {
  'fluroxypyr-winter-wheat': 200,
  'propyzamide-winter-oilseed-rape': 500,
};

describe.each(packTable)('%s', (id, { pack, cases }) => {
  let found: TriedRules | null = null;
  const tried = () => {
    found ??= tryRules(pack, cases, (fact) => pack.facts[fact]!);
    return found;
  };

  test('with nothing changed every case comes out as it says', () => {
    expect(tried().failing.map(({ one }) => one.name)).toEqual([]);
  });

  test('some case notices every single change of a limit, operator, connective, member, effect or of what lifts a rule', () => {
    const survivors = tried().survivors.map((one) => {
      const { what, now, kill } = saySurvivor(one, pack, english);
      return `${what}: ${now} ${kill}`;
    });
    expect(survivors).toEqual([]);
    expect(tried().changes).toBeGreaterThan(fewestChanges[id] ?? 0);
  });

  test('no change of the pack leaves it saying the same in other words', () => {
    expect(tried().equal.map((change) => sayEqual(change, pack, english).now)).toEqual([]);
  });
});
