import type { PhraseTable } from '../phrase-table.ts';

/** What the help of the command line says, in German by the English, `{}` for what is put in. */
export const helpWords: PhraseTable = {
  'does today suit this treatment on this field, and if not, when will it?':
    'Passt der heutige Tag auf diesem Feld für diese Behandlung, und wenn nicht, wann?',
  'options and examples': 'Optionen und Beispiele',
  'the version': 'die Version',
  'It advises; the label in hand, local law and a qualified adviser decide.':
    'Es rät nur; es entscheiden die Gebrauchsanleitung Ihres Mittels, das örtliche Recht und eine Fachberatung.',
  '[options]': '[Optionen]',
  'For example:': 'Zum Beispiel:',
  'Asks about one field in the terminal; answers may come from a pipe.':
    'Fragt im Terminal nach einem Feld; Antworten dürfen aus einer Pipe kommen.',
  "printf '9.2 at 30 cm\\nmoist\\n' | npx loamward ask --field mill-piece":
    "printf '9,2 in 30 cm\\nfeucht\\n' | npx loamward ask --field mill-piece",
  'Builds the page into dist/web.': 'Baut die Seite nach dist/web.',
  'Judges a file of facts once: spray today, wait or do not spray.':
    'Beurteilt eine Datei mit Angaben einmal: heute spritzen, warten oder nicht spritzen.',
  'Checks the files of a treatment pack and says what is wrong where, why, and how to mend it.':
    'Prüft die Dateien eines Regelpakets und sagt, was wo falsch ist, warum, und was abhilft.',
  'Prints what each rule of a treatment pack says, made from its structure and not from its own words.':
    'Schreibt, was jede Regel eines Regelpakets sagt: aus ihrem Aufbau und nicht aus ihren eigenen Worten.',
  'Changes each limit, operator and connective of a pack and shows which changes no case notices.':
    'Ändert jede Grenze, jeden Operator und jede Verknüpfung eines Regelpakets und zeigt, welche Änderungen kein Prüffall bemerkt.',
  'Serves the page on this machine; npm start is the same.':
    'Stellt die Seite auf diesem Rechner bereit; npm start tut dasselbe.',
  'Says what the chat would take from a text, and what it would ask again.':
    'Sagt, was das Gespräch einem Text entnimmt und wonach es noch einmal fragt.',
  '{}, {}, {} (invented), or own': '{}, {}, {} (erfunden), oder own für ein eigenes',
  'language of what is said: {}; that of the system without it': 'Sprache der Ausgabe: {}; ohne Angabe die des Systems',
  'language of the text; that of the system without it': 'Sprache des Textes; ohne Angabe die des Systems',
  'print the last state of the conversation as JSON': 'den letzten Stand des Gesprächs als JSON schreiben',
  'print one JSON object': 'ein JSON-Objekt schreiben',
  'print the address as JSON': 'die Adresse als JSON schreiben',
  'say it as JSON': 'es als JSON schreiben',
  'print the whole answer as JSON': 'die ganze Antwort als JSON schreiben',
  'print the findings as JSON': 'die Befunde als JSON schreiben',
  'print the findings as GitHub-style annotations': 'die Befunde als Anmerkungen nach Art von GitHub schreiben',
  'check again on every change': 'bei jeder Änderung neu prüfen',
  'day on which the limits must hold; today (UTC) without it':
    'Tag, an dem die Grenzen gelten müssen; ohne Angabe heute (UTC)',
  'folder under rules/, or a path ({})': 'Ordner unter rules/, oder ein Pfad ({})',
  'treatment pack, by id or path; asked for where there are several':
    'Regelpaket, mit Kennung oder Pfad; gefragt wird, wo es mehrere gibt',
  'flat JSON object of fact ids and values; - for standard input':
    'flaches JSON-Objekt aus Kennungen und Werten; - für die Standardeingabe',
  'forecast as JSON: the service’s reply or our own form':
    'Vorhersage als JSON: die Antwort des Dienstes oder unsere eigene Form',
  'when that forecast was fetched, where the file does not say':
    'wann die Vorhersage abgerufen wurde, wo die Datei es nicht sagt',
  'moment asked about, ISO 8601 with its offset; now without it':
    'Zeitpunkt, nach dem gefragt ist, ISO 8601 mit Abstand zur Weltzeit; ohne Angabe jetzt',
  'local rules laid over the pack: a file, or a folder of such files; may be repeated':
    'örtliche Regeln, die über das Paket gelegt werden: eine Datei oder ein Ordner solcher Dateien; mehrmals erlaubt',
  'what the answer would be if; may be repeated': 'was die Antwort wäre, wenn; mehrmals erlaubt',
  'with --json: the days ahead, windows, what would have to change':
    'mit --json: die kommenden Tage, Zeitfenster, und was sich ändern müsste',
  'what a person typed or spoke': 'was jemand getippt oder gesprochen hat',
  'the fact that the open question asks for': 'die Angabe, nach der die offene Frage fragt',
  'the fact spoken of before, which a correction means':
    'die Angabe, von der vorher die Rede war und die eine Berichtigung meint',
  'Puts practice days, one by one: decide first, then see what the rules say and by how much.':
    'Legt Übungstage vor, einen nach dem andern: erst entscheiden, dann sehen, was die Regeln sagen und wie knapp es ist.',
  'days of real weather, as loamward practice days writes them':
    'Tage mit echtem Wetter, wie loamward practice days sie schreibt',
  'file to which every answer is added; it is read first':
    'Datei, an die jede Antwort angefügt wird; sie wird zuerst gelesen',
  'other days for another number': 'andere Tage für eine andere Zahl',
  'one day only': 'nur ein Tag',
  'Writes a set of practice days from one season of recorded weather.':
    'Schreibt einen Satz Übungstage aus einer Saison aufgezeichneten Wetters.',
  'folder of daily tables of weather stations': 'Ordner mit Tagestabellen von Wetterstationen',
  'station to take; the first that has the season without it':
    'Station, die genommen wird; ohne Angabe die erste, die diese Saison hat',
  'year in which the season opened': 'Jahr, in dem die Saison begann',
  'flat JSON object of what holds on the field all season':
    'flaches JSON-Objekt mit dem, was auf dem Schlag die ganze Saison gilt',
  'file to write': 'Datei, die geschrieben wird',
  'Prints a one-page card for the cab: limits, hand test, cautions.':
    'Druckt eine Karte für die Kabine auf einer Seite: Grenzen, Handprobe, Vorsicht.',
  'Says in what two rule sets differ, and which verdicts change on cases, near limits, and through seasons.':
    'Sagt, worin sich zwei Regelsätze unterscheiden und welche Urteile sich auf Prüffällen, nahe den Grenzen und durch Saisons ändern.',
  'local rules laid over A; may be repeated': 'örtliche Regeln, die über A gelegt werden; mehrmals erlaubt',
  'local rules laid over B; may be repeated': 'örtliche Regeln, die über B gelegt werden; mehrmals erlaubt',
  'events of earlier conversations, as page or server save them':
    'Ereignisse früherer Gespräche, wie Seite oder Server sie speichern',
  'day whose limits hold through all seasons; today without it':
    'Tag, dessen Grenzen für alle Saisons gelten; ohne Angabe heute',
  'draws the seasons into this file as SVG, with a table beside it':
    'zeichnet die Saisons als SVG in diese Datei, mit einer Tabelle daneben',
  'Begins a treatment pack: a folder with a working example of each file, every limit invented and to be replaced.':
    'Beginnt ein Regelpaket: ein Ordner mit einem Beispiel jeder Datei, das schon läuft; jeder Grenzwert ist erfunden und zu ersetzen.',
  'folder to write into; rules/ID without it': 'Ordner, in den geschrieben wird; ohne Angabe rules/ID',
  'name of the treatment as people read it': 'Name der Behandlung, wie man ihn liest',
  'common name of the active, in lower case with hyphens':
    'Kurzname des Wirkstoffs, klein geschrieben und mit Bindestrichen',
  'crop that is treated': 'Kultur, die behandelt wird',
  'languages of its texts, such as en,de; all that there are without it':
    'Sprachen der Texte, zum Beispiel en,de; ohne Angabe alle',
  'Puts a treatment pack into one file with its content hash; every command takes such a file.':
    'Legt ein Regelpaket mit seiner Prüfsumme in eine Datei; jeder Befehl nimmt eine solche Datei.',
};
