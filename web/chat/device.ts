import type { Memory } from './memory.ts';

const key = 'loamward.device';

/** The name of this device, made once. */
export function readDevice(memory: Memory, newId: () => string): string {
  const kept = memory.read(key);
  return kept === null ? nextDeviceStamp(memory, newId).device : (kept.split(' ', 1)[0] ?? '');
}

/** True where this device has said more than that it begins: only then is there a conversation to be missed. */
export function hasSaidMore(memory: Memory): boolean {
  return Number(memory.read(key)?.split(' ')[1] ?? 0) > 0;
}

/** The next stamp of this device: its name, made once, and a number that rises with each event. */
export function nextDeviceStamp(memory: Memory, newId: () => string): { device: string; count: number } {
  const kept = /^([\w-]{1,64}) (\d{1,15})$/.exec(memory.read(key) ?? '');
  const stamp = { device: kept?.[1] ?? newId(), count: Number(kept?.[2] ?? -1) + 1 };
  memory.write(key, `${stamp.device} ${stamp.count}`);
  return stamp;
}
