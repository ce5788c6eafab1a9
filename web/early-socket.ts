import { helloText } from './chat/hello.ts';
import type { Socket, SocketListener } from './chat/means.ts';
import { tokenKey } from './chat/token-key.ts';

/** A connection that was opened, and said hello on, while the rest of the page was still on its way. */
export interface EarlySocket {
  /** The page's link takes it as its own; false where it is of no use any more. */
  readonly adopt: (listener: SocketListener, openFresh: () => Socket) => Socket | null;
}

/** Opens the browser's socket of the chat. */
export function openChatSocket({ onOpen, onText, onClose }: SocketListener): Socket {
  const socket = new WebSocket(new URL('/chat', location.href.replace(/^http/, 'ws')));
  socket.addEventListener('open', onOpen);
  socket.addEventListener('message', ({ data }) => onText(String(data)));
  socket.addEventListener('close', ({ code }) => onClose(code));
  return {
    send: (text) => {
      if (socket.readyState === WebSocket.OPEN) socket.send(text);
    },
    close: () => socket.close(),
  };
}

/**
 * Opens a connection at once and says hello, so that both go on while the page is loaded. What is heard meanwhile is kept for the
 * link that takes the connection over; where that would say another hello, it gets a fresh connection.
 */
export function openEarly(open: (listener: SocketListener) => Socket = openChatSocket, language?: string): EarlySocket {
  const hello = helloText(readToken(), language);
  const heard: string[] = [];
  let isOpen = false;
  let isClosed = false;
  let owner: SocketListener | null = null;
  const socket = open({
    onOpen: () => {
      isOpen = true;
      socket.send(hello);
      owner?.onOpen();
    },
    onText: (text) => (owner ? owner.onText(text) : heard.push(text)),
    onClose: (code) => {
      isClosed = true;
      owner?.onClose(code);
    },
  });
  return {
    adopt: (listener, openFresh) => {
      if (isClosed) return null;
      let inside: Socket = socket;
      let isGreeted = false;
      const replay = (): void => {
        for (const text of heard.splice(0)) listener.onText(text);
      };
      const greet = (text: string): void => {
        isGreeted = true;
        if (text === hello) {
          owner = listener;
          queueMicrotask(replay);
          return;
        }
        owner = null;
        socket.close();
        inside = openFresh();
      };
      owner = { ...listener, onText: (text) => heard.push(text) };
      if (isOpen) queueMicrotask(listener.onOpen);
      return {
        send: (text) => (isGreeted ? inside.send(text) : greet(text)),
        close: () => inside.close(),
      };
    },
  };
}

function readToken(): string | null {
  try {
    return localStorage.getItem(tokenKey);
  } catch {
    return null;
  }
}
