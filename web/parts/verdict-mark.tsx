import type { VerdictWord } from '../../src/core/verdict/types.ts';

/**
 * The shape of a verdict, beside its sentence: open drill rows for spray-today, a sun half up behind the hill for wait, a dry
 * stone wall for do-not-spray. It says nothing that the sentence does not.
 */
export function VerdictMark({ verdict }: { readonly verdict: VerdictWord }) {
  return (
    <svg class="verdict-mark" viewBox="0 0 64 64" aria-hidden="true" focusable="false">
      {shapes[verdict]}
    </svg>
  );
}

const shapes = {
  'spray-today': <path d="M10 58 26 8M24 58l6-50M40 58 34 8M54 58 38 8" />,
  wait: <path d="M4 46h56M16 46a16 16 0 0 1 32 0M32 22V10M14 29 6 21M50 29l8-8M14 56h36" />,
  'do-not-spray': (
    <path d="M6 12h52v40H6zM6 25h52M6 39h52M23 12v13M41 12v13M15 25v14M32 25v14M49 25v14M23 39v13M41 39v13" />
  ),
} as const;
