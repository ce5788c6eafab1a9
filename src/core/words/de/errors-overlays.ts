import type { ErrorWordsOf } from '../errors.ts';

const asShipped = 'Lassen Sie es, wie das Paket es hat; ein Grenzwert oder eine Regel von Ihnen kann mehr verlangen.';
const direction = 'Verschieben Sie ihn in die erwartete Richtung, oder lassen Sie ihn.';

/** Failures of overlays, the local additions to a pack, in German. */
export const overlayErrors: ErrorWordsOf = {
  OVERLAY_PACK_MISFIT: {
    says: 'Ein Zusatz gehört zu einem anderen Regelpaket oder zu anderen Fassungen davon.',
    next: 'Nehmen Sie ihn mit dem Paket, das er nennt, oder sehen Sie ihn für diese Fassung durch und berichtigen Sie "pack" in seinem Kopf.',
  },
  OVERLAY_CHANGED_MEANWHILE: {
    says: 'Der Zusatz im Ordner ist nicht der, von dem Ihrer ausging.',
    next: 'Sichern Sie Ihren als Datei, öffnen Sie den im Ordner und ändern Sie diesen.',
  },
  OVERLAY_FILE_TAKEN: {
    says: 'Der Ordner hat unter dem Namen, den der Zusatz bekäme, eine andere Datei.',
    next: 'Geben Sie dem Zusatz eine andere Kennung.',
  },
  OVERLAY_NOT_WRITTEN: {
    says: 'Der Zusatz ließ sich nicht in den Ordner schreiben.',
    next: 'Lassen Sie den Server dort schreiben, oder sichern Sie den Zusatz als Datei.',
  },
  BENCH_WRITES_OFF: {
    says: 'Der Server wurde nicht so gestartet, dass die Werkbank in seinen Ordner der Zusätze schreiben darf.',
    next: 'Sichern Sie den Zusatz als Datei und geben Sie sie dem, der den Server betreibt.',
  },
  BENCH_NOT_HERE: {
    says: 'Die Werkbank schreibt nur von dem Rechner aus, auf dem der Server läuft, denn es gibt keine Anmeldung.',
    next: 'Sichern Sie den Zusatz als Datei und geben Sie sie dem, der den Server betreibt.',
  },
  OVERLAY_HASH_MISFIT: {
    says: 'Der Zusatz wurde geändert, nachdem er gesichert war.',
    next: 'Bitten Sie noch einmal um die Datei; ist die Änderung gewollt, nehmen Sie "hash" heraus.',
  },
  OVERLAY_NOT_IN_FORCE: {
    says: 'Ein Zusatz gilt an diesem Tag nicht und wurde nicht angewandt.',
    next: 'Verschieben Sie validFrom oder validTo, wenn er wieder durchgesehen ist.',
  },
  OVERLAY_CONFLICT: {
    says: 'Zwei Zusätze einer Schicht ändern denselben Eintrag.',
    next: 'Lassen Sie nur einen davon sprechen, oder setzen Sie, was der Hof hinzufügt, in einen Zusatz der Schicht farm.',
  },
  OVERLAY_ENTRY_FIXED: {
    says: 'Ein Zusatz ändert, was nach einem anderen, vor ihm angewandten bleiben muss.',
    next: 'Nehmen Sie den Eintrag heraus, oder fragen Sie den Verfasser des anderen Zusatzes.',
  },
  OVERLAY_DIRECTION_CHANGED: {
    says: 'Ein Zusatz nennt bei einem Parameter des Pakets eine andere Richtung strenger.',
    next: 'Lassen Sie "tighter" weg: Es wird vom Paket übernommen.',
  },
  OVERLAY_RULE_REMOVED: {
    says: 'Ein Zusatz nimmt eine geschützte Regel weg.',
    next: 'Lassen Sie die Regel stehen; Regeln von Gesetz, Gebrauchsanleitung, Wasser und Sicherheit lassen sich nur verschärfen.',
  },
  OVERLAY_RULE_UNPROTECTED: {
    says: 'Ein Zusatz stellt eine geschützte Regel unter eine geringere Autorität.',
    next: 'Geben Sie "authority" und "protected" wie das Paket an.',
  },
  OVERLAY_EFFECT_WEAKER: {
    says: 'Ein Zusatz gibt einer geschützten Regel eine schwächere Wirkung.',
    next: 'Geben Sie die Wirkung des Pakets an, oder eine stärkere.',
  },
  OVERLAY_LIFTS_QUICKER: {
    says: 'Ein Zusatz lässt eine geschützte Regel schneller oder auf andere Weise enden.',
    next: 'Geben Sie "lifts" wie das Paket an, oder langsamer.',
  },
  OVERLAY_RULE_LOOSENED: {
    says: 'Ein Zusatz gibt einer geschützten Regel eine Bedingung, die mehr durchlässt.',
    next: 'Behalten Sie die Bedingung des Pakets und verbinden Sie Ihre mit any.',
  },
  OVERLAY_REFERENCE_LOOSENED: {
    says: 'Ein Zusatz lässt durch eine geschützte Regel mehr durch, über eine Regel, die sie nennt.',
    next: 'Lassen Sie die genannte Regel, wie das Paket sie hat, oder nennen Sie sie und die neue, mit any verbunden.',
  },
  OVERLAY_PARAMETER_LOOSENED: {
    says: 'Ein Zusatz verschiebt eine Grenze so, dass eine geschützte Regel mehr durchlässt.',
    next: 'Lassen Sie den Wert des Pakets, oder verschieben Sie ihn in die andere Richtung; eine Regel der Praxis kann einen eigenen Parameter bekommen.',
  },
  OVERLAY_DERIVATION_LOOSENED: {
    says: 'Ein Zusatz verschiebt einen Parameter, aus dem eine Angabe errechnet wird, die geschützte Regeln lesen, und nicht so, dass sie nur strenger werden können.',
    next: 'Verschieben Sie ihn in der erwarteten Richtung, oder lassen Sie ihn, wie das Paket ihn hat.',
  },
  OVERLAY_AGEING_LOOSENED: {
    says: 'Ein Zusatz verschiebt, wie lange eine Angabe gilt, die geschützte Regeln lesen; auch kürzer lockert, denn an die Stelle dessen, was verbietet, könnte eine andere Quelle treten.',
    next: asShipped,
  },
  OVERLAY_BAND_LOOSENED: {
    says: 'Ein Zusatz verschiebt die Spanne einer Angabe, die geschützte Regeln lesen; auch weiter lockert, denn was sicher verbietet, wäre dann nur möglich.',
    next: asShipped,
  },
  OVERLAY_DOSE_LOOSENED: {
    says: 'Ein Zusatz verschiebt, woraus die Aufwandmenge errechnet wird, anders als es nach dem Paket strenger ist; die Gebrauchsanleitung begrenzt sie.',
    next: direction,
  },
  OVERLAY_QUESTION_LOOSENED: {
    says: 'Ein Zusatz lässt eine Frage eine Angabe, die geschützte Regeln lesen, anders nennen als das Paket.',
    next: 'Behalten Sie Form, Antworten, deren Wortlaut und Werte; "help" und die Sätze dürfen Ihre eigenen sein.',
  },
  OVERLAY_SENTENCE_CHANGED: {
    says: 'Ein Zusatz ändert einen Satz einer geschützten Regel oder lässt ihn weg.',
    next: 'Lassen Sie den Satz des Regelpakets Wort für Wort stehen; was örtlich gilt, darf davor oder danach stehen.',
  },
  OVERLAY_CAUTION_REMOVED: {
    says: 'Ein Zusatz nimmt einen Vorsichtshinweis von Gesetz, Gebrauchsanleitung oder Wasser weg, ganz oder zum Teil.',
    next: 'Behalten Sie die Worte des Pakets und setzen Sie Ihre dahinter, oder fügen Sie einen eigenen Hinweis hinzu.',
  },
  OVERLAY_UNPROVABLE: {
    says: 'Dass eine geschützte Regel so streng bleibt wie zuvor, ließ sich nicht beweisen; deshalb ist der Zusatz abgelehnt.',
    next: 'Behalten Sie die Bedingung des Pakets als ein Glied eines any und stellen Sie Ihre daneben.',
  },
};
