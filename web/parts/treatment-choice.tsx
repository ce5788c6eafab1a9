import type { TreatmentOffer } from '../../src/core/protocol/messages.ts';
import { pageWords } from '../words.ts';

interface TreatmentChoiceProps {
  readonly treatments: readonly TreatmentOffer[];
  readonly chosen: string;
  readonly onChoose: (treatment: string) => void;
}

/** The choice of a treatment, one of which always stands. */
export function TreatmentChoice({ treatments, chosen, onChoose }: TreatmentChoiceProps) {
  return (
    <fieldset class="treatments">
      <legend>{pageWords.start.whichTreatment}</legend>
      {treatments.map(({ id, title, note }) => (
        <label class="sign" key={id}>
          <input
            type="radio"
            name="treatment"
            value={id}
            checked={id === chosen}
            onChange={() => onChoose(id)}
            aria-describedby={`treatment-${id}`}
          />
          <span>
            <b>{title}</b>
            <small id={`treatment-${id}`}>{note}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
