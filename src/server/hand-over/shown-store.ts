import type { HandOver } from '../../core/words/hand-over.ts';

/** An answer shown under an address of its own: the words as they were, never changed. */
export interface ShownAnswer {
  /** 64 hex digits, random: whoever has the address may read it. */
  readonly id: string;
  /** SHA-256 of the conversation's token, hex: only its maker takes it back. The token itself is not kept here. */
  readonly maker: string;
  readonly handOver: HandOver;
  /** Epoch seconds UTC of the server's clock. */
  readonly madeAt: number;
  readonly until: number;
}

/** Where shown answers are kept until they end or are taken back. */
export interface ShownStore {
  readonly add: (answer: ShownAnswer) => Promise<void>;
  /** Null where it is not there, or has ended. `at` is epoch seconds UTC. */
  readonly read: (id: string, at: number) => Promise<ShownAnswer | null>;
  /** Those of one maker that are still shown, newest first. */
  readonly listOf: (maker: string, at: number) => Promise<readonly ShownAnswer[]>;
  /** True where one of this maker was there and is gone now. */
  readonly remove: (id: string, maker: string) => Promise<boolean>;
}

/** Most answers shown at once in all, and of one conversation; the one made first goes first. */
export const mostShown = { inAll: 5000, ofOne: 20 } as const;

/** A store in the memory of the server: what is shown ends with the server. */
export function createShownStore(most: { readonly inAll: number; readonly ofOne: number } = mostShown): ShownStore {
  const kept = new Map<string, ShownAnswer>();
  const dropEnded = (at: number): void => {
    for (const { id, until } of kept.values()) if (until <= at) kept.delete(id);
  };
  const dropFirst = (answers: readonly ShownAnswer[], keep: number): void => {
    for (const { id } of answers.slice(0, Math.max(0, answers.length - keep))) kept.delete(id);
  };
  const ofMaker = (maker: string) => [...kept.values()].filter((one) => one.maker === maker);
  return {
    add: async (answer) => {
      dropEnded(answer.madeAt);
      kept.set(answer.id, answer);
      dropFirst(ofMaker(answer.maker), most.ofOne);
      dropFirst([...kept.values()], most.inAll);
    },
    read: async (id, at) => {
      const answer = kept.get(id);
      return answer && answer.until > at ? answer : null;
    },
    listOf: async (maker, at) =>
      ofMaker(maker)
        .filter(({ until }) => until > at)
        .reverse(),
    remove: async (id, maker) => kept.get(id)?.maker === maker && kept.delete(id),
  };
}
