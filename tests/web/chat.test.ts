import { describe, expect, test } from 'vitest';
import { protocolVersion } from '../../src/core/protocol/version.ts';
import { createChat } from '../../web/chat/chat.ts';
import { aliveEveryMs, aliveWithinMs } from '../../web/chat/link.ts';
import { conversationNow } from '../../web/chat/page-state.ts';
import { tokenKey } from '../../web/chat/token-key.ts';
import { fakeMeans } from './fake-means.ts';
import { emptyView } from './views.ts';

/** A chat that is welcomed and has begun about a field. */
function talking() {
  const means = fakeMeans();
  const chat = createChat(means);
  means.lastSocket().welcome();
  chat.start('mill-piece');
  means.lastSocket().hear({ type: 'view', view: emptyView, kept: 0 });
  means.lastSocket().hear({ type: 'alive' });
  return { means, chat, first: means.lastSocket() };
}
const typesOf = (sent: readonly Record<string, unknown>[]) => sent.map(({ type }) => type);

describe('what the page sends', () => {
  test('says hello first, then what was done, stamped by the clock of the server', () => {
    const { means, first } = talking();
    expect(typesOf(first.sent)).toEqual(['hello', 'start', 'alive']);
    expect(first.sent[0]).toMatchObject({ protocol: protocolVersion, resume: null });
    expect(first.sent[1]).toMatchObject({ field: 'mill-piece', at: means.now() + 30, count: 0 });
  });

  test('counts rise and the device stays the same, over a reload too', () => {
    const { means, chat, first } = talking();
    chat.say('clay loam');
    chat.stop();
    const again = fakeMeans(means.memory);
    const reloaded = createChat(again);
    again.lastSocket().welcome(true);
    reloaded.say('moist');
    const events = [...first.sent, ...again.lastSocket().sent].filter(({ device }) => device);
    expect(new Set(events.map(({ device }) => device)).size).toBe(1);
    expect(new Set(events.map(({ count }) => count))).toEqual(new Set([0, 1, 2]));
  });

  test('a message leaves the outbox only when the server has dealt with it', () => {
    const { chat, first } = talking();
    chat.say('moist');
    expect(chat.state.get().outbox).toHaveLength(1);
    first.hear({ type: 'view', view: emptyView, kept: 0 });
    expect(chat.state.get().outbox).toHaveLength(1);
    first.hear({ type: 'alive' });
    expect(chat.state.get().outbox).toEqual([]);
  });

  test('what was not confirmed goes out again with the same id after a lost connection and after a reload', () => {
    const { means, chat, first } = talking();
    chat.say('moist');
    const id = first.sent.at(-2)!['id'];
    first.listener.onClose(1006);
    means.pass(20_000);
    means.lastSocket().welcome(true);
    expect(means.lastSocket().sent[0]).toMatchObject({ resume: 'token-of-this-conversation' });
    expect(means.lastSocket().sent[1]).toMatchObject({ type: 'say', text: 'moist', id });
    chat.stop();
    const again = fakeMeans(means.memory);
    createChat(again);
    again.lastSocket().welcome(true);
    expect(again.lastSocket().sent[1]).toMatchObject({ type: 'say', text: 'moist', id });
  });

  test('what is said without a connection is kept and goes out in order when it is back', () => {
    const { means, chat, first } = talking();
    first.listener.onClose(1006);
    chat.say('one');
    chat.say('two');
    expect(first.sent).toHaveLength(3);
    means.pass(20_000);
    means.lastSocket().welcome(true);
    expect(means.lastSocket().sent.flatMap(({ text }) => text ?? [])).toEqual(['one', 'two']);
  });

  test('answers to a conversation that is gone are not put into a new one', () => {
    const { means, chat, first } = talking();
    first.listener.onClose(1006);
    chat.say('moist');
    means.pass(20_000);
    means.lastSocket().welcome(false);
    expect(typesOf(means.lastSocket().sent)).toEqual(['hello']);
    expect(chat.state.get()).toMatchObject({ outbox: [], view: null });
  });

  test('a message dropped for haste goes out again on another connection', () => {
    const { means, chat, first } = talking();
    chat.say('moist');
    first.hear({ type: 'error', error: report('MESSAGES_TOO_FAST'), of: null });
    first.hear({ type: 'alive' });
    expect(chat.state.get()).toMatchObject({ link: 'lost', refusal: null });
    means.pass(20_000);
    means.lastSocket().welcome(true);
    expect(means.lastSocket().sent[1]).toMatchObject({ text: 'moist' });
  });

  test('a refused message is shown with its code and not sent again', () => {
    const { chat, first } = talking();
    chat.undo('no-such-event');
    const id = first.sent.at(-2)!['id'];
    first.hear({ type: 'error', error: report('EVENT_CHANGED'), of: id as string });
    expect(chat.state.get()).toMatchObject({ outbox: [], refusal: { code: 'EVENT_CHANGED' } });
  });
});

