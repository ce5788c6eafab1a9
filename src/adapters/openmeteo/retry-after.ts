const httpDate = /^(Mon|Tue|Wed|Thu|Fri|Sat|Sun), \d{2} [A-Z][a-z]{2} \d{4} \d{2}:\d{2}:\d{2} GMT$/;

/**
 * Seconds that a Retry-After header (RFC 9110, 10.2.3) asks to wait from `now` (epoch seconds): whole seconds or an HTTP
 * date; 0 for a date that is past, null for an absent or meaningless one.
 */
export function retryAfterSeconds(header: string | null, now: number): number | null {
  const text = header?.trim() ?? '';
  if (/^\d{1,9}$/.test(text)) return Number(text);
  if (!httpDate.test(text)) return null;
  const moment = Date.parse(text) / 1000;
  return Number.isFinite(moment) ? Math.max(0, moment - now) : null;
}
