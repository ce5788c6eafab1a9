import { useId } from 'preact/hooks';
import type { Parameter } from '../../src/core/units/parameter.ts';
import { inLanguage, sourceIn } from '../../src/core/units/texts.ts';
import { describeParameter } from '../../src/core/words/fill.ts';
import { unitSuffix } from '../../src/core/words/units.ts';
import type { Draft } from './draft.ts';
import { useSpeech } from './speech.ts';
import { besideBox, boxText, readValue } from './values.ts';

interface LimitBoxProps {
  /** The limit as it is without the draft. */
  readonly limit: Parameter;
  readonly onlyTighter: boolean;
  /** What the draft comes to, in a sentence or two, beside each limit that it changes. */
  readonly summary: string;
  readonly draft: Draft;
  readonly onChange: (draft: Draft) => void;
}

/** One limit: its value to be changed, its unit, why it is so, where it comes from and which way it may go. */
export function LimitBox({ limit, onlyTighter, summary, draft, onChange }: LimitBoxProps) {
  const id = useId();
  const { words, bench } = useSpeech();
  const { id: name } = limit;
  const changed = draft.limits[name];
  const text = draft.typed[name] ?? boxText({ value: changed ?? limit.value });
  const read = readValue(text, limit, bench);
  const problem = 'problem' in read ? read.problem : '';
  const way = words.say.tighter[limit.tighter];
  const stays = onlyTighter && limit.tighter === 'neither';
  const kind = typeof limit.value === 'object' ? bench.limit.list : limit.unit === 'month-day' ? bench.limit.day : '';
  const beside =
    besideBox(text, limit, words) || (typeof limit.value === 'number' ? unitSuffix(limit.unit, words).trim() : '');
  return (
    <div class="number-box">
      <label for={id}>{name}</label>
      <div class="number-line">
        <input
          id={id}
          type="text"
          autoComplete="off"
          spellcheck={false}
          readOnly={stays}
          value={text}
          aria-invalid={problem !== ''}
          aria-describedby={`${id}-about ${id}-problem`}
          onInput={({ currentTarget: { value } }) =>
            onChange(withTyped(draft, limit, value, readValue(value, limit, bench)))
          }
        />
        {beside !== '' && <span class="number-unit">{beside}</span>}
      </div>
      <p id={`${id}-problem`} class="problem">
        {problem}
      </p>
      {changed !== undefined && <p class="bench-summary">{summary}</p>}
      <p id={`${id}-about`} class="quiet">
        {[
          bench.limit.shipped(describeParameter(limit, words)),
          stays ? bench.limit.stays : onlyTighter ? bench.limit.onlyTighter(way) : bench.limit.free(way),
          kind === '' ? '' : `${kind}.`,
          inLanguage(limit.why, words.language),
          `${bench.rule.source}: ${sourceIn(limit.source, words.language)}.`,
        ].join(' ')}
      </p>
    </div>
  );
}

/** The draft with what was typed for a limit: its new value, none where it is the old one again, or the text alone. */
export function withTyped(draft: Draft, limit: Parameter, text: string, read: ReturnType<typeof readValue>): Draft {
  const { [limit.id]: _value, ...limits } = draft.limits;
  const { [limit.id]: _text, ...typed } = draft.typed;
  if ('problem' in read) return { ...draft, limits, typed: { ...typed, [limit.id]: text } };
  const isOld = JSON.stringify(read.value) === JSON.stringify(limit.value);
  const isPlain = boxText({ value: read.value }) === text;
  return {
    ...draft,
    limits: isOld ? limits : { ...limits, [limit.id]: read.value },
    typed: isPlain ? typed : { ...typed, [limit.id]: text },
  };
}
