import type { ErrorEntry } from './entry.ts';
import { analysisErrors } from './groups/analysis.ts';
import { commandErrors } from './groups/command.ts';
import { dialogueErrors } from './groups/dialogue.ts';
import { factErrors } from './groups/facts.ts';
import { forecastErrors } from './groups/forecast.ts';
import { overlayErrors } from './groups/overlays.ts';
import { protocolErrors } from './groups/protocol.ts';
import { ruleErrors } from './groups/rules.ts';
import { scienceErrors } from './groups/science.ts';
import { verdictErrors } from './groups/verdict.ts';

/** Every coded failure of the project; docs/errors.md is generated from it. Retired codes are never reused. */
export const errorTable = {
  ...scienceErrors,
  ...factErrors,
  ...ruleErrors,
  ...analysisErrors,
  ...overlayErrors,
  ...verdictErrors,
  ...forecastErrors,
  ...dialogueErrors,
  ...protocolErrors,
  ...commandErrors,
} as const satisfies Record<string, ErrorEntry>;

/** A code of the table. */
export type ErrorCode = keyof typeof errorTable;
