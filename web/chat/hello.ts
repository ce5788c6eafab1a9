import { protocolVersion } from '../../src/core/protocol/version.ts';

/** The first frame of a connection; `resume` is the token of an earlier welcome, or null. */
export function helloText(resume: string | null): string {
  return JSON.stringify({ type: 'hello', protocol: protocolVersion, resume });
}
