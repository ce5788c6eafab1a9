import { useState } from 'preact/hooks';
import type { NumberBoxView } from '../../src/core/dialogue/view-types.ts';
import { parseNumber } from '../forms/parse-number.ts';

type ByFact<T> = Readonly<Record<string, T>>;

/** Texts and problems of a question's boxes; `read` gives the numbers only where every box holds one. */
export function useNumberBoxes(boxes: readonly NumberBoxView[]) {
  const [texts, setTexts] = useState<ByFact<string>>({});
  const [problems, setProblems] = useState<ByFact<string>>({});
  return {
    textOf: (fact: string) => texts[fact] ?? '',
    problemOf: (fact: string) => problems[fact] ?? null,
    write: (changes: ByFact<string>) => {
      setTexts({ ...texts, ...changes });
      setProblems({});
    },
    read: (): ByFact<number> | null => {
      const reads = boxes.map((box) => [box.fact, parseNumber(texts[box.fact] ?? '', box)] as const);
      const wrong = reads.flatMap(([fact, read]) => ('problem' in read ? [[fact, read.problem]] : []));
      setProblems(Object.fromEntries(wrong));
      if (wrong.length > 0) return null;
      return Object.fromEntries(reads.flatMap(([fact, read]) => ('value' in read ? [[fact, read.value]] : [])));
    },
  };
}
