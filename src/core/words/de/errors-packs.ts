import type { ErrorWordsOf } from '../errors.ts';
import { adviceOnErrors as next } from './errors-advice.ts';

/** Errors of pack files and of the command line, in German. */
export const packErrors: ErrorWordsOf = {
  COMMAND_UNKNOWN: { says: 'Diesen Befehl gibt es nicht.', next: 'Siehe loamward --help.' },
  OPTION_UNKNOWN: { says: 'Diese Option gibt es nicht.', next: next.help },
  OPTION_VALUE: { says: 'Eine Option hat keinen Wert oder einen, den sie nicht haben kann.', next: next.help },
  FILE_UNREADABLE: {
    says: 'Eine Datei konnte nicht gelesen werden.',
    next: 'Prüfen Sie, ob sie da ist und gelesen werden darf.',
  },
  PACK_ONE_FILE_WRONG: {
    says: 'Die Datei ist kein Regelpaket in einer Datei.',
    next: 'Nehmen Sie die Datei, die `loamward rules pack` gemacht hat, oder den Ordner des Pakets. Ein Zusatz wird verschickt, wie er ist, und mit --overlay genannt.',
  },
  PACK_HASH_MISFIT: {
    says: 'Das Regelpaket in einer Datei wurde geändert, nachdem es gemacht war.',
    next: 'Bitten Sie noch einmal um die Datei. Wer die Änderung will, macht sie im Ordner und packt ihn neu.',
  },
  WEATHER_FILE_WRONG: {
    says: 'Eine Datei täglicher Wetteraufzeichnungen hat nicht die Form, die gelesen wird.',
    next: 'Berichtigen Sie die genannte Stelle; docs/adviser.md zeigt die Form (englisch).',
  },
  FILE_NOT_JSON: { says: 'Eine Datei ist kein JSON.', next: next.mend },
  FILE_KEY_REPEATED: {
    says: 'Eine Datei nennt einen Schlüssel zweimal.',
    next: 'Lassen Sie den weg, der nicht stimmt.',
  },
  PACK_FOLDER_TAKEN: {
    says: 'Der Ordner für ein neues Regelpaket enthält schon etwas, und nichts davon wird überschrieben.',
    next: 'Geben Sie eine andere Kennung, oder nennen Sie mit --in einen leeren Ordner.',
  },
  PACK_NOT_WRITTEN: {
    says: 'Die Dateien eines neuen Regelpakets konnten nicht geschrieben werden.',
    next: 'Nennen Sie mit --in einen Ordner, in den Sie schreiben dürfen.',
  },
  PACK_UNKNOWN: {
    says: 'Ein Regelpaket dieses Namens gibt es nicht.',
    next: 'Nennen Sie einen Ordner unter rules/ oder einen Pfad.',
  },
  MOMENT_UNREADABLE: {
    says: 'Der Zeitpunkt war nicht zu lesen.',
    next: 'Schreiben Sie ihn nach ISO 8601 mit Abstand zur Weltzeit, zum Beispiel 2026-11-06T09:00Z.',
  },
  PRACTICE_FILE_MISFIT: {
    says: 'Eine Datei mit Übungstagen oder Antworten hat nicht die Form, die sie haben muss.',
    next: 'Lassen Sie sie mit loamward practice days neu machen, oder nennen Sie eine andere Datei.',
  },
  BUILD_FAILED: {
    says: 'Die Seite konnte nicht gebaut werden.',
    next: 'Rufen Sie npm ci auf und versuchen Sie es noch einmal.',
  },
  PORT_TAKEN: {
    says: 'Der Server konnte dort nicht lauschen.',
    next: 'Setzen Sie LOAMWARD_PORT auf einen freien Port oder auf 0 für irgendeinen.',
  },
  UNEXPECTED: {
    says: 'Etwas ist fehlgeschlagen, das nicht hätte fehlschlagen dürfen.',
    next: 'Spritzen Sie nicht auf diese Antwort hin; melden Sie es und was Sie getan haben.',
  },
  RULES_FILE_UNREADABLE: {
    says: 'Eine Datei des Pakets konnte nicht gelesen werden.',
    next: 'Prüfen Sie, ob die Datei da ist und gelesen werden darf.',
  },
  RULES_NOT_JSON: { says: 'Eine Datei des Pakets ist kein JSON.', next: next.mend },
  RULES_KEY_REPEATED: {
    says: 'Ein Schlüssel steht zweimal in einem Objekt, und nur der letzte würde zählen.',
    next: 'Entfernen Sie einen von beiden oder nennen Sie ihn um.',
  },
  PACK_FILE_MISSING: { says: 'Dem Paket fehlt eine Datei.', next: 'Fügen Sie die genannte Datei hinzu.' },
  PACK_FILE_UNEXPECTED: {
    says: 'Eine Datei gehört nicht zu einem Paket.',
    next: 'Nennen Sie sie um oder nehmen Sie sie aus dem Ordner.',
  },
  PACK_KEY_UNKNOWN: {
    says: 'Ein Schlüssel gehört nicht hierher.',
    next: 'Entfernen Sie ihn oder berichtigen Sie seine Schreibung.',
  },
  PACK_KEY_MISSING: { says: 'Ein Schlüssel fehlt.', next: 'Fügen Sie ihn hinzu.' },
  PACK_VALUE_WRONG: { says: 'Ein Wert hat die falsche Form.', next: 'Geben Sie ihn in der erwarteten Form an.' },
  PACK_ID_REPEATED: {
    says: 'Eine Kennung ist zweimal vergeben.',
    next: 'Geben Sie einem von beiden eine andere Kennung.',
  },
  PACK_LANGUAGE_MISSING: {
    says: 'Einem Text fehlt eine Sprache des Pakets.',
    next: 'Geben Sie den Text in jeder Sprache an, die pack.json nennt, und in keiner anderen.',
  },
  CONDITION_MALFORMED: {
    says: 'Eine Bedingung gehört nicht zur Sprache der Bedingungen.',
    next: 'Schreiben Sie eine Gruppe, einen Verweis oder eine Angabe mit einem Operator.',
  },
  CONDITION_EMPTY: {
    says: 'Eine Gruppe hat zu wenige Glieder; eine leere Gruppe wäre immer erfüllt.',
    next: 'Fügen Sie ein Glied hinzu oder entfernen Sie die Gruppe.',
  },
  CONDITION_TOO_DEEP: {
    says: 'Gruppen sind zu tief geschachtelt, um vorgelesen zu werden.',
    next: 'Machen Sie aus dem inneren Teil eine eigene Regel und nennen Sie sie mit "rule".',
  },
  CONDITION_EITHER_OF_MISFIT: {
    says: 'Ein eitherOf zählt nicht verschiedene Wege auf, dasselbe zu wissen.',
    next: 'Zählen Sie Vergleiche auf, jeden mit einer anderen Angabe; für alles andere nehmen Sie any.',
  },
  RULE_LIFTS_WRONG: {
    says: 'Eine Regel sagt nicht richtig, was sie aufhebt.',
    next: 'Geben Sie jedem stop und hold "lifts" und einen Satz "lift", einem Rat keines von beiden.',
  },
  RULE_FACT_UNKNOWN: {
    says: 'Eine Angabe dieses Namens gibt es nicht.',
    next: 'Nehmen Sie einen Namen aus docs/facts.md.',
  },
  RULE_OPERATOR_MISFIT: {
    says: 'Dieser Operator passt nicht zu dieser Angabe.',
    next: 'Nehmen Sie einen Operator für die Art der Angabe.',
  },
  RULE_CHOICE_UNKNOWN: {
    says: 'Diese Auswahl gibt es für die Angabe nicht.',
    next: 'Nehmen Sie eine, die das Verzeichnis aufführt.',
  },
  RULE_NUMBER_INSIDE: {
    says: 'In einer Regel steht eine Zahl.',
    next: 'Setzen Sie die Zahl mit Einheit, Quelle und Grund unter die Parameter (parameters.json oder die des Zusatzes) und nennen Sie hier den Parameter.',
  },
  RULE_PARAMETER_UNKNOWN: {
    says: 'Einen Parameter dieses Namens hat das Paket nicht.',
    next: 'Fügen Sie ihn in parameters.json hinzu oder berichtigen Sie seine Schreibung.',
  },
  RULE_REFERENCE_MISSING: {
    says: 'Eine Bedingung nennt eine Regel, die es nicht gibt.',
    next: 'Berichtigen Sie die Kennung oder fügen Sie die Regel hinzu.',
  },
  RULE_REFERENCE_CYCLE: {
    says: 'Regeln nennen einander im Kreis.',
    next: 'Brechen Sie den Kreis bei einer der genannten Regeln.',
  },
  RULE_PLACEHOLDER_UNKNOWN: {
    says: 'Ein Text hat einen Platzhalter für etwas, das die Regel nicht liest.',
    next: 'Nehmen Sie eine Angabe oder einen Parameter dieser Regel oder schlichte Worte.',
  },
  PARAMETER_MISSING: {
    says: 'Ein Parameter, der gebraucht wird, hat an diesem Tag keinen Wert.',
    next: 'Fügen Sie ihn mit value, unit, source, why und validFrom in parameters.json hinzu.',
  },
  PARAMETER_VALUE_WRONG: {
    says: 'Ein Parameter hat einen Wert, der nicht zu seiner Einheit passt.',
    next: 'Geben Sie eine endliche Zahl an, einen Tag des Jahres als MM-TT mit Einheit month-day oder eine Liste mit Einheit list.',
  },
  PARAMETER_UNIT_MISFIT: {
    says: 'Ein Parameter hat eine andere Einheit als das, womit er verglichen wird.',
    next: 'Rechnen Sie den Wert um und nennen Sie die Einheit der Angabe.',
  },
  PARAMETER_UNUSED: {
    says: 'Ein Parameter wird von keiner Regel und nicht vom Programm gelesen.',
    next: 'Entfernen Sie ihn oder verwenden Sie ihn in einer Regel.',
  },
  FACT_TOO_COARSE: {
    says: 'Die Angabe wird nicht zehnmal feiner geführt als die letzte Stelle dieser Grenze.',
    next: 'Nennen Sie die Grenze mit weniger Nachkommastellen oder lassen Sie die Angabe im Verzeichnis feiner führen.',
  },
  PACK_FACT_BUILT_IN: {
    says: 'Ein Regelpaket gibt eine Angabe, die schon eingebaut ist.',
    next: 'Nehmen Sie eine andere Kennung, oder lassen Sie den Eintrag weg: Die eingebaute Angabe lässt sich so lesen, wie sie ist.',
  },
  PACK_FACT_MISFIT: {
    says: 'Die Teile einer Angabe des Regelpakets passen nicht zueinander.',
    next: 'Geben Sie die Teile an, die ihr Typ braucht; siehe docs/packs.md.',
  },
  PACK_FACT_UNUSED: {
    says: 'Eine Angabe des Regelpakets wird von keiner Regel und keiner Frage gelesen.',
    next: 'Entfernen Sie sie, oder lesen Sie sie.',
  },
  CHOICE_STRADDLES_LIMIT: {
    says: 'Eine angebotene Antwort liegt auf beiden Seiten einer Grenze und würde nichts klären.',
    next: 'Teilen Sie die Antwort in zwei, eine auf jeder Seite der Grenze; ein Zusatz schreibt dazu die ganze Frage ab.',
  },
  QUESTION_MISFIT: {
    says: 'Eine Frage oder Antwort passt nicht zu den Angaben, die sie klärt.',
    next: 'Passen Sie die Ablesungen den Arten in docs/facts.md an.',
  },
  QUESTION_PICTURE_UNKNOWN: {
    says: 'Eine Frage nennt eine Zeichnung, die es nicht gibt.',
    next: 'Nehmen Sie eine der aufgeführten Zeichnungen oder lassen Sie das Bild weg.',
  },
  CASE_MISFIT: {
    says: 'Ein Prüffall nennt etwas, das es nicht gibt, oder keinen Tag.',
    next: 'Nehmen Sie Namen aus docs/facts.md und Kennungen der Regeln dieses Pakets, und geben Sie jedem Prüffall seinen Tag.',
  },
};
