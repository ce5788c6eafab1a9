import { protectCautions } from './protect-cautions.ts';
import { protectConditions } from './protect-conditions.ts';
import { protectParameters } from './protect-parameters.ts';
import { protectQuestions } from './protect-questions.ts';
import { protectRules } from './protect-rules.ts';
import { protectSentences } from './protect-sentences.ts';
import type { ProtectWorld } from './world.ts';

/** Reports everything by which an overlay would loosen what law, label, water and the safety rules of practice ask. */
export function protect(world: ProtectWorld): void {
  protectRules(world);
  protectSentences(world);
  protectParameters(world);
  protectConditions(world);
  protectQuestions(world);
  protectCautions(world);
}
