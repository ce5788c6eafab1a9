import { STATUS_CODES } from 'node:http';
import type { Duplex } from 'node:stream';
import { reportOf } from '../../core/errors/coded-error.ts';
import type { ErrorEntry } from '../../core/errors/entry.ts';
import { type ErrorCode, errorTable } from '../../core/errors/table.ts';

/** Answers an upgrade that is refused: the code's HTTP status and its report as JSON; then the socket is closed. */
export function refuseUpgrade(socket: Duplex, code: ErrorCode): void {
  const status = (errorTable[code] as ErrorEntry).httpStatus ?? 400;
  const body = JSON.stringify(
    reportOf(code, { expected: 'a chat opened by a page of this server', came: 'another upgrade' }),
  );
  socket.once('finish', () => socket.destroy());
  socket.end(
    [
      `HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ''}`,
      'connection: close',
      'content-type: application/json; charset=utf-8',
      'x-content-type-options: nosniff',
      `content-length: ${Buffer.byteLength(body)}`,
      '',
      body,
    ].join('\r\n'),
  );
}
