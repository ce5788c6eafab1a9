/** One setting: what holds where it is not set, in which range it may lie, what it does. */
export interface Setting {
  readonly standard: string;
  readonly range?: readonly [number, number];
  readonly meaning: string;
}

/** Every environment variable that the server itself reads; docs/operator.md carries the same table, held by a test. */
export const serverSettingTable = {
  LOAMWARD_HOST: {
    standard: '127.0.0.1',
    meaning: 'Address to listen on. The standard one is reached from this machine only.',
  },
  LOAMWARD_PORT: { standard: '8080', range: [0, 65535], meaning: 'Port to listen on; 0 takes any free one.' },
  LOAMWARD_OVERLAYS: {
    standard: '',
    meaning:
      'Folder of local rules (overlays) that are laid over the pack; each must be sound, or the server does not start.',
  },
  LOAMWARD_BENCH_WRITES: {
    standard: 'no',
    meaning:
      'yes lets the adviser’s bench of a page on this same machine write into the folder of LOAMWARD_OVERLAYS; never from elsewhere, for there is no sign-in.',
  },
  LOAMWARD_ORIGINS: {
    standard: '',
    meaning: 'Origins from which pages may open the chat besides the server itself, with commas between.',
  },
  LOAMWARD_BEHIND_PROXY: {
    standard: 'no',
    meaning:
      'yes where a reverse proxy stands before it: peers are then told apart by the last X-Forwarded-For address.',
  },
  LOAMWARD_MAX_CONNECTIONS: { standard: '1000', range: [1, 100_000], meaning: 'Most chat connections at once.' },
  LOAMWARD_MAX_CONNECTIONS_PER_ADDRESS: {
    standard: '50',
    range: [1, 100_000],
    meaning: 'Most chat connections at once from one address.',
  },
  LOAMWARD_MESSAGES_PER_SECOND: {
    standard: '10',
    range: [1, 100_000],
    meaning: 'Messages that one connection may send each second, on average.',
  },
  LOAMWARD_MESSAGE_BURST: {
    standard: '40',
    range: [1, 100_000],
    meaning: 'Messages that one connection may send at once before the rate counts.',
  },
  LOAMWARD_KEPT_CONVERSATIONS: {
    standard: '1000',
    range: [1, 100_000],
    meaning: 'Most conversations kept in memory; the one longest unused is dropped first.',
  },
  LOAMWARD_KEPT_EVENTS: {
    standard: '50000',
    range: [1000, 10_000_000],
    meaning: 'Most events kept in memory in all; a verdict takes some tens of kB.',
  },
  LOAMWARD_KEPT_HOURS: {
    standard: '72',
    range: [1, 2400],
    meaning: 'Hours without use after which a conversation is dropped.',
  },
  LOAMWARD_SAVE_VERDICTS: {
    standard: '',
    meaning:
      'File to which each verdict is added as a line of JSON, with the facts that it stood on (place and time among them), for loamward rules compare --events. Nothing is saved where it is not set.',
  },
  LOAMWARD_SHOWN_DAYS: {
    standard: '30',
    range: [1, 365],
    meaning: 'Days for which an answer is shown under the link that was made for it, unless it is taken back before.',
  },
} as const satisfies Record<string, Setting>;

/** Name of a setting. */
export type SettingName = keyof typeof serverSettingTable;
