import { useEffect, useState } from 'preact/hooks';
import type { ChatMeans } from '../chat/means.ts';

/** The text once it has stood for `ms` milliseconds, else nothing: what passes in a blink is neither shown nor read out. */
export function useLasting(text: string, ms: number, means: ChatMeans): string {
  const [lasting, setLasting] = useState('');
  useEffect(() => (text === '' ? undefined : means.after(ms, () => setLasting(text))), [text]);
  return text === lasting ? text : '';
}
