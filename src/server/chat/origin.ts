/** What decides whether a page may open the chat. */
export interface OriginRule {
  /** Origins allowed besides the server's own. */
  readonly origins: readonly string[];
  /** Address that the server listens on. */
  readonly host: string;
}

/**
 * True where the page that asks comes from this server or from an origin that is named. A server that listens on loopback only
 * believes a Host header only if it names loopback too: otherwise a page elsewhere could point its own name at this machine.
 * No Origin at all is refused.
 */
export function isOriginAllowed(origin: string | undefined, host: string | undefined, rule: OriginRule): boolean {
  if (origin === undefined || host === undefined) return false;
  if (rule.origins.includes(origin)) return true;
  const asked = urlOf(origin);
  const own = urlOf(`${asked?.protocol ?? 'http:'}//${host}`);
  if (!asked || !own || asked.origin !== origin || asked.host !== own.host) return false;
  return !isLoopback(rule.host) || isLoopback(own.hostname);
}

/** True for names and addresses of this machine itself. */
export function isLoopback(host: string): boolean {
  return /^(localhost|127(\.\d{1,3}){3}|\[?::1\]?)$/i.test(host);
}

function urlOf(text: string): URL | null {
  try {
    const url = new URL(text);
    return /^https?:$/.test(url.protocol) ? url : null;
  } catch {
    return null;
  }
}
