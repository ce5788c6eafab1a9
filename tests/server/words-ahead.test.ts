import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startTestServer } from './support/test-server.ts';

let webRoot = '';
const meta = (lang: string, paths: string) => `<meta name="words" lang="${lang}" content="${paths}">`;

beforeAll(async () => {
  webRoot = await mkdtemp(join(tmpdir(), 'loamward-words-'));
  const head = `${meta('en', '/assets/en-1.js /assets/en-2.js')}${meta('de', '/assets/de-1.js')}`;
  await writeFile(join(webRoot, 'index.html'), `<!doctype html><html><head>${head}</head></html>`);
  await writeFile(join(webRoot, 'other.html'), '<!doctype html>');
});
afterAll(() => rm(webRoot, { recursive: true, force: true }));

const english =
  '</assets/en-1.js>; rel=modulepreload; crossorigin=anonymous, </assets/en-2.js>; rel=modulepreload; crossorigin=anonymous';
const german = '</assets/de-1.js>; rel=modulepreload; crossorigin=anonymous';

async function headersOf(path: string, asked: string) {
  const { url } = await startTestServer({ webRoot });
  return (await fetch(url + path, { headers: { 'accept-language': asked } })).headers;
}

describe('the words that a browser loads beside the page', () => {
  test.each([
    ['de-AT,de;q=0.9,en;q=0.5', german],
    ['en;q=0.3, de;q=0.7', german],
    ['fr, DE', german],
    ['en-GB', english],
    ['fr, pl', english],
    ['*', english],
    ['de;q=x, en', english],
  ])('for %s are those of that language alone', async (asked, link) => {
    const headers = await headersOf('/', asked);
    expect(headers.get('link')).toBe(link);
    expect(headers.get('vary')).toContain('accept-language');
  });

  test('come with no other file', async () => {
    expect((await headersOf('/other.html', 'de')).get('link')).toBeNull();
  });
});
