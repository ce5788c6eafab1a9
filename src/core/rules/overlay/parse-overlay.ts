import type { Finding } from '../pack/findings.ts';
import { collectFindings } from '../pack/findings.ts';
import { hashPackFiles } from '../pack/hash-pack.ts';
import { parseJsonFile } from '../pack/parse-json.ts';
import { withoutSchemaKey } from '../pack/schema-key.ts';
import { parseBySchema } from '../pack/zod-findings.ts';
import { type OverlayContent, overlaySchema } from './schema.ts';

/** An overlay whose file has the right shape; whether it may be applied shows over a pack. */
export interface Overlay {
  /** Name of its file, for findings. */
  readonly file: string;
  readonly content: OverlayContent;
  /** SHA-256 over its canonical JSON (RFC 8785) without cases, lower-case hex. */
  readonly hash: string;
}

/** Parses the file of an overlay. `findings` has errors where `overlay` is null. */
export function parseOverlay(
  file: string,
  text: string,
): { readonly overlay: Overlay | null; readonly findings: readonly Finding[] } {
  const { findings, report } = collectFindings();
  const json = parseJsonFile(file, text, report);
  if (json === undefined) return { overlay: null, findings };
  const named = withoutSchemaKey(json, file, report);
  const content = parseBySchema(overlaySchema, named, { file, path: [] }, report);
  if (!content || findings.some(({ severity }) => severity === 'error')) return { overlay: null, findings };
  const { validFrom, validTo } = content.overlay;
  if (validTo !== undefined && validTo < validFrom) {
    const expected = 'validTo not before validFrom';
    report(
      'PACK_VALUE_WRONG',
      { file, path: ['overlay', 'validTo'] },
      { expected, came: `${validFrom} to ${validTo}` },
    );
    return { overlay: null, findings };
  }
  const { cases: _cases, hash: told, ...counting } = named as Readonly<Record<string, unknown>>;
  const hash = hashPackFiles(new Map(Object.entries(counting)));
  if (told !== undefined && told !== hash) {
    report('OVERLAY_HASH_MISFIT', { file, path: ['hash'] }, { expected: String(told), came: hash });
    return { overlay: null, findings };
  }
  return { overlay: { file, content, hash }, findings };
}
