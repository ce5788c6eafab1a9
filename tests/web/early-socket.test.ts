import { describe, expect, test } from 'vitest';
import { helloText } from '../../web/chat/hello.ts';
import type { Socket, SocketListener } from '../../web/chat/means.ts';
import { openEarly } from '../../web/early-socket.ts';

function opened() {
  const sent: string[] = [];
  const closed: true[] = [];
  let listener!: SocketListener;
  const early = openEarly((given) => {
    listener = given;
    return { send: (text) => void sent.push(text), close: () => void closed.push(true) };
  });
  const heard: string[] = [];
  const fresh: string[] = [];
  const openFresh = (): Socket => ({ send: (text) => void fresh.push(text), close: () => {} });
  const adopt = () =>
    early.adopt(
      {
        onOpen: () => heard.push('open'),
        onText: (text) => heard.push(text),
        onClose: (code) => heard.push(`${code}`),
      },
      openFresh,
    );
  return { sent, heard, fresh, adopt, server: () => listener, closed: () => closed.length };
}

describe('a connection that is opened while the page is loaded', () => {
  test('says hello once, and gives what it heard to the link that would say the same', async () => {
    const { sent, heard, adopt, server } = opened();
    server().onOpen();
    server().onText('welcome');
    const socket = adopt()!;
    await Promise.resolve();
    expect(heard).toEqual(['open']);
    socket.send(helloText(null));
    await Promise.resolve();
    server().onText('view');
    socket.send('alive');
    server().onClose(1006);
    expect(sent).toEqual([helloText(null), 'alive']);
    expect(heard).toEqual(['open', 'welcome', 'view', '1006']);
  });

  test('is given up for a fresh one where the link would say another hello', async () => {
    const { sent, heard, fresh, adopt, server, closed } = opened();
    server().onOpen();
    server().onText('welcome of another conversation');
    const socket = adopt()!;
    socket.send(helloText('b'.repeat(64)));
    socket.send('later');
    server().onText('more of it');
    await Promise.resolve();
    expect(sent).toEqual([helloText(null)]);
    expect(closed()).toBe(1);
    expect(fresh).toEqual(['later']);
    expect(heard).toEqual(['open']);
  });

  test('is of no use once it is closed', () => {
    const { adopt, server } = opened();
    server().onClose(1006);
    expect(adopt()).toBeNull();
  });
});
