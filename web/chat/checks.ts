import type { Parsed } from '../../src/core/protocol/parse-message.ts';
import type { ServerMessage } from '../../src/core/protocol/server-messages.ts';
import type { ChatMeans } from './means.ts';

type Parse = (frame: string) => Parsed<ServerMessage>;

/**
 * Checks frames by the schemas of the protocol, which are heavy and come after the first screen. Until they are there only a welcome
 * passes, looked over by hand, so that the choice of a field does not wait; all else waits its turn. A failed load is tried again
 * with the next frame.
 */
export function lateChecks(load: () => Promise<Parse>): ChatMeans['check'] {
  let parse: Parse | null = null;
  let isLoading = false;
  let waiting: (() => void)[] = [];
  const begin = (): void => {
    if (isLoading) return;
    isLoading = true;
    load().then(
      (loaded) => {
        parse = loaded;
        const due = waiting;
        waiting = [];
        for (const call of due) call();
      },
      () => {
        isLoading = false;
      },
    );
  };
  begin();
  return (frame, then) => {
    if (parse) return then(parse(frame));
    begin();
    const welcome = waiting.length === 0 ? welcomeIn(frame) : null;
    if (welcome) return then({ ok: true, message: welcome });
    waiting.push(() => {
      if (parse) then(parse(frame));
    });
  };
}

/** A frame that is a welcome through and through; null for any other. */
export function welcomeIn(frame: string): ServerMessage | null {
  const value = parsed(frame);
  if (value === null || value['type'] !== 'welcome' || Object.keys(value).length !== 8) return null;
  const { protocol, token, resumed, fields, serverTime, packTitle, treatments } = value;
  const isWhole =
    Number.isInteger(protocol) &&
    typeof token === 'string' &&
    token.length >= 16 &&
    token.length <= 128 &&
    typeof resumed === 'boolean' &&
    Number.isFinite(serverTime) &&
    typeof packTitle === 'string' &&
    Array.isArray(fields) &&
    fields.every(isOffer) &&
    Array.isArray(treatments) &&
    treatments.every(isTreatment);
  return isWhole ? (value as unknown as ServerMessage) : null;
}

function isOffer(value: unknown): boolean {
  const { id, name, invented, note } = fourIn(value);
  return areTexts([id, name, note]) && typeof invented === 'boolean';
}

function isTreatment(value: unknown): boolean {
  const { id, title, note, fields } = fourIn(value);
  return areTexts([id, title, note]) && Array.isArray(fields) && areTexts(fields);
}

/** What an object of four keys holds; nothing for any other. */
function fourIn(value: unknown): Readonly<Record<string, unknown>> {
  const isFour = typeof value === 'object' && value !== null && Object.keys(value).length === 4;
  return isFour ? (value as Readonly<Record<string, unknown>>) : {};
}

function areTexts(values: readonly unknown[]): boolean {
  return values.every((one) => typeof one === 'string');
}

function parsed(frame: string): Readonly<Record<string, unknown>> | null {
  try {
    const value: unknown = JSON.parse(frame);
    return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : null;
  } catch {
    return null;
  }
}
