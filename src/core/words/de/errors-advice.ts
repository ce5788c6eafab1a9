/** Advice that several errors share, in German. */
export const adviceOnErrors = {
  byHand: 'Sagen Sie das Wetter in ein paar Fragen selbst an oder sehen Sie später neu nach.',
  report: 'Sagen Sie das Wetter selbst an; geschieht es wieder, melden Sie es dem, der dieses Programm betreibt.',
  reload: 'Laden Sie die Seite neu.',
  mend: 'Berichtigen Sie die genannte Stelle.',
  help: 'Siehe --help des Befehls.',
};
