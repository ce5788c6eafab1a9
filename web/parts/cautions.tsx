import type { WordedCaution } from '../../src/core/dialogue/decision-types.ts';
import { pageWords } from '../words.ts';
import { Fold } from './fold.tsx';
import { TermText } from './term-text.tsx';

interface CautionsProps {
  readonly cautions: readonly WordedCaution[];
  /** Shown at once, as with every spray-today; otherwise unfolded on request. */
  readonly isOpen: boolean;
}

/** The cautions that go with the work. */
export function Cautions({ cautions, isOpen }: CautionsProps) {
  const title = pageWords.verdict.cautions;
  const list = (
    <ul class="cautions">
      {cautions.map(({ id, text }) => (
        <li key={id}>
          <TermText text={text} />
        </li>
      ))}
    </ul>
  );
  if (!isOpen) return <Fold title={title}>{list}</Fold>;
  return (
    <>
      <h3>{title}</h3>
      {list}
    </>
  );
}
