import { understand } from '../../../../src/core/dialogue/understand/index.ts';
import type { UnderstandContext, Understanding } from '../../../../src/core/dialogue/understand/types.ts';
import type { Reading } from '../../../../src/core/facts/types.ts';
import { shipped } from '../../../cases/shipped-pack.ts';

const { pack } = shipped;

/** A context of the shipped pack: the open question by its id, and what was last spoken of. */
export function against(
  asked: string | null,
  recent: UnderstandContext['recent'] = [],
  language = 'en',
): UnderstandContext {
  const question = pack.questions.find(({ id }) => id === asked) ?? null;
  if (asked !== null && question === null) throw new Error(`no question ${asked}`);
  return { asked: question, pack, recent, language };
}

const round = (value: number) => String(Number(value.toFixed(3)));

function inShort(reading: Reading): string[] {
  if (reading.type === 'number') {
    const { value, low, high } = reading;
    return [`=${round(value)}${low === undefined ? '' : `[${round(low)}..${round(high ?? value)}]`}`];
  }
  if (reading.type === 'choice') return [`=${reading.possible.join('|')}`];
  if (reading.type === 'signs') {
    if (reading.complete) return [reading.present.length === 0 ? '=none' : `=only ${reading.present.join('|')}`];
    return [...reading.present.map((sign) => `=+${sign}`), ...reading.absent.map((sign) => `=-${sign}`)];
  }
  return [`=${reading.type}`];
}

/**
 * An understanding in one line: `fact=value[low..high]`, `?` where doubtful, `@` hours ago; `!` an intent; `~` a correction;
 * quoted what was not understood; `#` a refusal. Of signs: `+` there, `-` not there, `only` there and no other, `none`.
 */
export function inOneLine({ readings, intents, correction, notUnderstood, refused }: Understanding): string {
  return [
    ...readings.flatMap(({ fact, reading, doubtful, agoHours }) =>
      inShort(reading).map(
        (said) => `${fact}${said}${doubtful ? '?' : ''}${agoHours === undefined ? '' : `@${agoHours}`}`,
      ),
    ),
    ...intents.map((intent) => `!${intent}`),
    ...(correction ? ['~'] : []),
    ...notUnderstood.map((piece) => `"${piece}"`),
    ...refused.map(({ code }) => `#${code}`),
  ].join('; ');
}

/** What a text comes to, in one line; `confirming` where a reading of the open question was read back. */
export function told(
  asked: string | null,
  text: string,
  recent: UnderstandContext['recent'] = [],
  language = 'en',
  confirming = false,
): string {
  return inOneLine(understand(text, { ...against(asked, recent, language), confirming }));
}
