import type { Chat } from '../chat/chat.ts';
import { pageWords } from '../words.ts';

interface HourButtonsProps {
  /** What is said by pressing; none where no reading waits for its hour. */
  readonly hours: readonly string[];
  readonly onSay: Chat['say'];
}

/** The hour of a reading at another depth, where it was told without: said by pressing as if it were typed. */
export function HourButtons({ hours, onSay }: HourButtonsProps) {
  if (hours.length === 0) return null;
  return (
    <fieldset class="hour-choice">
      <legend>{pageWords.question.hours}</legend>
      {hours.map((hour) => (
        <button type="button" class="button" key={hour} onClick={() => onSay(hour)}>
          {hour}
        </button>
      ))}
    </fieldset>
  );
}
