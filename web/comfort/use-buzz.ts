import { useEffect, useRef } from 'preact/hooks';
import type { VerdictWord } from '../../src/core/verdict/types.ts';
import { buzzFor } from './buzz.ts';
import { useComfort } from './comfort-context.ts';

/** Buzzes once for each verdict that came of something the person did. `shown` names the verdict that is shown. */
export function useBuzz(verdict: VerdictWord | null, shown: string | null, hasActed: boolean): void {
  const [{ buzz }] = useComfort();
  const before = useRef<string | null>(null);
  useEffect(() => {
    const isNew = shown !== before.current;
    before.current = shown;
    if (buzz && isNew && hasActed && verdict !== null && shown !== null) buzzFor(verdict);
  }, [shown]);
}
