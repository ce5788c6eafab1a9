import type { FieldProfile } from '../../core/dialogue/events.ts';
import type { FieldOffer, TreatmentOffer } from '../../core/protocol/server-messages.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import type { OfferedField } from './types.ts';

/** A field as it stands in the choice at the start. */
export function offerOf({ id, name, invented, note }: FieldProfile): FieldOffer {
  return { id, name, invented, note: note ?? '' };
}

/** The title of a pack in the language asked for, else in English, else in any that it has. */
export function titleOf(pack: Pack, language?: string): string {
  return textIn(pack.title, language) ?? pack.id;
}

/** The fields that are offered for a treatment: those that name it, and those that name none. */
export function fieldsFor<F extends Pick<OfferedField, 'packs'>>(fields: readonly F[], treatment: string): F[] {
  return fields.filter(({ packs }) => packs?.includes(treatment) ?? true);
}

/** The packs in force among those at hand, that for who names none first: of each treatment the first, since older ones come later. */
export function packsInForce<P extends { readonly id: string }>(packs: readonly [P, ...P[]]): readonly [P, ...P[]] {
  const [first, ...rest] = packs;
  const seen = new Set([first.id]);
  return [first, ...rest.filter(({ id }) => !seen.has(id) && seen.add(id))];
}

/** The treatments that can be started, in a language, each with the fields that are offered for it. */
export function treatmentOffers(
  [first, ...others]: readonly [Pack, ...Pack[]],
  fields: readonly Pick<OfferedField, 'profile' | 'packs'>[],
  language?: string,
): readonly [TreatmentOffer, ...TreatmentOffer[]] {
  const offer = (pack: Pack): TreatmentOffer => ({
    id: pack.id,
    title: titleOf(pack, language),
    note: textIn(pack.scope, language) ?? '',
    fields: fieldsFor(fields, pack.id).map(({ profile }) => profile.id),
  });
  return [offer(first), ...others.map(offer)];
}

function textIn(texts: Pack['title'], language = 'en'): string | undefined {
  return texts[language] ?? texts['en'] ?? Object.values(texts)[0];
}
