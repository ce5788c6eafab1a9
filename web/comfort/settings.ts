import type { Memory } from '../chat/memory.ts';
import { createStore, type Store } from '../store.ts';

/** Looks that can be chosen beside that of the device. */
export const looks = ['day', 'night', 'sun'] as const;
/** A look; `device` follows the settings of the device. */
export type Look = 'device' | (typeof looks)[number];

/** What a person has set on this device; nothing of it reaches the server. */
export interface Comfort {
  readonly look: Look;
  /** A touch of the buzzer with each answer, where the device has one. */
  readonly buzz: boolean;
  /** Questions and answers are read aloud as they come. */
  readonly readsAloud: boolean;
  /** A button to speak stands beside the box. */
  readonly listens: boolean;
  /** What was heard is sent without a further press. */
  readonly sendsHeard: boolean;
}

/** Speech is off until it is wanted. */
export const standardComfort: Comfort = {
  look: 'device',
  buzz: true,
  readsAloud: false,
  listens: false,
  sendsHeard: false,
};

const key = 'loamward.comfort';

/** The settings of this device, kept as they change. What is kept in another form counts as not set. */
export function comfortOf(memory: Memory): Store<Comfort> {
  const store = createStore(readComfort(memory.read(key)));
  store.listen(() => memory.write(key, JSON.stringify(store.get())));
  return store;
}

function readComfort(text: string | null): Comfort {
  const kept = parsed(text);
  const isOn = (name: keyof Comfort) => (typeof kept[name] === 'boolean' ? { [name]: kept[name] } : {});
  return {
    ...standardComfort,
    ...(looks.some((look) => look === kept['look']) ? { look: kept['look'] as Look } : {}),
    ...isOn('buzz'),
    ...isOn('readsAloud'),
    ...isOn('listens'),
    ...isOn('sendsHeard'),
  };
}

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

/** Shows the look on the page's root; the device's own needs no mark. */
export function showLook(root: HTMLElement, look: Look): void {
  if (look === 'device') delete root.dataset['look'];
  else root.dataset['look'] = look;
}
