export { type Difference, differencesOf, type ParameterDifference } from './differences.ts';
export { drawSeasons, type PictureWords } from './draw-seasons.ts';
export { fieldOfFacts, plainField } from './held-field.ts';
export { decidersOf, judgePair, pairRules, type RulePair, wayOf } from './judge-pair.ts';
export { compareNearLimits, type LimitsCompared, type LimitTransition } from './near-limits.ts';
export { type CaseDifference, type CasesCompared, compareOnCases, type NotJudged } from './on-cases.ts';
export {
  type ChangedDay,
  compareSeasons,
  type SeasonCompared,
  type SeasonsInput,
  type StationRecord,
  seasonRules,
} from './on-seasons.ts';
export { compareOnVerdicts, type VerdictDifference, type VerdictsCompared } from './on-verdicts.ts';
export { changedOf, newTally } from './tally.ts';
export type * from './types.ts';
export type { Run, WindowChange, WindowDifference } from './windows.ts';
