import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { pageWords } from '../words.ts';
import { NumberBox } from './number-box.tsx';
import type { FormProps } from './question-card.tsx';
import { useNumberBoxes } from './use-number-boxes.ts';

/** The number boxes of a question with one button to take them; `children` stand above. */
export function NumberForm({
  question,
  onAnswer,
  boxes,
  children,
}: FormProps & {
  /** Boxes that an outer form holds; its own where none are given. */
  readonly boxes?: ReturnType<typeof useNumberBoxes>;
  readonly children?: ComponentChildren;
}) {
  const form = useRef<HTMLFormElement>(null);
  const own = useNumberBoxes(question.boxes);
  const { textOf, problemOf, write, read } = boxes ?? own;
  if (question.boxes.length === 0) return null;
  return (
    <form
      ref={form}
      class="numbers"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const numbers = read();
        if (numbers) onAnswer({ choices: [], numbers, doesNotKnow: false });
        else queueMicrotask(() => form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      }}
    >
      {children}
      {question.boxes.map((box) => (
        <NumberBox
          key={box.fact}
          box={box}
          text={textOf(box.fact)}
          problem={problemOf(box.fact)}
          onText={(text) => write({ [box.fact]: text })}
        />
      ))}
      <button type="submit" class="button is-main">
        {pageWords.question.take}
      </button>
    </form>
  );
}
