import { useState } from 'preact/hooks';
import { pageWords } from '../words.ts';
import { NumberForm } from './number-form.tsx';
import type { FormProps } from './question-card.tsx';
import { useNumberBoxes } from './use-number-boxes.ts';

/** Decimals of a degree that are taken from the device: about 10 m. */
const placeDecimals = 4;

/** Latitude and longitude, filled in by hand or by the device where the browser permits. */
export function PlaceForm({ question, onAnswer }: FormProps) {
  const boxes = useNumberBoxes(question.boxes);
  const [said, setSaid] = useState('');
  const words = pageWords.question;
  const fill = ({ coords }: GeolocationPosition) => {
    const of = (end: string, degrees: number) =>
      question.boxes
        .filter(({ fact }) => fact.endsWith(end))
        .map(({ fact }) => [fact, degrees.toFixed(placeDecimals)] as const);
    boxes.write(Object.fromEntries([...of('.latitude', coords.latitude), ...of('.longitude', coords.longitude)]));
    setSaid('');
  };
  const ask = () => {
    setSaid(words.placeBusy);
    navigator.geolocation.getCurrentPosition(fill, () => setSaid(words.placeRefused), {
      maximumAge: 60_000,
      timeout: 20_000,
    });
  };
  return (
    <NumberForm question={question} onAnswer={onAnswer} boxes={boxes}>
      {isSecureContext && 'geolocation' in navigator && (
        <button type="button" class="button" onClick={ask}>
          {words.placeHere}
        </button>
      )}
      <p role="status">{said}</p>
    </NumberForm>
  );
}
