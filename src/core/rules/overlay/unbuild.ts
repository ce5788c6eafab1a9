import type { Pack } from '../pack-types.ts';
import type { Rule } from '../types.ts';

/** Lists of a pack as its files hold them, rules with their topic beside them. */
export interface PackEntries {
  readonly parameters: readonly Readonly<Record<string, unknown>>[];
  readonly rules: readonly Readonly<Record<string, unknown>>[];
  readonly questions: readonly Readonly<Record<string, unknown>>[];
  readonly cautions: readonly Readonly<Record<string, unknown>>[];
  readonly glossary: readonly Readonly<Record<string, unknown>>[];
}

/** The entries of a pack as its files hold them. */
export function entriesOf({ parameters, rules, questions, cautions, glossary }: Pack): PackEntries {
  const plain = (list: readonly object[]) => list as unknown as PackEntries['parameters'];
  return {
    parameters: plain(parameters),
    rules: rules.map(writtenRule),
    questions: plain(questions),
    cautions: plain(cautions),
    glossary: plain(glossary),
  };
}

/** The head of a pack as pack.json holds it. */
export function headOf({ id, version, title, scope, zone, active, languages }: Pack) {
  return { id, version, title, scope, zone, active, languages };
}

function writtenRule({ lifts, protectedByPractice, earlier: _earlier, ...rule }: Rule) {
  return { ...rule, ...(lifts === null ? {} : { lifts }), ...(protectedByPractice ? { protected: true } : {}) };
}
