/** What errors of a pack's own facts expected and got: German by the English phrase, `{}` for what was put in. */
export const packFactPhrases: Readonly<Record<string, string>> = {
  '`forecast` just where `obtained` names it': '`forecast` genau dort, wo `obtained` sie nennt',
  '`{}` for type {}': '`{}` zum Typ {}',
  'no `{}` for type {}': 'kein `{}` zum Typ {}',
  'a fact in {}': 'eine Angabe in {}',
  'a fact of type number': 'eine Angabe vom Typ number',
  'a rule or question that reads it': 'eine Regel oder Frage, die sie liest',
  'a span within the range': 'eine Spanne innerhalb des Bereichs',
  'a sum of rain alone': 'eine Summe allein von Regen',
  'an id that no fact built in has': 'eine Kennung, die keine eingebaute Angabe hat',
  'each choice once': 'jede Auswahl einmal',
  'each fact id once': 'jede Kennung einer Angabe einmal',
  'lowest, then highest': 'der niedrigste, dann der höchste Wert',
  'min, max, sum or mean of the hours': 'min, max, sum oder mean der Stunden',
  'value of the hour': 'value der Stunde',
  'the id of a parameter in {}': 'die Kennung eines Parameters in {}',
  '{}, {}, {}, *.rules.json, cases/*.json, overlays/ or CHANGELOG.md':
    '{}, {}, {}, *.rules.json, cases/*.json, overlays/ oder CHANGELOG.md',
};
