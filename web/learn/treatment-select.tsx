import { inLanguage, type Texts } from '../../src/core/units/texts.ts';
import { learnWords } from '../words.ts';

interface TreatmentSelectProps {
  readonly treatments: readonly { readonly id: string; readonly title: Texts }[];
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}

/** Which treatment a page for learning or the bench speaks of; nothing where there is but one. */
export function TreatmentSelect({ treatments, chosen, onChoose }: TreatmentSelectProps) {
  if (treatments.length < 2) return null;
  return (
    <label class="learn-treatment">
      {learnWords.treatment}
      <select value={chosen} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
        {treatments.map(({ id, title }) => (
          <option key={id} value={id}>
            {inLanguage(title, document.documentElement.lang)}
          </option>
        ))}
      </select>
    </label>
  );
}
