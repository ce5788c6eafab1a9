import { type ErrorDetails, type ErrorReport, reportOf } from '../../errors/coded-error.ts';
import { nearestName } from '../../errors/nearest.ts';
import type { ErrorCode } from '../../errors/table.ts';

/** One fault of a pack: a coded report with its file and JSON Pointer. An error that the loader finds keeps the pack from loading. */
export interface Finding extends ErrorReport {
  readonly severity: 'error' | 'warning';
  readonly file: string;
  readonly pointer: string;
}

/** Steps from the root of a file to a value. */
export type Path = readonly (string | number)[];

/** A value's place: its file and the steps to it. */
export interface Place {
  readonly file: string;
  readonly path: Path;
}

/** Takes findings as they are made. */
export type Report = (
  code: ErrorCode,
  place: Place,
  details: Pick<ErrorDetails, 'expected' | 'came'> & Partial<ErrorDetails> & { among?: Iterable<string> },
  severity?: 'warning',
) => void;

/** A list of findings and the function that adds to it. `among` is searched for the nearest right name. */
export function collectFindings(): { readonly findings: Finding[]; readonly report: Report } {
  const findings: Finding[] = [];
  const report: Report = (code, place, { among, ...details }, severity) => {
    const nearest = among ? nearestName(details.came.replaceAll(/["`]/g, ''), [...among]) : undefined;
    const pointer = toPointer(place.path);
    findings.push({
      ...reportOf(code, { ...details, ...(nearest === undefined ? {} : { nearest }) }),
      severity: severity ?? 'error',
      file: place.file,
      pointer,
    });
  };
  return { findings, report };
}

/** The place of a value inside the value at `place`. */
export function inside(place: Place, ...steps: Path): Place {
  return { file: place.file, path: [...place.path, ...steps] };
}

/** JSON Pointer of a path, RFC 6901 section 3: `~` is written `~0` and `/` is written `~1`. */
export function toPointer(path: Path): string {
  return path.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** What came, as short text: JSON cut to 60 characters, or "nothing". */
export function show(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

/** True for a plain JSON object. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
