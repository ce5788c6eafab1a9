import type { PageWords } from '../types.ts';

/** Screen, sound, speech and language, in German. */
export const comfort: PageWords['comfort'] = {
  heading: 'Sprache, Anzeige, Ton und Sprechen',
  open: 'Einstellungen',
  language: 'Sprache',
  look: 'Wie die Seite aussieht',
  looks: { device: 'Wie das Gerät', day: 'Tag', night: 'Nacht', sun: 'Starke Sonne' },
  voice: 'Ton und Sprechen',
  buzz: {
    label: 'Bei einer Antwort vibrieren',
    help: 'Einmal lang für heute spritzen, zweimal kurz für warten, dreimal lang für nicht spritzen.',
    cannot: 'Dieses Gerät kann nicht vibrieren.',
  },
  readsAloud: {
    label: 'Fragen und Antworten vorlesen',
    help: 'Manche Browser senden den Text an einen Sprachdienst ihres Herstellers.',
    cannot: 'Dieser Browser kann nicht vorlesen.',
  },
  listens: {
    label: 'Sprechen statt tippen',
    help: 'Manche Browser senden, was Sie sagen, an einen Dienst ihres Herstellers, der es in Text umsetzt. Dafür braucht es dort eine Verbindung.',
    cannot:
      'Dieser Browser kann hier nicht zuhören. Browser erlauben das nur auf https-Seiten; das Mikrofon der Tastatur geht vielleicht.',
  },
  sendsHeard: {
    label: 'Gehörtes sofort senden',
    help: 'Sonst wartet es im Feld, bis Sie es durchgesehen und gesendet haben.',
    cannot: '',
  },
  kept: 'Nur auf diesem Gerät aufgehoben.',
  readAloud: 'Vorlesen',
  hush: 'Nicht weiterlesen',
  speak: 'Sprechen',
  stopListening: 'Nicht mehr zuhören',
  listening: 'Hört zu…',
  heard: 'Gehört. Sehen Sie es durch, dann drücken Sie Senden.',
  problems: {
    refused:
      'Der Browser hat das Mikrofon nicht freigegeben. Nichts wurde gesendet. Erlauben Sie es in den Einstellungen des Browsers oder tippen Sie.',
    'no-microphone': 'Kein Mikrofon gefunden. Nichts wurde gesendet. Schließen Sie eines an oder tippen Sie.',
    'no-service':
      'Der Browser hat den Dienst nicht erreicht, der Sprache in Text umsetzt. Nichts wurde gesendet. Tippen Sie oder drücken Sie einen Knopf.',
    'heard-nothing':
      'Nichts gehört. Nichts wurde gesendet. Versuchen Sie es näher am Mikrofon noch einmal oder tippen Sie.',
    failed: 'Das Zuhören ist fehlgeschlagen. Nichts wurde gesendet. Versuchen Sie es noch einmal oder tippen Sie.',
  },
};

