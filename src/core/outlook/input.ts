import type { ResolveInput } from '../facts/context.ts';
import type { Pack } from '../rules/pack-types.ts';

/** What an outlook is made from: all that was observed, the forecast if any, the moment asked about, and the pack. */
export interface OutlookInput extends Pick<ResolveInput, 'observations' | 'forecast' | 'at'> {
  readonly pack: Pack;
}
