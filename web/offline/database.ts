import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Review } from '../../src/core/practice/schedule.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';
import type { ConversationNote, KeptEvent, Supplies } from './vault.ts';

/** What the database of this page holds. */
export interface Schema extends DBSchema {
  readonly events: { key: [string, string]; value: KeptEvent; indexes: { token: string } };
  readonly conversations: { key: string; value: ConversationNote };
  readonly packs: { key: string; value: Pack };
  readonly forecasts: { key: string; value: Forecast };
  readonly supplies: { key: string; value: Supplies };
  /** Answers to practice days, in the order in which they were given; since version 2. */
  readonly reviews: { key: number; value: Review };
}

const version = 2;

/** The database, opened with the first use, and again where the browser closed it; rejects where the browser refuses. */
export type Database = () => Promise<IDBPDatabase<Schema>>;

/** The database of a name, brought to the newest version from whichever it has. */
export function databaseOf(name: string): Database {
  let opened: Promise<IDBPDatabase<Schema>> | null = null;
  return () => {
    const again = (): void => {
      opened = null;
    };
    opened ??= openDB<Schema>(name, version, {
      upgrade: (fresh, from) => {
        if (from < 1) {
          fresh.createObjectStore('events', { keyPath: ['token', 'id'] }).createIndex('token', 'token');
          fresh.createObjectStore('conversations', { keyPath: 'token' });
          fresh.createObjectStore('packs', { keyPath: 'hash' });
          fresh.createObjectStore('forecasts');
          fresh.createObjectStore('supplies');
        }
        if (from < 2) fresh.createObjectStore('reviews', { autoIncrement: true });
      },
      blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
      terminated: again,
    }).catch((error: unknown) => {
      again();
      throw error;
    });
    return opened;
  };
}
