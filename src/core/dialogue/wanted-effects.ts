import type { Pack } from '../rules/pack-types.ts';
import type { Effect } from './events.ts';
import { forecastNeed } from './forecast-need.ts';
import { openQuestion } from './open-question.ts';
import { type Standing, standingOf } from './standing.ts';
import type { State } from './state.ts';

/** What a state waits for: a forecast for the field's place, and the engine's run once the questions are over or a verdict is asked for. */
export function wantedEffects(state: State, pack: Pack): readonly Effect[] {
  const standing = standingOf(state, pack);
  if (standing === null) return [];
  const point = forecastNeed(state, standing.facts, standing.compiled.parameters);
  return [
    ...(point === null ? [] : [{ kind: 'fetch-forecast', ...point } as const]),
    ...(wantsEvaluation(state, standing, pack) ? [{ kind: 'evaluate', tag: standing.tag } as const] : []),
  ];
}

/** What tells one wanted effect from another; a look again wants the forecast anew. */
export function effectKey(effect: Effect, { looks }: State): string {
  if (effect.kind === 'evaluate') return `evaluate ${effect.tag}`;
  return effect.kind === 'fetch-forecast' ? `forecast ${effect.latitude} ${effect.longitude} ${looks}` : effect.kind;
}

function wantsEvaluation(state: State, standing: Standing, pack: Pack): boolean {
  if (standing.doubtful !== null) return false;
  const isStopped = standing.trace.some(({ effect, outcome }) => effect === 'stop' && outcome === 'met');
  if (standing.plan.waitsForForecast && !isStopped) return false;
  const isDue = state.wantsVerdict || openQuestion(state, pack) === null;
  return isDue && !isJudged(state, standing.tag);
}

function isJudged({ verdicts, failures }: State, tag: string): boolean {
  return failures.has(tag) || verdicts.some((verdict) => verdict.tag === tag);
}
