import type { FieldProfile } from '../../core/dialogue/events.ts';
import type { FieldOffer } from '../../core/protocol/server-messages.ts';
import type { Pack } from '../../core/rules/pack-types.ts';

/** A field as it stands in the choice at the start. */
export function offerOf({ id, name, invented, note }: FieldProfile): FieldOffer {
  return { id, name, invented, note: note ?? '' };
}

/** The title of a pack in the language asked for, else in English, else in any that it has. */
export function titleOf(pack: Pack, language = 'en'): string {
  return pack.title[language] ?? pack.title['en'] ?? Object.values(pack.title)[0] ?? pack.id;
}
