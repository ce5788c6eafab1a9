import type { Catalogue } from '../catalogue.ts';

/** What the check of rule files says beside the errors themselves, in German. */
export const checkWords: Catalogue['check'] = {
  sound: (rules, cases) => `in Ordnung: ${rules} Regeln, ${cases} Prüffälle`,
  toMend: (errors) => `${errors} zu berichtigen`,
  doesNotLoad: 'nichts davon wird verwendet',
  toLookAt: (warnings) => `${warnings} anzusehen`,
  severities: { error: 'Fehler', warning: 'Hinweis' },
  what: 'Was',
  why: 'Warum',
  fix: 'Abhilfe',
  reason: (expected, came) => `Erwartet: ${expected}; gekommen: ${came}.`,
  nearest: (name) => `Am nächsten liegt: ${name}.`,
  begun: {
    wrote: (folder) => `Geschrieben in ${folder}:`,
    offered:
      'Solange es unter rules/ liegt, wird es zur Wahl gestellt. Es sagt „nicht spritzen“, bis jemand antwortet, dass die Regeln freigegeben sind.',
    noSchemas: 'Es liegt außerhalb von rules/, darum nennt keine Datei ihr Schema für den Editor.',
    invented:
      'Jeder Grenzwert ist erfunden. Ersetzen Sie, was das von sich sagt, und nennen Sie die Quelle; lassen Sie es von einem sachkundigen Berater freigeben und nehmen Sie dann rules-not-approved und draft-rules heraus.',
    next: 'Weiter mit:',
  },
  watching: 'Bei jeder Änderung wird neu geprüft; Strg+C beendet es.',
};
