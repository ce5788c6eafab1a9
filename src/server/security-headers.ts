/** A host as a header may carry it: letters, digits, dots, dashes, brackets of IPv6, a port. */
const plainHost = /^[a-z0-9.\-[\]:]{1,255}$/i;

/**
 * Headers of every answer. The policy runs only scripts and styles of the server itself, none of them inline or made from
 * text, and lets the page speak to nothing but the server. `host` is the request's own Host header.
 */
export function securityHeaders(host: string | undefined): Readonly<Record<string, string>> {
  const sockets = host !== undefined && plainHost.test(host) ? ` ws://${host} wss://${host}` : '';
  return {
    'content-security-policy': [
      "default-src 'none'",
      "script-src 'self'",
      "style-src 'self'",
      "img-src 'self' data:",
      `connect-src 'self'${sockets}`,
      "manifest-src 'self'",
      "worker-src 'self'",
      "base-uri 'none'",
      "form-action 'none'",
      "frame-ancestors 'none'",
    ].join('; '),
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'permissions-policy':
      'camera=(), display-capture=(), geolocation=(self), microphone=(self), payment=(), serial=(), usb=()',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'x-frame-options': 'DENY',
  };
}
