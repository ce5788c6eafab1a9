import type { ErrorWordsOf } from '../errors.ts';
import { adviceOnErrors as next } from './errors-advice.ts';

/** Errors of the chat and the server, in German. */
export const serverErrors: ErrorWordsOf = {
  MESSAGE_NOT_JSON: { says: 'Die Nachricht ist kein JSON-Objekt.', next: next.reload },
  MESSAGE_TYPE_UNKNOWN: { says: 'Eine Nachricht dieser Art kennt das Protokoll nicht.', next: next.reload },
  MESSAGE_FIELD_WRONG: { says: 'Ein Feld der Nachricht ist nicht so, wie das Protokoll es hat.', next: next.reload },
  MESSAGE_NOT_TEXT: {
    says: 'Die Nachricht kam als Bytes; das Protokoll kennt nur Text.',
    next: 'Senden Sie ein JSON-Objekt als Text.',
  },
  MESSAGE_BAD_TEXT: { says: 'Die Nachricht ist kein gültiges UTF-8.', next: next.reload },
  MESSAGE_BAD_FRAME: { says: 'Eine Nachricht verletzt die Norm der Verbindung.', next: next.reload },
  MESSAGE_IN_PIECES: {
    says: 'Die Nachricht kam in mehr Teilen, als der Server annimmt.',
    next: 'Senden Sie eine Nachricht am Stück.',
  },
  MESSAGE_TOO_LARGE: {
    says: 'Die Nachricht ist größer, als das Protokoll erlaubt.',
    next: 'Sagen Sie es mit weniger Worten.',
  },
  MESSAGES_TOO_FAST: {
    says: 'Nachrichten kommen schneller, als der Server sie annimmt; diese wurde fallen gelassen.',
    next: 'Warten Sie eine Sekunde und senden Sie sie noch einmal.',
  },
  MESSAGES_FLOOD: {
    says: 'Es kamen immerzu weit mehr Nachrichten, als der Server annimmt.',
    next: 'Warten Sie eine Minute und verbinden Sie sich neu.',
  },
  HELLO_MISSING: { says: 'Die erste Nachricht muss hello sein.', next: next.reload },
  HELLO_TWICE: { says: 'Diese Verbindung hat schon hello gesagt.', next: 'Öffnen Sie eine andere Verbindung.' },
  PROTOCOL_VERSION: {
    says: 'Seite und Server sprechen verschiedene Fassungen des Protokolls.',
    next: next.reload,
  },
  CONVERSATION_GONE: {
    says: 'Das Gespräch ist auf dem Server nicht mehr aufgehoben.',
    next: 'Beginnen Sie neu; alte Gespräche werden nach einigen Tagen gelöscht.',
  },
  CONVERSATION_MISSING: {
    says: 'Es wurde noch kein Gespräch begonnen.',
    next: 'Wählen Sie ein Feld, um zu beginnen.',
  },
  CONVERSATION_FULL: {
    says: 'Das Gespräch ist so lang geworden, wie der Server eines aufhebt.',
    next: 'Öffnen Sie die Seite neu, um ein anderes zu beginnen.',
  },
  TREATMENT_UNKNOWN: {
    says: 'Diese Behandlung gibt es nicht.',
    next: 'Wählen Sie eine der angebotenen Behandlungen.',
  },
  TREATMENT_OTHER: {
    says: 'In diesem Gespräch geht es um eine andere Behandlung.',
    next: 'Beginnen Sie für die Behandlung ein neues Gespräch.',
  },
  FIELD_UNKNOWN: {
    says: 'Dieses Feld gibt es nicht.',
    next: 'Wählen Sie eines der angebotenen Felder oder Ihr eigenes.',
  },
  READER_TOO_SLOW: {
    says: 'Die Antworten wurden nicht abgenommen, darum wurde die Verbindung geschlossen.',
    next: 'Verbinden Sie sich neu; das Gespräch geht weiter, wo es war.',
  },
  SERVER_CLOSING: {
    says: 'Der Server wird heruntergefahren.',
    next: 'Verbinden Sie sich später neu; das Gespräch geht weiter, wo es war, wenn der Server es noch hat.',
  },
  SERVER_FAULT: {
    says: 'Auf dem Server ist etwas fehlgeschlagen; die Nachricht hatte keine Wirkung.',
    next: 'Spritzen Sie nicht auf eine Antwort hin, die nicht kam; senden Sie sie noch einmal.',
  },
  ORIGIN_REFUSED: {
    says: 'Das Gespräch lässt sich nur von den Seiten dieses Servers öffnen.',
    next: 'Öffnen Sie die Seite unter der Adresse des Servers oder nennen Sie die Adresse in LOAMWARD_ORIGINS.',
  },
  CONNECTIONS_FULL: {
    says: 'Der Server hat so viele Verbindungen, wie er annimmt.',
    next: 'Versuchen Sie es später noch einmal.',
  },
  CONNECTIONS_FULL_HERE: {
    says: 'Von dieser Adresse gibt es so viele Verbindungen, wie der Server annimmt.',
    next: 'Schließen Sie andere Seiten dieses Programms und versuchen Sie es noch einmal.',
  },
  UPGRADE_NEEDED: { says: 'Diese Adresse spricht nur Websocket.', next: 'Öffnen Sie stattdessen die Seite.' },
  ROUTE_UNKNOWN: { says: 'Unter dieser Adresse ist nichts.', next: 'Öffnen Sie die Seite unter /.' },
  REQUEST_WRONG: { says: 'Die Anfrage war nicht zu lesen.', next: 'Öffnen Sie die Seite unter /.' },
  PAGE_NOT_BUILT: {
    says: 'Die Seite ist nicht gebaut.',
    next: 'Rufen Sie npm run build auf und starten Sie den Server neu.',
  },
  SETTING_WRONG: {
    says: 'Eine Einstellung des Servers hat nicht die rechte Form.',
    next: 'Berichtigen Sie die genannte Einstellung; docs/operator.md führt alle auf.',
  },
  TOKEN_MISSING: {
    says: 'Die Anfrage sagt nicht, um welches Gespräch es geht.',
    next: 'Senden Sie das Kennwort des Gesprächs in der Kopfzeile Authorization.',
  },
  EVENTS_UNREADABLE: {
    says: 'Was übergeben wurde, war nicht zu lesen.',
    next: 'Nichts davon wurde angenommen; es bleibt auf dem Gerät. Laden Sie die Seite neu und versuchen Sie es noch einmal.',
  },
  EVENTS_TOO_LARGE: {
    says: 'Es wurde mehr auf einmal übergeben, als der Server annimmt.',
    next: 'Übergeben Sie es in kleineren Teilen; was schon angenommen wurde, ist aufgehoben.',
  },
  REQUESTS_TOO_FAST: {
    says: 'Anfragen kommen schneller, als der Server sie annimmt.',
    next: 'Warten Sie eine Minute und versuchen Sie es noch einmal; nichts ist verloren.',
  },
  HAND_OVER_NOTHING: {
    says: 'Es steht keine Antwort, die übergeben werden könnte.',
    next: 'Beantworten Sie die offene Frage oder sehen Sie neu nach und übergeben Sie, was dann kommt.',
  },
  SHOWN_GONE: {
    says: 'Unter dieser Adresse wird nichts gezeigt: es ist abgelaufen, zurückgenommen oder war nie da.',
    next: 'Spritzen Sie nicht auf eine Antwort hin, die nicht zu lesen ist; bitten Sie um eine neue.',
  },
  VERDICT_NOT_REPEATED: {
    says: 'Eine übergebene Antwort folgt nicht aus den Angaben, die mit ihr festgehalten sind.',
    next: 'Spritzen Sie nicht darauf hin. Sehen Sie neu nach; das Gerät hebt auf, was gesagt wurde.',
  },
};
