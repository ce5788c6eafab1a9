import type { ConversationEvent, StartedEvent } from '../../core/dialogue/events.ts';
import { codedError, type ErrorReport, reportOf } from '../../core/errors/coded-error.ts';
import { nearestName } from '../../core/errors/nearest.ts';
import type { PackName } from './types.ts';

/**
 * The pack that a start is made under: that of the treatment it names; where it names none, that of the conversation so far, or the
 * first. Throws TREATMENT_UNKNOWN, and TREATMENT_OTHER where the conversation is about another treatment.
 */
export function packToStart(
  packs: readonly [PackName, ...PackName[]],
  named: string | undefined,
  before: Pick<StartedEvent, 'packId'> | undefined,
): PackName {
  const id = named ?? before?.packId ?? packs[0].id;
  const found = packs.find((one) => one.id === id);
  if (found === undefined) {
    const ids = packs.map((one) => one.id);
    const nearest = nearestName(id, ids);
    const expected = `one of ${ids.join(', ')}`;
    throw codedError('TREATMENT_UNKNOWN', { expected, came: id, ...(nearest ? { nearest } : {}) });
  }
  if (before !== undefined && before.packId !== id) {
    throw codedError('TREATMENT_OTHER', { expected: before.packId, came: id });
  }
  return found;
}

/** Why a start that was made elsewhere does not go on with the conversation so far; null where it does. */
export function otherTreatment(
  event: ConversationEvent,
  before: Pick<StartedEvent, 'packId'> | undefined,
): ErrorReport | null {
  if (event.kind !== 'started' || before === undefined || event.packId === before.packId) return null;
  return reportOf('TREATMENT_OTHER', { expected: before.packId, came: event.packId });
}
