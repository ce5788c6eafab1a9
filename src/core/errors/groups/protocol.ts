import type { ErrorEntry } from '../entry.ts';

const reload = 'Reload the page.';

/** Failures of the socket protocol and the server. */
export const protocolErrors = {
  MESSAGE_NOT_JSON: { says: 'The message is not a JSON object.', next: reload },
  MESSAGE_TYPE_UNKNOWN: { says: 'The message is of no kind that the protocol has.', next: reload },
  MESSAGE_FIELD_WRONG: { says: 'A field of the message is not as the protocol has it.', next: reload },
  MESSAGE_NOT_TEXT: {
    says: 'The message came as bytes; the protocol is text only.',
    next: 'Send one JSON object in a text frame.',
  },
  MESSAGE_BAD_TEXT: { says: 'The message is not valid UTF-8.', next: reload, closeCode: 1007 },
  MESSAGE_BAD_FRAME: { says: 'A frame breaks the socket standard.', next: reload, closeCode: 1002 },
  MESSAGE_IN_PIECES: {
    says: 'The message came in more pieces than the server takes.',
    next: 'Send a message as one frame.',
    closeCode: 1008,
  },
  MESSAGE_TOO_LARGE: {
    says: 'The message is larger than the protocol allows.',
    next: 'Say it in fewer words.',
    closeCode: 1009,
  },
  MESSAGES_TOO_FAST: {
    says: 'Messages come faster than the server takes them; this one was dropped.',
    next: 'Wait a second, then send it again.',
  },
  MESSAGES_FLOOD: {
    says: 'Messages kept coming far faster than the server takes them.',
    next: 'Wait a minute, then connect again.',
    closeCode: 1008,
  },
  HELLO_MISSING: { says: 'The first message has to be hello.', next: reload },
  HELLO_TWICE: { says: 'This connection has said hello already.', next: 'Open another connection.' },
  PROTOCOL_VERSION: {
    says: 'The page and the server speak different versions of the protocol.',
    next: reload,
    closeCode: 4001,
  },
  CONVERSATION_GONE: {
    says: 'The conversation is no longer kept on the server.',
    next: 'Start again; old conversations are dropped after some days.',
    httpStatus: 404,
  },
  CONVERSATION_MISSING: { says: 'No conversation has been started yet.', next: 'Choose a field to start.' },
  CONVERSATION_FULL: {
    says: 'The conversation has grown as long as the server keeps one.',
    next: 'Open the page anew to begin another.',
  },
  TREATMENT_UNKNOWN: { says: 'There is no such treatment.', next: 'Choose one of the treatments offered.' },
  TREATMENT_OTHER: {
    says: 'This conversation is about another treatment.',
    next: 'Begin a new conversation for the treatment.',
  },
  FIELD_UNKNOWN: { says: 'There is no such field.', next: 'Choose one of the fields offered, or your own.' },
  READER_TOO_SLOW: {
    says: 'The answers were not taken up, so the connection was closed.',
    next: 'Connect again; the conversation goes on where it was.',
    closeCode: 1013,
  },
  SERVER_CLOSING: {
    says: 'The server is going down.',
    next: 'Connect again in a while; the conversation goes on where it was if the server still has it.',
    closeCode: 1001,
    httpStatus: 503,
  },
  SERVER_FAULT: {
    says: 'Something failed on the server; the message had no effect.',
    next: 'Do not spray on an answer that did not come; send it again.',
  },
  ORIGIN_REFUSED: {
    says: 'The chat may be opened only from the pages of this server.',
    next: 'Open the page at the address of the server, or name the address in LOAMWARD_ORIGINS.',
    httpStatus: 403,
  },
  CONNECTIONS_FULL: {
    says: 'The server has as many connections as it takes.',
    next: 'Try again in a while.',
    httpStatus: 503,
  },
  CONNECTIONS_FULL_HERE: {
    says: 'There are as many connections from this address as the server takes.',
    next: 'Close other pages of this program, then try again.',
    httpStatus: 429,
  },
  UPGRADE_NEEDED: {
    says: 'This address speaks web socket only.',
    next: 'Open the page instead.',
    httpStatus: 426,
  },
  ROUTE_UNKNOWN: { says: 'There is nothing at this address.', next: 'Open the page at /.', httpStatus: 404 },
  REQUEST_WRONG: { says: 'The request could not be read.', next: 'Open the page at /.', httpStatus: 400 },
  PAGE_NOT_BUILT: {
    says: 'The page has not been built.',
    next: 'Run npm run build, then start the server again.',
    httpStatus: 503,
  },
  SETTING_WRONG: {
    says: 'A setting of the server is not of the right form.',
    next: 'Mend the setting named; docs/operator.md lists them all.',
  },
  TOKEN_MISSING: {
    says: 'The request does not say which conversation it is about.',
    next: 'Send the token of the conversation in the Authorization header.',
    httpStatus: 401,
  },
  EVENTS_UNREADABLE: {
    says: 'What was handed over could not be read.',
    next: 'Nothing of it was taken; it stays on the device. Reload the page, then try again.',
    httpStatus: 400,
  },
  EVENTS_TOO_LARGE: {
    says: 'More was handed over at once than the server takes.',
    next: 'Hand it over in smaller parts; what was taken before is kept.',
    httpStatus: 413,
  },
  REQUESTS_TOO_FAST: {
    says: 'Requests come faster than the server takes them.',
    next: 'Wait a minute, then try again; nothing is lost.',
    httpStatus: 429,
  },
  HAND_OVER_NOTHING: {
    says: 'No answer stands that could be handed over.',
    next: 'Answer the open question or look again, then hand over what comes.',
    httpStatus: 409,
  },
  SHOWN_GONE: {
    says: 'Nothing is shown under this address: it has ended, was taken back, or never was.',
    next: 'Do not spray on an answer that cannot be read; ask for a new one.',
    httpStatus: 404,
  },
  VERDICT_NOT_REPEATED: {
    says: 'An answer that was handed over does not follow from the facts recorded with it.',
    next: 'Do not spray on it. Look again; the device keeps what was said.',
  },
} as const satisfies Record<string, ErrorEntry>;
