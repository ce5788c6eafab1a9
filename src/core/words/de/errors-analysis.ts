import type { ErrorWordsOf } from '../errors.ts';

/** Findings of the analysis of a pack that loads, in German. */
export const analysisErrors: ErrorWordsOf = {
  PARAMETER_NOT_IN_FORCE: {
    says: 'Ein Parameter, der gebraucht wird, hat an diesem Tag keinen gültigen Wert: Er ist abgelaufen oder gilt noch nicht.',
    next: 'Fügen Sie einen Wert hinzu, der an dem Tag gilt, oder verschieben Sie validFrom oder validTo.',
  },
  PARAMETER_VALIDITY_OVERLAPS: {
    says: 'Ein Wert eines Parameters soll noch gelten, obwohl der nächste schon begonnen hat; der nächste zählt.',
    next: 'Lassen Sie ihn am Tag davor enden oder lassen Sie validTo weg.',
  },
  RULE_NEVER_MET: {
    says: 'Eine Regel kann nie erfüllt sein, was auch angegeben wird.',
    next: 'Berichtigen Sie die Bedingung oder ihre Grenzen: So schützt sie niemanden.',
  },
  RULE_ALWAYS_MET: {
    says: 'Eine Regel ist immer erfüllt, was auch angegeben wird.',
    next: 'Berichtigen Sie die Bedingung oder ihre Grenzen: So entscheidet sie nichts.',
  },
  RULE_BOUNDS_CONTRADICT: {
    says: 'Grenzen derselben Angabe widersprechen einander: Kein Wert liegt innerhalb von allen.',
    next: 'Drehen oder verschieben Sie eine der Grenzen, oder verbinden Sie sie mit any.',
  },
  RULE_HIDDEN: {
    says: 'Eine Regel wird von einer anderen verdeckt, die immer mit ihr erfüllt ist und ebenso viel oder mehr wiegt.',
    next: 'Nehmen Sie sie heraus oder ändern Sie sie so, dass sie etwas Eigenes sagt.',
  },
  RULE_SAID_TWICE: { says: 'Zwei Regeln sagen dasselbe.', next: 'Behalten Sie eine davon.' },
  RULE_TOO_BIG: {
    says: 'Eine Regel liest zu viele Angaben, um sie ganz durchzusehen, und wurde nicht untersucht.',
    next: 'Machen Sie aus einem Teil eine eigene Regel, oder sehen Sie sie von Hand durch.',
  },
  RULE_LIMIT_WITHOUT_CASE: {
    says: 'Keine Prüffälle halten eine Grenze einer Regel von beiden Seiten.',
    next: 'Fügen Sie einen Fall knapp innerhalb der Grenze hinzu und einen knapp außerhalb.',
  },
  QUESTION_NEVER_ASKED: {
    says: 'Eine Frage kann nie gestellt werden: Keine Regel braucht, was sie klärt.',
    next: 'Nehmen Sie sie heraus, oder schreiben Sie die Regel, die ihre Angabe liest.',
  },
};
