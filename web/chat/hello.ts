import { protocolVersion } from '../../src/core/protocol/version.ts';

/** The first frame of a connection; `resume` is the token of an earlier welcome, or null; `language` that of the page. */
export function helloText(resume: string | null, language?: string): string {
  return JSON.stringify({
    type: 'hello',
    protocol: protocolVersion,
    resume,
    ...(language ? { language } : {}),
    treatments: true,
  });
}
