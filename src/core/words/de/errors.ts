import type { ErrorWordsOf } from '../errors.ts';
import { adviceOnErrors as next } from './errors-advice.ts';
import { analysisErrors } from './errors-analysis.ts';
import { overlayErrors } from './errors-overlays.ts';
import { packErrors } from './errors-packs.ts';
import { serverErrors } from './errors-server.ts';

const weitersagen = 'Melden Sie das mit den Angaben; spritzen Sie nicht auf diese Antwort hin.';

/** What each code of the error table says and advises, in German. */
export const errorWords: ErrorWordsOf = {
  ...packErrors,
  ...analysisErrors,
  ...overlayErrors,
  ...serverErrors,
  UNIT_INCOMPATIBLE: {
    says: 'Diese beiden Einheiten messen nicht dasselbe.',
    next: 'Geben Sie den Wert in einer passenden Einheit an.',
  },
  SCIENCE_OUT_OF_RANGE: {
    says: 'Ein Wert liegt außerhalb des Bereichs, in dem die Formel gilt.',
    next: 'Prüfen Sie den Wert und seine Einheit.',
  },
  FACT_UNKNOWN_ID: {
    says: 'Es gibt keine Angabe dieses Namens.',
    next: 'Nehmen Sie einen Namen aus docs/facts.md.',
  },
  FACT_WRONG_TYPE: {
    says: 'Der Wert ist nicht von der Art, die diese Angabe hat.',
    next: 'Sehen Sie die Angabe in docs/facts.md nach.',
  },
  FACT_OUT_OF_RANGE: {
    says: 'Diesen Wert kann es nicht geben.',
    next: 'Prüfen Sie die Zahl und ihre Einheit und geben Sie sie noch einmal an.',
  },
  FACT_BAND_WRONG: {
    says: 'Die Spanne schließt den Wert nicht ein.',
    next: 'Geben Sie Untergrenze, Wert und Obergrenze in steigender Folge an.',
  },
  FACT_CHOICE_UNKNOWN: {
    says: 'Diese Auswahl gibt es für die Angabe nicht.',
    next: 'Nehmen Sie eine der aufgezählten.',
  },
  FACT_DATE_OTHER_DAY: {
    says: 'Das angegebene Datum ist nicht der Tag, nach dem gefragt ist.',
    next: 'Lassen Sie eines von beiden weg oder bringen Sie beide in Übereinstimmung.',
  },
  FACTS_NOT_AN_OBJECT: {
    says: 'Angaben sind ein flaches JSON-Objekt aus Namen und Werten.',
    next: 'Ein Beispiel steht in docs/facts.md.',
  },
  ZONE_UNKNOWN: {
    says: 'Diese Zeitzone gibt es nicht.',
    next: 'Geben Sie den IANA-Namen der Zeitzone an, in der das Feld liegt.',
  },
  EVALUATORS_DISAGREE: {
    says: 'Die beiden Auswerter sind sich bei einer Regel nicht einig, darum gibt es keine Antwort.',
    next: weitersagen,
  },
  EVALUATION_INCOMPLETE: {
    says: 'Nicht jede Regel wurde ausgewertet, darum gibt es keine Antwort.',
    next: weitersagen,
  },
  FACT_MALFORMED: {
    says: 'Eine Angabe hat nicht die rechte Form, darum gibt es keine Antwort.',
    next: weitersagen,
  },
  EVENT_CHANGED: {
    says: 'Ein Ereignis mit dieser Kennung gibt es schon mit anderem Inhalt.',
    next: 'Öffnen Sie die Seite neu; was zuerst gesagt wurde, bleibt.',
  },
  CONVERSATION_OTHER_RULES: {
    says: 'Das Gespräch wurde unter anderen Regeln begonnen als den vorliegenden.',
    next: 'Beginnen Sie ein neues Gespräch, um unter den neuen Regeln nachzusehen.',
  },
  QUESTION_UNKNOWN: {
    says: 'Eine Frage dieses Namens gibt es nicht.',
    next: 'Beantworten Sie die Frage, die gezeigt wird.',
  },
  ANSWER_MISFIT: {
    says: 'Die Antwort gehört nicht zur Frage.',
    next: 'Nehmen Sie eine der gezeigten Antworten oder sagen Sie es mit eigenen Worten.',
  },
  DEPTH_NOT_30CM: {
    says: 'Die Bodentemperatur wurde in anderer Tiefe abgelesen.',
    next: 'Stecken Sie das Thermometer 30 cm tief, warten Sie fünf Minuten und lesen Sie dort ab.',
  },
  DEPTH_NEEDS_HOUR: {
    says: 'Eine Bodentemperatur aus anderer Tiefe sagt nur mit der Uhrzeit der Ablesung etwas über 30 cm.',
    next: 'Um wie viel Uhr haben Sie abgelesen? Sagen Sie es noch einmal mit der Uhrzeit („7 in 10 cm um 15 Uhr“ oder „7 in 10 cm gerade eben“) oder lesen Sie in 30 cm ab.',
  },
  READING_STUCK: {
    says: 'Tagelang wurde dieselbe Bodentemperatur abgelesen, wie von einem Fühler, der stehen geblieben ist; darum ist die Spanne weiter.',
    next: 'Prüfen Sie das Thermometer an einem anderen und lesen Sie noch einmal ab.',
  },
  READING_IN_FUTURE: {
    says: 'Die Ablesung soll zu einer Zeit gewesen sein, die noch nicht da ist.',
    next: 'Sagen Sie noch einmal, wann abgelesen wurde, mit Uhrzeit und Tag.',
  },
  FORECAST_UNREACHABLE: {
    says: 'Der Vorhersagedienst war nicht zu erreichen.',
    next: `Prüfen Sie die Verbindung. ${next.byHand}`,
  },
  FORECAST_SLOW: { says: 'Der Vorhersagedienst hat nicht rechtzeitig geantwortet.', next: next.byHand },
  FORECAST_BUSY: {
    says: 'Der Vorhersagedienst hatte zu viele Anfragen und bittet zu warten.',
    next: 'Warten Sie eine Weile, bevor Sie neu nachsehen; bis dahin sagen Sie das Wetter selbst an.',
  },
  FORECAST_REJECTED: {
    says: 'Der Vorhersagedienst hat die Anfrage abgelehnt.',
    next: 'Sagen Sie das Wetter selbst an; wer dieses Programm betreibt, sollte die Einstellungen der Vorhersage prüfen (docs/forecast.md).',
  },
  FORECAST_DOWN: { says: 'Der Vorhersagedienst ist außer Betrieb.', next: next.byHand },
  FORECAST_GARBLED: {
    says: 'Die Vorhersage kam in einer Form, der nicht zu trauen ist; nichts davon wird verwendet.',
    next: next.byHand,
  },
  FORECAST_INCOMPLETE: {
    says: 'Der Vorhersage fehlt etwas von dem Wetter, das die Entscheidung braucht.',
    next: 'Sagen Sie das Fehlende selbst an; fehlendes Wetter gilt nie als trocken oder windstill.',
  },
  FORECAST_WRONG_UNIT: {
    says: 'Die Vorhersage gibt einen Wert in anderer Einheit als verlangt; sie wird nicht verwendet.',
    next: next.report,
  },
  FORECAST_WRONG_PLACE: {
    says: 'Die Vorhersage gilt für einen Ort, der zu weit vom Feld entfernt ist.',
    next: 'Prüfen Sie Breite und Länge des Feldes; bis dahin sagen Sie das Wetter selbst an.',
  },
  FORECAST_TOO_OLD: {
    says: 'Die Vorhersage ist zu alt, um danach zu entscheiden.',
    next: 'Holen Sie sie neu oder sagen Sie das Wetter selbst an.',
  },
  FORECAST_FETCHED_LATER: {
    says: 'Die Vorhersage wurde nach dem Zeitpunkt geholt, nach dem gefragt ist; sie gilt dann als neu und weiß mehr, als man wissen konnte.',
    next: 'Fragen Sie nach einem Zeitpunkt nach dem Holen oder geben Sie die Vorhersage, die es damals gab.',
  },
  FORECAST_OUT_OF_HORIZON: {
    says: 'Die Vorhersage reicht nicht bis zu der Zeit, nach der gefragt ist.',
    next: 'Fragen Sie nach einer Zeit, die die Vorhersage abdeckt, oder sagen Sie das Wetter selbst an.',
  },
  FORECAST_OFF: {
    says: 'Die Vorhersage ist auf diesem Rechner ausgeschaltet.',
    next: 'Sagen Sie das Wetter selbst an oder lassen Sie LOAMWARD_FORECAST auf on setzen.',
  },
  FORECAST_SETTING_WRONG: {
    says: 'Eine Einstellung der Vorhersage hat nicht die rechte Form.',
    next: 'Berichtigen Sie die genannte Einstellung; docs/forecast.md führt alle auf.',
  },
  FORECAST_FILE_UNREADABLE: {
    says: 'Der Text ist keine Vorhersage, die dieses Programm lesen kann.',
    next: 'Geben Sie die JSON-Antwort des Vorhersagedienstes unverändert oder eine von diesem Programm gespeicherte Vorhersage (docs/forecast.md).',
  },
};
