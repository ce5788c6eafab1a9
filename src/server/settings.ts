import { codedError } from '../core/errors/coded-error.ts';
import { type Setting, type SettingName, serverSettingTable } from './setting-table.ts';

/** Settings of the server, read once at start. */
export interface ServerSettings {
  readonly host: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** Origins that may open the chat besides the server's own, as `https://host[:port]`. */
  readonly origins: readonly string[];
  /** True where the address of a peer is the last one in X-Forwarded-For, set by a reverse proxy. */
  readonly behindProxy: boolean;
  readonly connections: number;
  readonly connectionsPerAddress: number;
  readonly messagesPerSecond: number;
  /** Messages that may come at once before the rate counts. */
  readonly messageBurst: number;
  readonly keptConversations: number;
  readonly keptEvents: number;
  readonly keptHours: number;
  /** File to which each verdict is added; null where none is. */
  readonly saveVerdicts: string | null;
  /** Days for which an answer is shown under its link. */
  readonly shownDays: number;
  /** Folder of overlays; null where none is set. */
  readonly overlays: string | null;
  /** True where the adviser's bench of a page on this machine may write into that folder. */
  readonly benchWrites: boolean;
}

/** Environment variables, or anything of their form. */
export type Environment = Readonly<Record<string, string | undefined>>;

/** Reads and checks the server's settings. Throws SETTING_WRONG naming the variable. */
export function serverSettingsFrom(env: Environment): ServerSettings {
  const text = (name: SettingName) => env[name]?.trim() || serverSettingTable[name].standard;
  const whole = (name: SettingName) => wholeNumber(name, text(name));
  return {
    host: text('LOAMWARD_HOST'),
    port: whole('LOAMWARD_PORT'),
    origins: text('LOAMWARD_ORIGINS')
      .split(',')
      .map((each) => each.trim())
      .filter((each) => each !== '')
      .map(originOf),
    behindProxy: yesOrNo('LOAMWARD_BEHIND_PROXY', text('LOAMWARD_BEHIND_PROXY')),
    connections: whole('LOAMWARD_MAX_CONNECTIONS'),
    connectionsPerAddress: whole('LOAMWARD_MAX_CONNECTIONS_PER_ADDRESS'),
    messagesPerSecond: whole('LOAMWARD_MESSAGES_PER_SECOND'),
    messageBurst: whole('LOAMWARD_MESSAGE_BURST'),
    keptConversations: whole('LOAMWARD_KEPT_CONVERSATIONS'),
    keptEvents: whole('LOAMWARD_KEPT_EVENTS'),
    keptHours: whole('LOAMWARD_KEPT_HOURS'),
    saveVerdicts: text('LOAMWARD_SAVE_VERDICTS') || null,
    shownDays: whole('LOAMWARD_SHOWN_DAYS'),
    overlays: text('LOAMWARD_OVERLAYS') || null,
    benchWrites: yesOrNo('LOAMWARD_BENCH_WRITES', text('LOAMWARD_BENCH_WRITES')),
  };
}

/** The settings where the environment says nothing. */
export const standardServerSettings: ServerSettings = serverSettingsFrom({});

function wholeNumber(name: SettingName, came: string): number {
  const [low, high] = (serverSettingTable[name] as Setting).range ?? [0, Number.MAX_SAFE_INTEGER];
  const value = /^\d{1,9}$/.test(came) ? Number(came) : Number.NaN;
  if (value >= low && value <= high) return value;
  throw codedError('SETTING_WRONG', {
    expected: `a whole number from ${low} to ${high}`,
    came,
    parameter: name,
    next: `Mend ${name}; docs/operator.md lists every setting.`,
  });
}

function yesOrNo(name: SettingName, came: string): boolean {
  if (came === 'yes' || came === 'no') return came === 'yes';
  throw codedError('SETTING_WRONG', { expected: 'yes or no', came, parameter: name });
}

function originOf(came: string): string {
  try {
    const { origin, protocol, pathname, search } = new URL(came);
    if (/^https?:$/.test(protocol) && pathname === '/' && search === '') return origin;
  } catch {
    // Falls through to the coded error.
  }
  throw codedError('SETTING_WRONG', {
    expected: 'origins such as https://farm.example, with commas between',
    came,
    parameter: 'LOAMWARD_ORIGINS',
  });
}
