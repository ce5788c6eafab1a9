import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import { latestStart } from '../../src/core/dialogue/latest-start.ts';
import type { SafeVault } from './safe-vault.ts';
import type { ConversationNote, KeptEvent } from './vault.ts';

/** The events of one conversation as this device has them: at once in memory, and in the vault where that is possible. */
export interface Shelf {
  readonly token: string;
  readonly events: () => readonly ConversationEvent[];
  readonly has: (id: string) => boolean;
  /** Events that the server does not have yet. */
  readonly unsent: () => readonly ConversationEvent[];
  readonly serverCount: () => number;
  /** Resolves once they are on the disk, or the device has refused. What was refused is tried again with the next. */
  readonly add: (events: readonly ConversationEvent[], handed: boolean, serverCount?: number) => Promise<void>;
  readonly markHanded: (ids: readonly string[]) => Promise<void>;
  /** The server has lost the conversation: all of it counts as not handed over. */
  readonly forgetServer: () => Promise<void>;
}

/** Opens the shelf of a conversation with what the vault holds of it. */
export async function openShelf(vault: SafeVault, token: string): Promise<Shelf> {
  const kept = await vault.attempt((one) => one.readEvents(token), []);
  const notes = await vault.attempt((one) => one.notes(), []);
  const rows = new Map(kept.map((row) => [row.id, row]));
  const unwritten = new Set<string>();
  let serverCount = notes.find((note) => note.token === token)?.serverCount ?? 0;

  const put = (fresh: readonly KeptEvent[]): Promise<void> => {
    for (const row of fresh) {
      rows.set(row.id, row);
      unwritten.add(row.id);
    }
    return write();
  };
  const write = async (): Promise<void> => {
    const written = [...unwritten].flatMap((id) => rows.get(id) ?? []);
    const note = noteOf(token, [...rows.values()], serverCount);
    if (!(await vault.write((one) => one.keepEvents(written, note)))) return;
    for (const row of written) if (rows.get(row.id) === row) unwritten.delete(row.id);
  };
  const changed = (handed: boolean, which: (row: KeptEvent) => boolean): KeptEvent[] =>
    [...rows.values()].filter((row) => row.handed !== handed && which(row)).map((row) => ({ ...row, handed }));

  return {
    token,
    events: () => [...rows.values()].map(({ event }) => event),
    has: (id) => rows.has(id),
    unsent: () => [...rows.values()].filter(({ handed }) => !handed).map(({ event }) => event),
    serverCount: () => serverCount,
    add: (events, handed, count = serverCount) => {
      serverCount = count;
      return put(
        events.map((event) => ({ token, id: event.id, event, handed: handed || rows.get(event.id)?.handed === true })),
      );
    },
    markHanded: (ids) => {
      const named = new Set(ids);
      return put(changed(true, ({ id }) => named.has(id)));
    },
    forgetServer: () => {
      serverCount = 0;
      return put(changed(false, () => true));
    },
  };
}

function noteOf(token: string, rows: readonly KeptEvent[], serverCount: number): ConversationNote {
  const events = rows.map(({ event }) => event).sort((a, b) => a.at - b.at);
  const started = latestStart(events);
  const verdict = events.findLast((event) => event.kind === 'verdict-given');
  const isOfThis = verdict !== undefined && started !== undefined && verdict.at >= started.at;
  return {
    token,
    usedAt: events.at(-1)?.at ?? 0,
    fieldName: started?.field?.name ?? null,
    invented: started?.field?.invented === true,
    headline: isOfThis ? verdict.decision.headline : null,
    serverCount,
    unsent: rows.filter(({ handed }) => !handed).length,
    packHash: started?.packHash ?? null,
    packId: started?.packId ?? null,
  };
}
