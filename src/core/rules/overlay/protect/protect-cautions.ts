import { type ProtectWorld, placeIn } from './world.ts';

/** Reports cautions of law, label or water that an overlay takes away, puts under a lesser authority, or whose text it shortens. */
export function protectCautions({ before, after, overlay, report }: ProtectWorld): void {
  const now = new Map(after.cautions.map((caution) => [caution.id, caution]));
  for (const { id, authority, text } of before.cautions) {
    if (authority === 'practice') continue;
    const is = now.get(id);
    if (!is) {
      const details = { expected: `caution ${id}, of ${authority}`, came: 'no such caution' };
      report('OVERLAY_CAUTION_REMOVED', placeIn(overlay, 'cautions', id), details);
      continue;
    }
    if (is.authority !== authority) {
      const place = placeIn(overlay, 'cautions', id, 'authority');
      report('OVERLAY_CAUTION_REMOVED', place, { expected: authority, came: is.authority });
    }
    for (const [language, shipped] of Object.entries(text)) {
      const given = is.text[language] ?? '';
      if (given.includes(shipped)) continue;
      const place = placeIn(overlay, 'cautions', id, 'text', language);
      report('OVERLAY_CAUTION_REMOVED', place, { expected: `a text that holds "${shipped}"`, came: `"${given}"` });
    }
  }
}
