import type { AppliedOverlay, Pack } from '../rules/pack-types.ts';
import { readsOf } from '../rules/reads.ts';
import { inLanguage } from '../units/texts.ts';
import type { OverlayStamp, PackStamp } from './decision-types.ts';

/** Which rules judge, in a language: the pack, and the overlays laid over it. */
export function stampOf(pack: Pack, language: string): PackStamp {
  const { id, version, hash, title, overlays } = pack;
  const stamp = { id, version, hash, title: inLanguage(title, language) };
  return overlays ? { ...stamp, overlays: overlays.map((one) => overlayStamp(one, pack, language)) } : stamp;
}

function overlayStamp(
  { id, title, author, place, hash, changed }: AppliedOverlay,
  pack: Pack,
  language: string,
): OverlayStamp {
  const byId = new Map(pack.rules.map((rule) => [rule.id, rule]));
  const touched = pack.rules.filter(({ when, id: rule }) => {
    if (changed.rules.includes(rule)) return true;
    return changed.parameters.some((parameter) => readsOf(when, new Map()).parameters.has(parameter));
  });
  const gone = changed.rules.filter((rule) => !byId.has(rule));
  const titles = touched.map(({ id: rule, text }) => text[language]?.title ?? text['en']?.title ?? rule);
  return { id, title: inLanguage(title, language), author, place, hash, changedRules: [...titles, ...gone] };
}
