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
  watching: 'Bei jeder Änderung wird neu geprüft; Strg+C beendet es.',
};
