import type { Broken } from './examples.ts';
import { parameter, question, rainSharedOut, rule, shipped, split } from './overlay-of.ts';

const caution = shipped.cautions.find(({ authority }) => authority !== 'practice');
const drains = shipped.questions.find(({ facts, choices }) => choices && facts.includes('soil.drainsRunning'));
const drainsChoices = drains?.choices ?? [];

/** Broken examples for each way that is no condition and no parameter: effect, lifts, removal, answers, cautions, the head. */
export const brokenOtherwise: readonly Broken[] = [
  {
    name: 'a weaker effect',
    parts: { rules: [rule('water-risk-field', { effect: 'hold' })] },
    code: 'OVERLAY_EFFECT_WEAKER',
    pointer: '/rules/0/effect',
  },
  {
    name: 'a quicker lift',
    parts: { rules: [rule('soil-cracked', { lifts: 'hours' })] },
    code: 'OVERLAY_LIFTS_QUICKER',
    pointer: '/rules/0/lifts',
  },
  {
    name: 'a job for a person that passes by itself',
    parts: { rules: [rule('near-water', { lifts: 'hours' })] },
    code: 'OVERLAY_LIFTS_QUICKER',
    pointer: '/rules/0/lifts',
  },
  {
    name: 'a protected rule taken away',
    parts: { removes: { rules: ['one-application'] } },
    code: 'OVERLAY_RULE_REMOVED',
    pointer: '/removes/rules/0',
  },
  {
    name: 'a rule taken away that a protected one names',
    parts: { removes: { rules: ['soil-too-dry'] } },
    code: 'RULE_REFERENCE_MISSING',
    pointer: '/removes/rules/0',
  },
  {
    name: 'a water rule called practice',
    parts: { rules: [rule('soil-cracked', { authority: 'practice' })] },
    code: 'OVERLAY_RULE_UNPROTECTED',
    pointer: '/rules/0/authority',
  },
  {
    name: 'a safety rule without its protection',
    parts: { rules: [rule('too-windy', { protected: false })] },
    code: 'OVERLAY_RULE_UNPROTECTED',
    pointer: '/rules/0/authority',
  },
  {
    name: 'an answer that says less than it did',
    parts: {
      questions: [
        question(drains?.id ?? '', {
          choices: drainsChoices.map((choice) => ({
            ...choice,
            gives: { ...choice.gives, 'soil.drainsRunning': { type: 'choice', possible: ['no'] } },
          })),
        }),
      ],
    },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/questions/0',
    words: ['soil.drainsRunning'],
  },
  {
    name: 'an answer under other words',
    parts: {
      questions: [
        question(drains?.id ?? '', {
          choices: drainsChoices.map((choice) => ({ ...choice, label: { en: 'Fine', de: 'Gut' } })),
        }),
      ],
    },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/questions/0',
  },
  {
    name: 'an answer cut so that a part of its band is gone',
    parts: {
      parameters: [parameter('windMostKmh', 8)],
      questions: [split('wind', 'gentle-breeze', 'wind.boomKmh', 8, 9)],
    },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/questions/0',
    words: ['gentle-breeze'],
  },
  {
    name: 'an answer shared out over two facts with one corner left out',
    parts: {
      parameters: [parameter('rainTotalLimitMm', 5), parameter('rainHourLimitMmPerH', 2)],
      questions: [rainSharedOut('showers-more-more')],
    },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/questions/0',
    words: ['showers'],
  },
  {
    name: 'a new question that answers for a protected fact',
    parts: {
      questions: [
        {
          ...question(drains?.id ?? ''),
          id: 'easy',
          choices: [
            {
              id: 'ok',
              label: { en: 'Fine', de: 'Gut' },
              gives: { 'soil.drainsRunning': { type: 'choice', possible: ['no'] } },
            },
          ],
        },
      ],
    },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/questions/0',
  },
  {
    name: 'a question for a protected fact taken away',
    parts: { removes: { questions: ['wind-towards'] } },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/removes/questions/0',
  },
  {
    name: 'a sentence of a protected rule reworded',
    parts: { rules: [reworded('near-water', 'en', 'met', 'You may be near water.')] },
    code: 'OVERLAY_SENTENCE_CHANGED',
    pointer: '/rules/0/text/en/met',
    words: ['came "You may be near water."'],
  },
  {
    name: 'what to do about a protected rule softened in one language',
    parts: { rules: [reworded('too-windy', 'de', 'lift', 'Warten Sie ein wenig.')] },
    code: 'OVERLAY_SENTENCE_CHANGED',
    pointer: '/rules/0/text/de/lift',
  },
  {
    name: 'a caution taken away',
    parts: { removes: { cautions: [caution?.id ?? ''] } },
    code: 'OVERLAY_CAUTION_REMOVED',
    pointer: '/removes/cautions/0',
  },
  {
    name: 'a caution cut short',
    parts: { cautions: [{ ...caution, text: { en: 'Take care.', de: caution?.text['de'] } }] },
    code: 'OVERLAY_CAUTION_REMOVED',
    pointer: '/cautions/0/text/en',
  },
  {
    name: 'another pack',
    parts: { overlay: { pack: { id: 'another-pack' } } },
    code: 'OVERLAY_PACK_MISFIT',
    pointer: '/overlay/pack',
  },
  {
    name: 'versions of the pack that this is none of',
    parts: { overlay: { pack: { id: shipped.id, before: '0.0.1' } } },
    code: 'OVERLAY_PACK_MISFIT',
    pointer: '/overlay/pack',
  },
  {
    name: 'a new parameter without its unit',
    parts: { parameters: [parameter('localWindKmh', 8, { tighter: 'lower' })] },
    code: 'PACK_KEY_MISSING',
    pointer: '/parameters/0/unit',
  },
  {
    name: 'a limit of the pack that comes to lie inside an offered answer',
    parts: { parameters: [parameter('runoffSlopePercent', 1)] },
    code: 'CHOICE_STRADDLES_LIMIT',
    pointer: '/parameters/0',
  },
  {
    name: 'a reference under a not, tightened so that the whole loosens',
    parts: {
      rules: [
        rule('soil-cracked', {
          when: { all: [{ fact: 'soil.surface', has: 'cracked' }, { not: { rule: 'water-standing' } }] },
        }),
      ],
    },
    code: 'OVERLAY_RULE_LOOSENED',
    pointer: '/rules/0/when',
    words: ['soil.surface cracked'],
  },
];

/** A rule of the pack with one of its sentences said otherwise. */
function reworded(id: string, language: string, part: string, text: string) {
  const { text: shippedText, ...rest } = rule(id);
  return { ...rest, text: { ...shippedText, [language]: { ...shippedText[language], [part]: text } } };
}
