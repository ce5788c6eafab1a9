import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type * as z from 'zod';
import type { ErrorEntry } from '../../../src/core/errors/entry.ts';
import { protocolErrors } from '../../../src/core/errors/groups/protocol.ts';
import { clientMessageSchemas } from '../../../src/core/protocol/messages.ts';
import { serverMessageSchemas } from '../../../src/core/protocol/server-messages.ts';

const page = readFileSync(join(import.meta.dirname, '../../../docs/protocol.md'), 'utf8');

/** Rows of a fenced table of the page, cell by cell. */
function rowsOf(fence: string): string[][] {
  const body = new RegExp(`^\`\`\`${fence}\\n(.*?)^\`\`\``, 'ms').exec(page)?.[1] ?? '';
  const cells = (line: string) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim());
  return body.trim().split('\n').slice(2).map(cells);
}

/** Message kinds with their fields, from the schemas. */
const fieldsOf = (schemas: Readonly<Record<string, z.ZodType>>) =>
  Object.entries(schemas).map(([type, schema]) => [
    type,
    Object.keys((schema as z.ZodObject).shape)
      .filter((field) => field !== 'type')
      .join(', '),
  ]);

const errors: [string, ErrorEntry][] = Object.entries(protocolErrors);
/** Codes that stop a start and never go over the wire. */
const atStart = ['SETTING_WRONG'];

/** Told over the socket and over HTTP alike. */
const overBoth = ['CONVERSATION_GONE'];

describe('docs/protocol.md', () => {
  test.each([
    ['messages-from-client', clientMessageSchemas],
    ['messages-from-server', serverMessageSchemas],
  ])('%s are those of the schemas, field by field', (fence, schemas) => {
    expect(rowsOf(fence).map(([type, fields]) => [type, fields])).toEqual(fieldsOf(schemas));
  });

  test('the close codes are those of the error table', () => {
    const table = errors.flatMap(([code, { closeCode }]) => (closeCode ? [[String(closeCode), code]] : []));
    expect(
      rowsOf('close-codes')
        .map(([number, code]) => [number, code])
        .sort(),
    ).toEqual(table.sort());
  });

  test('the HTTP answers are those of the error table', () => {
    const table = errors.flatMap(([code, { httpStatus }]) => (httpStatus ? [[String(httpStatus), code]] : []));
    expect(
      rowsOf('http-codes')
        .map(([status, code]) => [status, code])
        .sort(),
    ).toEqual(table.sort());
  });

  test('every other code of the protocol is among those that leave the connection open, and nothing else is', () => {
    const table = errors.filter(
      ([code, { closeCode, httpStatus }]) =>
        !closeCode && (!httpStatus || overBoth.includes(code)) && !atStart.includes(code),
    );
    expect(rowsOf('error-codes').map(([code]) => code)).toEqual(table.map(([code]) => code));
  });

  test('the requests named are those of the schema', () => {
    const named = /A button that is no answer: ([^.]*)\./.exec(page)?.[1];
    expect(named?.split(', ')).toEqual(clientMessageSchemas.request.shape.request.options);
  });
});
