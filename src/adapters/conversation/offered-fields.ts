import { codedError } from '../../core/errors/coded-error.ts';
import { nearestName } from '../../core/errors/nearest.ts';
import type { OfferedField } from './types.ts';

/** The offered field of an id, or null where there is none (an own field, or one no longer offered). */
export function offeredField(fields: readonly OfferedField[], id: string | null): OfferedField | null {
  return fields.find(({ profile }) => profile.id === id) ?? null;
}

/** The offered field that a start names; null for an own field. Throws FIELD_UNKNOWN. */
export function requireField(fields: readonly OfferedField[], id: string | null): OfferedField | null {
  const found = offeredField(fields, id);
  if (found || id === null) return found;
  const ids = fields.map(({ profile }) => profile.id);
  const nearest = nearestName(id, ids);
  throw codedError('FIELD_UNKNOWN', {
    expected: `one of ${ids.join(', ')}, or null for an own field`,
    came: id,
    ...(nearest ? { nearest } : {}),
  });
}
