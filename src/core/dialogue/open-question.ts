import type { Pack, Question } from '../rules/pack-types.ts';
import type { QuestionNote } from './notes.ts';
import { standingOf } from './standing.ts';
import type { State, StateObservation, Unusual } from './state.ts';

/** The question now open: one of the pack, or a reading back. */
export type OpenQuestion =
  | {
      readonly kind: 'pack';
      readonly id: string;
      readonly question: Question;
      /** Questions shown with it, each answered in its own right. */
      readonly together: readonly Question[];
      /** True where an answer given before is being changed. */
      readonly isChange: boolean;
    }
  | { readonly kind: 'unusual'; readonly id: string; readonly unusual: Unusual }
  | { readonly kind: 'doubtful'; readonly id: string; readonly observation: StateObservation };

const confirmPrefix = 'confirm:';

/** The question now open, or null: what waits to be confirmed comes first, then an answer to be changed, then the plan's. */
export function openQuestion(state: State, pack: Pack): OpenQuestion | null {
  const standing = standingOf(state, pack);
  if (standing === null) return null;
  const unusual = state.unusual[0];
  if (unusual) return { kind: 'unusual', id: `${confirmPrefix}${unusual.fact}`, unusual };
  if (standing.doubtful) {
    const observation = standing.doubtful;
    return { kind: 'doubtful', id: `${confirmPrefix}${observation.fact}`, observation };
  }
  const again = state.changing === null ? null : questionOfFact(state.changing, pack);
  if (again !== null) return { kind: 'pack', id: again.id, question: again, together: [], isChange: true };
  const { question, together } = standing.plan;
  return question === null ? null : { kind: 'pack', id: question.id, question, together, isChange: false };
}

/** True for the id of a reading back. */
export function isConfirmation(id: string): boolean {
  return id.startsWith(confirmPrefix);
}

/** The pack's question behind an id; for a reading back, the question of its fact. */
export function packQuestion(id: string | null, pack: Pack): Question | null {
  if (id === null) return null;
  const fact = isConfirmation(id) ? id.slice(confirmPrefix.length) : null;
  if (fact !== null) return questionOfFact(fact, pack);
  return pack.questions.find((one) => one.id === id) ?? null;
}

/** The question that asks for a fact. */
export function questionOfFact(fact: string, pack: Pack): Question | null {
  return pack.questions.find((one) => one.facts.some((each) => each === fact)) ?? null;
}

/** The question as noted in the log. */
export function questionNote(open: OpenQuestion, state: State, pack: Pack): QuestionNote {
  if (open.kind === 'pack') {
    const conflicts = standingOf(state, pack)?.conflicts;
    const conflict = open.question.facts.flatMap((fact) => conflicts?.get(fact) ?? []);
    return {
      kind: 'pack',
      question: open.id,
      together: open.together.map(({ id }) => id),
      conflict: conflict.map(({ fact, reading }) => ({ fact, reading })),
    };
  }
  const { fact, reading, quote } = open.kind === 'unusual' ? open.unusual : open.observation;
  return { kind: open.kind, readings: { fact, reading }, quote };
}
