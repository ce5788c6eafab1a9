import { describe, expect, test } from 'vitest';
import { createMemory } from '../../web/chat/memory.ts';
import { fromLastStart, keepOutbox, readOutbox } from '../../web/chat/outbox.ts';
import { mapStorage } from './fake-means.ts';

const refusing = {
  getItem: () => null,
  setItem: () => {
    throw new DOMException('full', 'QuotaExceededError');
  },
  removeItem: () => {
    throw new DOMException('full', 'QuotaExceededError');
  },
};
const say = { type: 'say', id: 'a', at: 1, device: 'd', count: 1, text: 'moist' } as const;
const start = { type: 'start', id: 'b', at: 2, device: 'd', count: 2, field: null } as const;

describe('the memory of the page', () => {
  test('outlives the page where the browser keeps it', () => {
    const storage = mapStorage();
    createMemory(() => storage).write('key', 'value');
    expect(createMemory(() => storage).read('key')).toBe('value');
  });

  test.each([
    ['refuses to write', () => refusing],
    [
      'refuses altogether',
      () => {
        throw new DOMException('blocked', 'SecurityError');
      },
    ],
  ])('lasts as long as the page where the browser %s', (_name, storage) => {
    const memory = createMemory(storage);
    memory.write('key', 'value');
    expect(memory.read('key')).toBe('value');
    memory.write('key', null);
    expect(memory.read('key')).toBeNull();
  });

  test('unsent messages come back as they were, and nothing else does', () => {
    const memory = createMemory(mapStorage);
    const storage = mapStorage();
    const kept = createMemory(() => storage);
    keepOutbox(kept, [say, start]);
    expect(readOutbox(kept)).toEqual([say, start]);
    kept.write('loamward.unsent', JSON.stringify([{ ...say, text: 7 }, 'junk', start]));
    expect(readOutbox(kept)).toEqual([start]);
    kept.write('loamward.unsent', '{"half');
    expect(readOutbox(kept)).toEqual([]);
    expect(readOutbox(memory)).toEqual([]);
  });

  test('a new conversation takes only what begins it and what came after', () => {
    expect(fromLastStart([say, start, say])).toEqual([start, say]);
    expect(fromLastStart([say])).toEqual([]);
  });
});
