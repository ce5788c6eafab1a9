import type { ErrorEntry } from '../entry.ts';

/** Failures inside a conversation. */
export const dialogueErrors = {
  EVENT_CHANGED: {
    says: 'An event of this id is already there with other content.',
    next: 'Start the page again; what was said first is kept.',
  },
  CONVERSATION_OTHER_RULES: {
    says: 'The conversation was begun under other rules than those at hand.',
    next: 'Begin a new conversation to look again under the new rules.',
  },
  QUESTION_UNKNOWN: {
    says: 'There is no question of this name.',
    next: 'Answer the question that is shown.',
  },
  ANSWER_MISFIT: {
    says: 'The answer does not belong to the question.',
    next: 'Use one of the answers shown, or say it in your own words.',
  },
  DEPTH_NOT_30CM: {
    says: 'The soil temperature was read at another depth.',
    next: 'Push the thermometer to 30 cm, wait five minutes and read it there.',
  },
  DEPTH_NEEDS_HOUR: {
    says: 'A soil temperature from another depth says something of 30 cm only with the hour at which it was read.',
    next: 'At what time did you read it? Say the hour ("3 pm", "just now", "yesterday at noon"), or read it at 30 cm.',
  },
  READING_STUCK: {
    says: 'The same soil temperature was read for days on end, as from a sensor that stands still, so its band is wider.',
    next: 'Check the thermometer against another one, and read again.',
  },
  READING_IN_FUTURE: {
    says: 'The reading is said to be of a time that has not come yet.',
    next: 'Say again when it was read, with morning or afternoon and the day.',
  },
} as const satisfies Record<string, ErrorEntry>;
