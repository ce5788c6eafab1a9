import { useId } from 'preact/hooks';
import type { NumberBoxView } from '../../src/core/dialogue/view-types.ts';
import { capital, unitSuffix } from '../../src/core/words/units.ts';
import { endText, inputModeOf } from '../forms/parse-number.ts';
import { coreWords, pageWords } from '../words.ts';

interface NumberBoxProps {
  readonly box: NumberBoxView;
  readonly text: string;
  readonly problem: string | null;
  readonly onText: (text: string) => void;
}

/** A labelled box for one number, with its unit, its range and what is wrong with it. */
export function NumberBox({ box, text, problem, onText }: NumberBoxProps) {
  const id = useId();
  const unit = unitSuffix(box.unit, coreWords);
  const hasRange = box.low !== null || box.high !== null;
  return (
    <div class="number-box">
      <label for={id}>{capital(box.label)}</label>
      <div class="number-line">
        <input
          id={id}
          type="text"
          inputMode={inputModeOf(box)}
          autoComplete="off"
          value={text}
          aria-invalid={problem !== null}
          aria-describedby={`${id}-range ${id}-problem`}
          onInput={(event) => onText(event.currentTarget.value)}
        />
        {unit !== '' && <span class="number-unit">{unit.trim()}</span>}
      </div>
      <p id={`${id}-range`} class="quiet">
        {hasRange && pageWords.question.range(endText(box.low), endText(box.high), unit)}
      </p>
      <p id={`${id}-problem`} class="problem">
        {problem}
      </p>
    </div>
  );
}
