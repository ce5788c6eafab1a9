import { isProtected } from '../../types.ts';
import { type ProtectWorld, placeIn } from './world.ts';

const sentences = ['title', 'met', 'unknown', 'lift'] as const;

/**
 * Reports sentences of a protected rule that an overlay rewords or leaves out: what the pack says stands in them, and more may be
 * added. A limit may be another one there, since the rule may read one of the overlay's own.
 */
export function protectSentences({ before, after, overlay, report }: ProtectWorld): void {
  const now = new Map(after.rules.map((rule) => [rule.id, rule]));
  for (const shipped of before.rules.filter(isProtected)) {
    const changed = now.get(shipped.id);
    if (changed === undefined || changed === shipped) continue;
    for (const [language, texts] of Object.entries(shipped.text)) {
      for (const part of sentences) {
        const said = texts[part];
        const given = changed.text[language]?.[part] ?? '';
        if (said === undefined || limitsLeftOpen(given).includes(limitsLeftOpen(said))) continue;
        const details = { expected: `a text that holds "${said}"`, came: `"${given}"`, rule: shipped.id };
        report('OVERLAY_SENTENCE_CHANGED', placeIn(overlay, 'rules', shipped.id, 'text', language, part), details);
      }
    }
  }
}

function limitsLeftOpen(text: string): string {
  return text.replace(/\{\w+\}/g, '{}');
}