/** Going on without a signal, in German. */
export const offline: PageWords['offline'] = {
  alone: 'Kein Empfang: diese Seite antwortet selbst, nach denselben Regeln.',
  aloneSlow: 'Der Server antwortet nicht: diese Seite antwortet selbst, nach denselben Regeln.',
  aloneHere: 'Diese Seite antwortet selbst; was Sie sagen, wird auf diesem Gerät aufgehoben.',
  aloneKept: 'Was Sie sagen, wird hier aufgehoben und übergeben, sobald wieder Empfang ist.',
  handingOver: (count) =>
    count === 0
      ? 'Die Verbindung ist wieder da: es wird übergeben…'
      : `Die Verbindung ist wieder da: ${count === 1 ? 'eine Angabe von Ihnen wird' : `${count} Angaben von Ihnen werden`} übergeben…`,
  handedOver: (count) =>
    `Übergeben: ${count === 1 ? 'eine Angabe' : `${count} Angaben`} von Ihnen. Von hier an macht der Server weiter.`,
  can: {
    no: 'Verbunden. Ohne Empfang kann diese Seite noch nicht weitermachen.',
    'while-open': 'Diese Seite kann ohne Empfang weitermachen, solange sie offen bleibt.',
    always: 'Diese Seite kann ohne Empfang weitermachen, auch wenn sie geschlossen und wieder geöffnet wird.',
  },
  full: 'Der Speicher dieses Geräts ist voll. Was vorher aufgehoben wurde, ist sicher; was Sie von jetzt an sagen, bleibt nur, solange diese Seite offen ist. Schaffen Sie Platz auf dem Gerät oder lassen Sie die Seite offen, bis wieder Empfang ist und sie übergeben hat.',
  none: 'Dieser Browser hebt für diese Seite nichts auf (so ist es in einem privaten Fenster). Was Sie sagen, bleibt nur, solange diese Seite offen ist, wenn es nicht an den Server übergeben wird.',
  clockOff: (span, isAhead) =>
    `Die Uhr dieses Geräts geht gegenüber der des Servers um ${span} ${isAhead ? 'vor' : 'nach'}. Uhrzeiten und das Alter der Vorhersage richten sich nach dem Server. Stellen Sie die Uhr des Geräts richtig.`,
  clockSetBack:
    'Die Uhr dieses Geräts wurde seit der letzten Verbindung zurückgestellt. Uhrzeiten können falsch sein, bis wieder Empfang ist: verlassen Sie sich vorher nicht auf das Alter der Vorhersage.',
  span: (days, hours, minutes) =>
    (
      [
        [days, 'Tag', 'Tage'],
        [hours, 'Stunde', 'Stunden'],
        [minutes, 'Minute', 'Minuten'],
      ] as const
    )
      .filter(([count]) => count !== 0)
      .slice(0, 2)
      .map(([count, one, more]) => `${count} ${count === 1 ? one : more}`)
      .join(' '),
  newVersion: 'Eine neue Fassung dieser Seite ist da. Sie gilt nach diesem Gespräch.',
  newVersionFree: 'Eine neue Fassung dieser Seite ist da.',
  useNew: 'Neue Fassung nehmen',
  newRules:
    'Es gibt neuere Regeln. Dieses Gespräch bleibt bei denen, mit denen es begonnen wurde; beginnen Sie auf dem Feld neu, um nach den neuen beurteilt zu werden.',
  staysHere:
    'Der Server hat die Regeln nicht, mit denen dieses Gespräch begonnen wurde. Es bleibt auf diesem Gerät und geht hier weiter; beginnen Sie auf dem Feld neu, um nach den Regeln des Servers beurteilt zu werden.',
  elsewhere: 'Das Gespräch geht in einem anderen Tab oder Fenster dieses Browsers weiter.',
  elsewhereWhy: 'Nur eines schreibt zur selben Zeit, damit nichts doppelt gesagt wird. Alles ist aufgehoben.',
  goOnHere: 'Hier weitermachen',
  conversations: 'Frühere Gespräche',
  conversationsNote: 'Auf diesem Gerät aufgehoben.',
  noVerdict: 'noch keine Antwort',
  saveEvents: 'Gesagtes und Urteile als Datei speichern',
  saveEventsNote:
    'Alles, was dieses Gerät aufhebt, auch Orte und Zeiten: für Ihre Unterlagen, oder für eine Beratung, die daran andere Regeln erprobt.',
  eventsSaved: (count) => `Gespeichert als loamward-events.json: ${count} Ereignisse.`,
  eventsNotSaved: 'Dieses Gerät ließ es nicht lesen. Versuchen Sie es noch einmal.',
  goTo: (field, day) => `${field}, ${day}`,
};

/** Handing an answer over, in German. */
export const handOver: PageWords['handOver'] = {
  heading: 'Diese Antwort drucken, senden oder zeigen',
  share: 'Senden…',
  copy: 'Als Text kopieren',
  save: 'Als Text speichern',
  print: 'Drucken',
  look: 'Ansehen, was übergeben wird',
  linkHeading: 'Ein Link, der sie zeigt',
  linkNote:
    'Wer den Link hat, kann diese Antwort lesen, nicht ändern. Auch was Sie später sagen, ändert sie nicht. Er endet an seinem Tag, oder früher, wenn der Server neu gestartet wird: Drucken oder speichern Sie, was bleiben muss.',
  linkOffline: 'Ein Link braucht eine Verbindung. Drucken, Kopieren und Speichern gehen ohne.',
  makeLink: 'Link anlegen',
  linkBusy: 'Der Link wird angelegt…',
  linkMade: 'Der Link ist angelegt. Kopieren Sie ihn und senden Sie ihn, wem Sie wollen.',
  linkRemoved: 'Zurückgenommen: unter diesem Link wird nichts mehr gezeigt.',
  linkFailed:
    'Der Server war nicht zu erreichen. Nichts wird gezeigt. Versuchen Sie es noch einmal, wenn Empfang ist, oder senden Sie den Text.',
  linkSafe: 'Es wird nichts Neues gezeigt.',
  sendLink: 'Link senden…',
  copyLink: 'Link kopieren',
  removeLink: 'Link zurücknehmen',
  shownUntil: (day) => `gezeigt bis ${day}`,
  sent: {
    shared: 'Dem Gerät zum Senden übergeben.',
    copied: 'Kopiert.',
    saved: 'Unter den Downloads gespeichert.',
    refused: 'Das Gerät hat das nicht getan. Nichts wurde gesendet. Versuchen Sie einen der anderen Wege hier.',
  },
};
