import type { ErrorCode } from '../../../errors/table.ts';
import type { Tighter } from '../../../units/parameter.ts';
import type { Report } from '../../pack/findings.ts';
import type { Pack } from '../../pack-types.ts';
import { isProtected } from '../../types.ts';
import type { Overlay } from '../parse-overlay.ts';
import { type IndirectReach, indirectReach } from './parameter-kinds.ts';
import { risesWith } from './rises-with.ts';
import {
  type Moved,
  movedParameters,
  type ProtectWorld,
  placeOfMoved,
  protectedFacts,
  protectedParameters,
  rulesOn,
} from './world.ts';

const codes: Readonly<Record<IndirectReach['kind'], ErrorCode>> = {
  ageing: 'OVERLAY_AGEING_LOOSENED',
  band: 'OVERLAY_BAND_LOOSENED',
  derivation: 'OVERLAY_DERIVATION_LOOSENED',
  dose: 'OVERLAY_DOSE_LOOSENED',
};

/** Reports a unit or a tighter direction that an overlay gives otherwise than the pack; both are the pack's to say. */
export function checkDeclared(overlay: Overlay, before: Pack, report: Report): void {
  (overlay.content.parameters ?? []).forEach(({ id, unit, tighter }, index) => {
    const shipped = before.parameters.find((one) => one.id === id);
    if (!shipped) return;
    const place = { file: overlay.file, path: ['parameters', index] };
    const at = (key: string) => ({ ...place, path: [...place.path, key] });
    if (unit !== undefined && unit !== shipped.unit) {
      report('PARAMETER_UNIT_MISFIT', at('unit'), { expected: shipped.unit, came: unit, parameter: id });
    }
    if (tighter !== undefined && tighter !== shipped.tighter) {
      report('OVERLAY_DIRECTION_CHANGED', at('tighter'), { expected: shipped.tighter, came: tighter, parameter: id });
    }
  });
}

/**
 * Reports parameters that reach a protected rule, or the dose, through ageing, a band or a derivation and that an overlay moved;
 * and values that would begin where the pack's ended. Free to move, in the direction which the pack declares as tighter, are only
 * the dose and what brings a fact nearer to each protected rule that reads it: to trust a reading for less long, or with a wider
 * band, may put another source or no value in the place of one that stops.
 */
export function protectParameters(world: ProtectWorld): void {
  const { before, overlay, report, definitionOf, days } = world;
  const facts = new Set(days.flatMap((day) => [...protectedFacts(before, day)]));
  const read = new Set(days.flatMap((day) => [...protectedParameters(before, day)]));
  const seen = new Set<string>();
  for (const moved of movedParameters(world)) {
    if (seen.has(moved.id)) continue;
    const place = placeOfMoved(overlay, moved, moved.after === null ? 'validTo' : 'value');
    if (moved.after === null || (moved.before === null && read.has(moved.id))) {
      seen.add(moved.id);
      const code = moved.after === null ? 'PARAMETER_NOT_IN_FORCE' : 'OVERLAY_PARAMETER_LOOSENED';
      const expected = moved.after === null ? `a value in force on ${moved.day}` : 'no value where the pack has none';
      report(code, place, { expected, came: `${show(moved.after)} on ${moved.day}`, parameter: moved.id });
      continue;
    }
    const reach = indirectReach(moved.id, facts, definitionOf);
    if (!reach) continue;
    const mayTighten = reach.kind === 'dose' || rises(world, reach, moved);
    if (mayTighten && movedTighter(moved)) continue;
    seen.add(moved.id);
    const of = reach.facts.length === 0 ? '' : `, which bears on ${reach.facts.join(', ')}`;
    report(codes[reach.kind], place, {
      expected: expectedOf(moved, mayTighten),
      came: `${show(moved.after)} on ${moved.day}${of}`,
      parameter: moved.id,
    });
  }
}

/** True where what the pack calls tighter brings the facts of a reach nearer to each protected rule that reads them, on every day. */
function rises({ before, days }: ProtectWorld, { rises: rise, facts }: IndirectReach, moved: Moved): boolean {
  if (rise === null || moved.before?.tighter !== rise.moved) return false;
  const conditions = days.flatMap((day) => [...rulesOn(before, day).values()]).filter(({ rule }) => isProtected(rule));
  return conditions.every(({ condition }) => facts.every((fact) => risesWith(condition, fact, rise.way)));
}

function expectedOf({ before }: Moved, mayTighten: boolean): string {
  if (!before) return 'no value where the pack has none';
  return mayTighten && before.tighter !== 'neither'
    ? `${show(before)}, or ${before.tighter}`
    : `${show(before)} as shipped`;
}

function show(parameter: Moved['before']): string {
  return parameter === null ? 'no value' : JSON.stringify(parameter.value);
}

/** True where a parameter moved the way that the pack declares as tighter. */
export function movedTighter({ before, after }: Pick<Moved, 'before' | 'after'>): boolean {
  return before !== null && after !== null && goes(before.tighter, before.value, after.value);
}

function goes(tighter: Tighter, from: unknown, to: unknown): boolean {
  if (Array.isArray(from) && Array.isArray(to)) {
    const within = (one: readonly unknown[], other: readonly unknown[]) => one.every((each) => other.includes(each));
    return tighter === 'fewer' ? within(to, from) : tighter === 'more' && within(from, to);
  }
  if (typeof from !== typeof to || (typeof from !== 'number' && typeof from !== 'string')) return false;
  const isLower = (to as number | string) <= from;
  return tighter === 'lower' ? isLower : tighter === 'higher' && (to as number | string) >= from;
}