describe('the connection', () => {
  test('comes back after waits that grow and never pass 20 s', () => {
    const means = fakeMeans();
    const chat = createChat(means);
    const waits: number[] = [];
    for (let attempt = 0; attempt < 9; attempt++) {
      means.lastSocket().listener.onClose(1006);
      const opened = means.sockets.length;
      let waited = 0;
      while (means.sockets.length === opened) {
        means.pass(100);
        waited += 100;
      }
      waits.push(waited);
    }
    expect(waits).toEqual([500, 1000, 2000, 4000, 8000, 16_000, 20_000, 20_000, 20_000]);
    expect(chat.state.get().link).toBe('lost');
  });

  test('a server that has fallen silent is noticed and left', () => {
    const { means, first } = talking();
    means.pass(aliveEveryMs);
    expect(first.sent.at(-1)).toEqual({ type: 'alive' });
    means.pass(aliveWithinMs);
    expect(first.isClosed()).toBe(true);
  });

  test('an answered alive keeps the connection', () => {
    const { means, first } = talking();
    for (let round = 0; round < 5; round++) {
      means.pass(aliveEveryMs);
      first.hear({ type: 'alive' });
    }
    expect(first.isClosed()).toBe(false);
    expect(means.sockets).toHaveLength(1);
  });

  test('another version of the protocol ends it, and the page asks to be loaded anew', () => {
    const { means, chat, first } = talking();
    first.listener.onClose(4001);
    means.pass(60_000);
    expect(chat.state.get().link).toBe('other-version');
    expect(means.sockets).toHaveLength(1);
  });

  test('a frame that is none of the protocol is shown as a coded error and believed in nothing', () => {
    const { chat, first } = talking();
    first.hear({ type: 'view', view: { ...emptyView, verdict: { verdict: 'spray-today' } }, kept: 0 });
    expect(chat.state.get()).toMatchObject({ view: emptyView, refusal: { code: 'MESSAGE_FIELD_WRONG' } });
  });

  test('the moment of the conversation goes on from that of the view', () => {
    const { means, chat } = talking();
    means.pass(90_000);
    expect(conversationNow(chat.state.get(), means.now())).toBe(Date.parse('2026-11-12T10:01:30Z') / 1000);
  });
});

function report(code: string) {
  return { code, says: 'So.', expected: 'this', came: 'that', next: 'Do so.' };
}

describe('the language of the page', () => {
  const inGerman = { ...emptyView, language: 'de' };
  const languagesAsked = (sent: readonly Record<string, unknown>[]) =>
    sent.filter(({ request }) => request === 'language').map(({ language }) => language);

  function pageIn(language: string, memory?: Parameters<typeof fakeMeans>[0]) {
    const means = { ...fakeMeans(memory), language };
    const chat = createChat(means);
    means.lastSocket().welcome(memory !== undefined);
    return { means, chat, socket: means.lastSocket() };
  }

  test('is asked for once where a conversation is shown in another, over a lost connection too, and moves no focus', () => {
    const { chat, means, socket } = pageIn('de');
    const ofPage = () => means.sockets.flatMap(({ sent }) => languagesAsked(sent));
    socket.hear({ type: 'view', view: emptyView, kept: 0 });
    socket.hear({ type: 'view', view: emptyView, kept: 0 });
    expect(ofPage()).toEqual(['de']);
    expect(chat.state.get().hasActed).toBe(false);
    socket.hear({ type: 'view', view: inGerman, kept: 0 });
    socket.hear({ type: 'alive' });
    socket.listener.onClose(1006);
    means.pass(20_000);
    means.lastSocket().welcome(true);
    means.lastSocket().hear({ type: 'view', view: inGerman, kept: 0 });
    expect(ofPage()).toEqual(['de']);
  });

  test('is asked for again where the conversation, or another one, comes in another once more', () => {
    const { means, socket } = pageIn('de');
    socket.hear({ type: 'view', view: emptyView, kept: 0 });
    socket.hear({ type: 'view', view: inGerman, kept: 0 });
    socket.hear({ type: 'view', view: emptyView, kept: 0 });
    expect(languagesAsked(socket.sent)).toEqual(['de', 'de']);
    means.memory.write(tokenKey, 'token-of-another-conversation');
    socket.hear({ type: 'view', view: emptyView, kept: 0 });
    expect(languagesAsked(socket.sent)).toEqual(['de', 'de', 'de']);
  });

  test('changed in the settings, each time the page is loaded in it the running conversation follows', () => {
    const first = pageIn('de');
    first.socket.hear({ type: 'view', view: emptyView, kept: 0 });
    first.socket.hear({ type: 'alive' });
    first.chat.stop();
    const second = pageIn('en', first.means.memory);
    second.socket.hear({ type: 'view', view: inGerman, kept: 0 });
    expect(languagesAsked(second.socket.sent)).toEqual(['en']);
  });
});
