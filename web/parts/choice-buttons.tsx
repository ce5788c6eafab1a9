import { useId } from 'preact/hooks';
import type { ChoiceView } from '../../src/core/dialogue/view-types.ts';
import type { FormProps } from './question-card.tsx';

/** One big button for each choice. */
export function ChoiceButtons({ question, onAnswer }: FormProps) {
  if (question.choices.length === 0) return null;
  return (
    <div class="choices">
      {question.choices.map((choice) => (
        <Choice
          key={choice.id}
          choice={choice}
          onTake={() => onAnswer({ choices: [choice.id], numbers: {}, doesNotKnow: false })}
        />
      ))}
    </div>
  );
}

function Choice({ choice, onTake }: { readonly choice: ChoiceView; readonly onTake: () => void }) {
  const help = useId();
  return (
    <button type="button" class="choice" aria-describedby={choice.help ? help : undefined} onClick={onTake}>
      <b>{choice.label}</b>
      {choice.help && <span id={help}>{choice.help}</span>}
    </button>
  );
}
