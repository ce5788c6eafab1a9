import { overlayKeys } from './overlay-keys.ts';

const ofFiles = {
  pack: {
    id: 'Id of the pack in kebab case; the same as the name of its folder.',
    version: 'Semantic version: raise it with each change and say in CHANGELOG.md what changed.',
    title: 'Name of the treatment, in every language.',
    scope: 'What is treated against what and where, in one line, in every language.',
    zone: 'IANA time zone of the country, for example Europe/London.',
    active: 'ISO common name of the active, in kebab case.',
    languages: 'ISO 639-1 codes of the languages in which every text is given, the first being the first choice.',
  },
  parameters: {
    parameters: 'Every number, day of the year and list that rules, derivations and ageing read.',
    'parameters[].id': 'Id in camel case, by which rules name it. Twice with different days where the value changes.',
    'parameters[].value':
      'A finite number; with unit month-day a day of the year MM-DD; with unit list a list of texts.',
    'parameters[].unit': 'Unit of the fact that it is compared with; month-day for a day of the year, list for a list.',
    'parameters[].source':
      'Who stands behind the value, as a title or in every language; where nobody does, "common practice, no source".',
    'parameters[].why': 'Why there is such a limit, and why there, in every language.',
    'parameters[].validFrom': 'First day on which it holds, YYYY-MM-DD.',
    'parameters[].validTo': 'Last day on which it holds, YYYY-MM-DD; without it there is no end.',
    'parameters[].tighter': 'Which way lets less through: lower or higher, fewer or more of a list, or neither.',
  },
  facts: {
    facts: 'The facts that are not built in, each once.',
    'facts[].id':
      'Id such as crop.growthStage: a group in lower case, a dot, a name in camel case. None that is built in.',
    'facts[].label': 'Short name for lists, in every language of the pack; lower case in English.',
    'facts[].type': 'number, choice (one of several), signs (several at once) or date.',
    'facts[].unit': 'Unit of a number, as shown; each limit that reads it has the same.',
    'facts[].range': 'Lowest and highest number that can be: outside it a value is refused.',
    'facts[].plausible': 'Lowest and highest usual number: outside it a value is read back once before it is taken.',
    'facts[].choices': 'The choices or signs that there are.',
    'facts[].choices[].id': 'Id in kebab case; yes and no make a question of yes or no.',
    'facts[].choices[].label': 'Its name in every language of the pack; also how it is said when typed.',
    'facts[].precision': 'Step to which a number is kept, at least ten times finer than the last decimal of any limit.',
    'facts[].shownDecimals': 'Decimals shown to people.',
    'facts[].obtained': 'How it comes, best first: asked, forecast.',
    'facts[].goodFor': 'How long what was seen or told stays good.',
    'facts[].scope': 'farm: it holds for every field of the farm; near: for fields nearby for a short while.',
    'facts[].profile': 'True for what is asked once a season and kept with the field.',
    'facts[].noQuestion': 'Why no question asks for it, where none does.',
    'facts[].source': 'Where its meaning and its range come from; where from nowhere, "common practice, no source".',
    'facts[].words': 'Words by which people name it when they type or speak, in every language of the pack.',
    'facts[].forecast': 'How it is taken from the hourly forecast, where obtained names the forecast.',
    'facts[].forecast.variable': 'What of the weather is taken; the unit of the fact is that of the variable.',
    'facts[].forecast.over': 'now, next-night (sunset to sunrise), or the hours ahead that a parameter in h counts.',
    'facts[].forecast.take': 'value with now; else min, max or mean of the hours, or the sum of rain.',
    'facts[].forecast.end': 'The end of the band that stands for all of it where nobody can see it now: low or high.',
  },
  rules: {
    topic: 'Topic of the file in kebab case: its rules are listed together.',
    rules: 'The rules of this topic.',
    'rules[].id': 'Id in kebab case, once in the whole pack.',
    'rules[].effect': 'What it does where it is met: stop = do not spray, hold = wait, advise = changes nothing.',
    'rules[].authority': 'Who stands behind it: law, label, water protection or practice.',
    'rules[].lifts': 'What lifts a stop or hold: hours, days, a person, or the season. Advice has none.',
    'rules[].protected': 'True for a rule of practice that local conditions may only make tighter.',
    'rules[].source':
      'Where the rule comes from, as a title or in every language; where from nowhere, "common practice, no source".',
    'rules[].why': 'What goes wrong where it is not kept, in every language.',
    'rules[].when': 'When it is met: one comparison, one reference to a rule, or one group of them.',
    'rules[].text': 'Its sentences in every language of the pack.',
    'rules[].text.*': 'Its sentences in one language. {fact.id} and {parameterId} are filled with value and unit.',
    'rules[].text.*.title': 'A few words for lists.',
    'rules[].text.*.met': 'One or two sentences said where it is met: what is, and what the limit is.',
    'rules[].text.*.unknown': 'What to find out and how, said where it cannot be judged.',
    'rules[].text.*.lift': 'What lifts it, what to do or watch for. Advice has none.',
  },
  questions: {
    questions: 'What a person can be asked.',
    'questions[].id': 'Id in kebab case, once among the questions.',
    'questions[].facts': 'Ids of the facts that an answer settles.',
    'questions[].form': 'How it is answered: a number, one of several answers, a checklist of signs, or a place.',
    'questions[].effortSeconds': 'How long it takes to find out, seconds: the cheapest useful question comes first.',
    'questions[].group': 'What it is about; of two equally useful the earlier group comes first.',
    'questions[].forDose': 'True where it is asked for the dose only, never for the verdict.',
    'questions[].with': 'Ids of questions that are asked together with it where they are open too.',
    'questions[].picture': 'Drawing that shows how to find out.',
    'questions[].choices': 'The answers offered. "I do not know" is always offered and needs no entry.',
    'questions[].choices[].id': 'Id in kebab case, once in the question.',
    'questions[].choices[].label': 'What the answer says, in every language.',
    'questions[].choices[].help': 'Further words under it, for example the hand test, in every language.',
    'questions[].choices[].gives': 'What is known once it is given, by fact.',
    'questions[].text': 'The question in every language.',
    'questions[].text.*': 'The question in one language.',
    'questions[].text.*.ask': 'The question itself.',
    'questions[].text.*.why': 'One line: why it matters now.',
    'questions[].text.*.how': 'How to find out, and where to look it up.',
  },
  cautions: {
    cautions: 'The cautions, in the order in which they are shown.',
    'cautions[].id': 'Id in kebab case, once among the cautions.',
    'cautions[].authority': 'Who stands behind it: law, label, water protection or practice.',
    'cautions[].text': 'The caution in every language.',
  },
  glossary: {
    terms: 'The terms explained.',
    'terms[].id': 'Id in kebab case, once among the terms.',
    'terms[].words': 'The words by which it is said, by language.',
    'terms[].forms': 'Other forms in which texts say it, inflected or compounded, by language.',
    'terms[].text': 'What it means, in every language.',
    'terms[].picture': 'Drawing that shows it; left out where words are enough.',
    'terms[].source':
      'Where the explanation comes from, as a title or in every language; or "common practice, no source".',
  },
  cases: {
    about: 'What the file shows, and that it is invented.',
    base: 'Facts that stand under those of every case of the file.',
    cases: 'Fields on a day with the answer expected.',
    'cases[].name': 'What is the case, in one line.',
    'cases[].why': 'Why it is worth having.',
    'cases[].at':
      'Moment at which the facts hold, with offset: 2026-11-06T09:00Z. Without it, noon of the fact `date`.',
    'cases[].facts': 'Facts as in a facts file, over those of base; null takes one away.',
    'cases[].expect': 'The answer expected.',
    'cases[].expect.verdict': 'The verdict expected.',
    'cases[].expect.met': 'Every stop and hold that is met, and the advice that matters here.',
    'cases[].expect.notMet': 'Rules that matter here and are not met.',
    'cases[].expect.unknown': 'Rules that matter here and cannot be judged.',
    'cases[].expect.missing': 'Facts that are missing and matter here.',
    'cases[].expect.lifts': 'What lifts rules that are met here: rule id to hours, days, person or season.',
    'cases[].expect.doseGPerHa': 'The dose, g of active per ha; absent where none may be told.',
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, string>>>>;

/** What each key of each kind of file is for, by its path: `[]` stands for the members of a list, `*` for any name. */
export const keyDescriptions: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  ...ofFiles,
  overlay: {
    ...ofFiles.parameters,
    ...entriesOf(ofFiles.rules, 'rules'),
    ...ofFiles.questions,
    ...ofFiles.cautions,
    ...Object.fromEntries(
      Object.entries(ofFiles.glossary).map(([key, text]) => [key.replace(/^terms/, 'glossary'), text]),
    ),
    ...entriesOf(ofFiles.cases, 'cases'),
    ...overlayKeys,
  },
};

/** Those of the descriptions that are of the entries of a list. */
function entriesOf(words: Readonly<Record<string, string>>, list: string): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(words).filter(([key]) => key.startsWith(`${list}[]`)));
}
