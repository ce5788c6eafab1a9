import type { ErrorCode } from '../../../errors/table.ts';
import type { Path } from '../../pack/findings.ts';
import type { Effect, Lifts, Rule } from '../../types.ts';
import { isProtected } from '../../types.ts';
import { type ProtectWorld, placeIn } from './world.ts';

const weight: Readonly<Record<Effect, number>> = { advise: 0, hold: 1, stop: 2 };
const slowness: Readonly<Partial<Record<Lifts, number>>> = { hours: 0, days: 1, season: 2 };

/** Reports protected rules that an overlay takes away, puts under a lesser authority, or gives a weaker effect or a quicker lift. */
export function protectRules(world: ProtectWorld): void {
  const after = new Map(world.after.rules.map((rule) => [rule.id, rule]));
  for (const shipped of world.before.rules) {
    if (!isProtected(shipped)) continue;
    const changed = after.get(shipped.id);
    const fault = (code: ErrorCode, expected: string, came: string, ...steps: Path): void => {
      world.report(code, placeIn(world.overlay, 'rules', shipped.id, ...steps), { expected, came, rule: shipped.id });
    };
    if (!changed) {
      fault('OVERLAY_RULE_REMOVED', `${shipped.id}, a protected rule`, 'no such rule');
      continue;
    }
    if (!keepsAuthority(shipped, changed)) {
      fault('OVERLAY_RULE_UNPROTECTED', sayAuthority(shipped), sayAuthority(changed), 'authority');
    }
    if (weight[changed.effect] < weight[shipped.effect]) {
      fault('OVERLAY_EFFECT_WEAKER', `${shipped.effect} or stronger`, changed.effect, 'effect');
    }
    if (!liftsAsSlowly(shipped, changed)) {
      fault('OVERLAY_LIFTS_QUICKER', `${shipped.lifts} or slower`, String(changed.lifts), 'lifts');
    }
  }
}

/** Law, label and water stay what they are; a safety rule of practice stays protected, or becomes one of those. */
function keepsAuthority(shipped: Rule, changed: Rule): boolean {
  return shipped.authority === changed.authority
    ? !shipped.protectedByPractice || changed.protectedByPractice || changed.authority !== 'practice'
    : shipped.authority === 'practice' && isProtected(changed);
}

function sayAuthority({ authority, protectedByPractice }: Rule): string {
  return protectedByPractice ? `${authority}, protected` : authority;
}

/** What a person lifts stays so, or lasts the season; an effect that became a stop or hold from advice may lift in any way. */
function liftsAsSlowly({ lifts: from }: Rule, { lifts: to }: Rule): boolean {
  if (from === null || from === to) return true;
  if (to === null) return false;
  if (from === 'person') return to === 'season';
  const [slow, next] = [slowness[from], slowness[to]];
  return slow !== undefined && next !== undefined && next >= slow;
}
