import { fieldsFor, titleOf } from '../../adapters/conversation/offers.ts';
import { isLoamwardError } from '../../core/errors/coded-error.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { hollinBankFarm } from '../../demo/hollin-bank-farm.ts';
import { errorLine } from '../error-line.ts';
import type { Io } from '../io.ts';
import { firstPack, loadLocalPack, loadNamedPack, packIds, today } from '../packs.ts';
import { choose } from './choose.ts';
import type { Screen } from './screen.ts';

/** How the treatment is settled: by name, by a field that is offered for one alone, else by asking where there are several. */
export interface TreatmentWish {
  readonly pack: string | undefined;
  readonly field: string | null | undefined;
  readonly overlays: readonly string[];
}

/**
 * The pack to talk about, with the overlays that name it; undefined where the input ends before one is chosen. A pack that is not sound
 * is not offered, and its fault is told. Throws PACK_UNKNOWN, or the first fault of the pack or an overlay.
 */
export async function settleTreatment(
  { pack, field, overlays }: TreatmentWish,
  means: { readonly io: Io; readonly lines: AsyncIterator<string>; readonly screen: Screen; readonly words: Catalogue },
): Promise<Pack | undefined> {
  const { io, lines, screen, words } = means;
  const name = pack ?? forField(field) ?? (await askFor());
  return name === undefined ? undefined : (await loadLocalPack(io, name, overlays, today(io))).pack;

  async function askFor(): Promise<string | undefined> {
    const offered = await soundPacks(io, words);
    const choices = offered.map((one) => ({ id: one.id, label: titleOf(one, words.language) }));
    const [first, second] = choices;
    if (first === undefined || second === undefined) return firstPack;
    const heading = words.terminal.whichTreatment(first.label);
    return choose<string>({ heading, choices, standard: first }, lines, screen, words);
  }
}

/** The treatment for which alone a demo field is offered. */
function forField(field: string | null | undefined): string | undefined {
  const packs = hollinBankFarm.find(({ profile }) => profile.id === field)?.packs ?? [];
  return packs.length === 1 ? packs[0] : undefined;
}

/** The packs of the rules folder that are sound, that for who names none first. */
async function soundPacks(io: Io, words: Catalogue): Promise<readonly Pack[]> {
  const ids = await packIds(io);
  if (ids.length === 1) return [];
  const sound: Pack[] = [];
  for (const id of ids) {
    try {
      sound.push((await loadNamedPack(io, id)).pack);
    } catch (error) {
      if (id === firstPack || !isLoamwardError(error)) throw error;
      io.writeError(`${errorLine(error.toJSON(), words)}\n`);
    }
  }
  return sound;
}

/** The fields that are offered for a treatment, and the person's own. */
export function fieldChoices(pack: Pack, { terminal }: Catalogue) {
  const own = { id: null, label: terminal.ownField };
  const offered = fieldsFor(hollinBankFarm, pack.id);
  return [...offered.map(({ profile: { id, name } }) => ({ id, label: terminal.invented(name) })), own];
}
