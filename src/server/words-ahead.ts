import type { WebFiles } from './web-files.ts';

/**
 * For an Accept-Language header the Link header that has the browser load the page's words of that language beside the entry; null
 * where the page names none. The language is the first asked for that there is, else English, as the page itself finds it.
 */
export function wordsAhead(files: WebFiles): (asked: string | undefined) => string | null {
  const html = files.get('/')?.body.toString('utf8') ?? '';
  const named = [...html.matchAll(/<meta name="words" lang="([a-z]+)" content="([^"<>]*)"/g)];
  const links = new Map(named.map(([, language = '', paths = '']) => [language, linkOf(paths.split(' '))]));
  return (asked = '') => {
    const language = asked
      .split(',')
      .map(weighed)
      .sort((a, b) => b.weight - a.weight)
      .find(({ code }) => links.has(code));
    return links.get(language?.code ?? 'en') ?? null;
  };
}

function linkOf(paths: readonly string[]): string {
  return paths.map((path) => `<${path}>; rel=modulepreload; crossorigin=anonymous`).join(', ');
}

/** One range of the header: its language and how much it is wished (RFC 9110, 12.5.4). */
function weighed(range: string): { readonly code: string; readonly weight: number } {
  const [tag = '', ...more] = range.split(';').map((part) => part.trim().toLowerCase());
  const weight = Number(more.find((part) => part.startsWith('q='))?.slice(2) ?? '1');
  return { code: tag.split('-')[0] ?? '', weight: Number.isFinite(weight) ? weight : 0 };
}
