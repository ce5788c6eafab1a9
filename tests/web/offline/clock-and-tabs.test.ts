import { describe, expect, test } from 'vitest';
import { createMemory } from '../../../web/chat/memory.ts';
import { createServerClock } from '../../../web/offline/server-clock.ts';
import { createTabs, type TabChannel } from '../../../web/offline/tabs.ts';
import { mapStorage } from '../fake-means.ts';

const day = 86_400;

function device(start = 1_000_000) {
  const storage = mapStorage();
  const memory = createMemory(() => storage);
  const state = { device: start, steady: 0 };
  const open = () => createServerClock({ now: () => state.device, steady: () => state.steady, memory });
  const pass = (seconds: number, steady = seconds) => {
    state.device += seconds;
    state.steady += steady;
  };
  return { open, pass, state };
}

describe("the server's clock on this device", () => {
  test('before the server was ever heard the device is believed and nothing is said', () => {
    const { open, pass } = device();
    const clock = open();
    pass(60);
    expect([clock.now(), clock.fault()]).toEqual([1_000_060, null]);
  });

  test.each([2 * day, -2 * day])('a difference of %d s is said and made good, also after a restart', (ahead) => {
    const { open, pass } = device();
    const clock = open();
    clock.learn(1_000_000 - ahead);
    pass(100);
    expect(clock.now()).toBe(1_000_100 - ahead);
    expect(clock.fault()).toEqual({ kind: 'off', aheadSeconds: ahead });
    pass(3600, 0);
    const again = open();
    expect(again.now()).toBe(1_003_700 - ahead);
    expect(again.fault()).toEqual({ kind: 'off', aheadSeconds: ahead });
  });

  test('a clock that is set back while the page is open changes nothing, and is said', () => {
    const { open, pass, state } = device();
    const clock = open();
    clock.learn(1_000_000);
    pass(100);
    state.device -= 2 * day;
    expect(clock.now()).toBe(1_000_100);
    expect(clock.fault()).toEqual({ kind: 'set-back' });
  });

  test('a device that slept is not taken for younger than it is', () => {
    const { open, pass } = device();
    const clock = open();
    clock.learn(1_000_000);
    pass(7200, 10);
    expect(clock.now()).toBe(1_007_200);
  });

  test('after a restart time never goes back behind what was seen; the next word of the server settles it', () => {
    const { open, pass, state } = device();
    const clock = open();
    clock.learn(1_000_000);
    pass(1000);
    clock.now();
    state.device -= 2 * day;
    const again = open();
    expect(again.now()).toBeGreaterThanOrEqual(1_001_000);
    expect(again.fault()).toEqual({ kind: 'set-back' });
    again.learn(1_002_000);
    expect(again.now()).toBe(1_002_000);
    expect(again.fault()).toMatchObject({ kind: 'off' });
  });
});

describe('pages of one browser', () => {
  function channels(count: number) {
    const calls: ((text: string) => void)[] = [];
    const queue: (() => void)[] = [];
    const channel = (index: number): TabChannel => ({
      post: (text) => {
        for (const [other, call] of calls.entries()) if (other !== index) queue.push(() => call(text));
      },
      listen: (call) => {
        calls[index] = call;
      },
    });
    const deliver = () => {
      for (let next = queue.shift(); next; next = queue.shift()) next();
    };
    return { all: Array.from({ length: count }, (_, index) => channel(index)), deliver };
  }

  test('the one that was opened last goes on, the others are told', () => {
    const { all, deliver } = channels(3);
    const lost: number[] = [];
    for (const [index, channel] of all.entries()) {
      createTabs(channel, { now: () => 100 + index, id: `tab-${index}`, onLost: () => lost.push(index) });
      deliver();
    }
    expect(lost).toEqual([0, 1]);
  });

  test('of two that are opened at the same moment exactly one goes on', () => {
    const { all, deliver } = channels(2);
    const lost: string[] = [];
    for (const [index, channel] of all.entries()) {
      createTabs(channel, { now: () => 100, id: `tab-${index}`, onLost: () => lost.push(`tab-${index}`) });
    }
    deliver();
    expect(lost).toEqual(['tab-0']);
  });

  test('one that was told can take over again', () => {
    const { all, deliver } = channels(2);
    const lost: number[] = [];
    let now = 100;
    const tabs = all.map((channel, index) => {
      now += 1;
      const made = createTabs(channel, { now: () => now, id: `tab-${index}`, onLost: () => lost.push(index) });
      deliver();
      return made;
    });
    now += 1;
    tabs[0]!.claim();
    deliver();
    expect(lost).toEqual([0, 1]);
  });
});
