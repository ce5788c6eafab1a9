import { readFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { expect, test } from 'vitest';
import { reasonOf } from '../../src/adapters/system-reason.ts';

const fault = (code: string) => Object.assign(new Error('refused'), { code });

test('what the system gives as its reason is said in words', async () => {
  const missing = await readFile(`${import.meta.filename}.none`).catch(reasonOf);
  const folder = await readFile(import.meta.dirname).catch(reasonOf);
  const through = await readFile(`${import.meta.filename}/inside`).catch(reasonOf);
  const elsewhere = await new Promise((resolve) => {
    const server = createServer();
    server.once('error', (error) => resolve(reasonOf(error)));
    // TEST-NET-1 (RFC 5737): no machine has an address of it.
    server.listen(0, '192.0.2.1');
  });
  expect([missing, folder, through, elsewhere]).toEqual([
    'no such file or folder',
    'a folder',
    'a file where a folder must be',
    'no such address on this machine',
  ]);
});

test.each([
  ['EACCES', 'no leave to do so'],
  ['EPERM', 'no leave to do so'],
  ['ENOSPC', 'no room left'],
  ['EADDRINUSE', 'another program listens there'],
  ['ERR_ENCODING_INVALID_ENCODED_DATA', 'text that is not UTF-8'],
  ['EMFILE', 'EMFILE'],
])('the code %s is told as: %s', (code, told) => {
  expect(reasonOf(fault(code))).toBe(told);
});

test('a fault without a code is told by its name, and what is no error has no reason', () => {
  expect([reasonOf(new RangeError('far')), reasonOf('far')]).toEqual(['RangeError', 'no reason given']);
});
