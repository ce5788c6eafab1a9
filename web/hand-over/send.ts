import { saveFile } from '../save-file.ts';

/** What came of handing a text to the device. */
export type Sent = 'shared' | 'copied' | 'saved' | 'refused';

/** True where the device has a way of its own to send a text on. */
export function canShare(text: string): boolean {
  return typeof navigator.share === 'function' && (navigator.canShare?.({ text }) ?? true);
}

/** Hands the text to the device's own way of sending. A person who changes their mind is no failure. */
export async function share(title: string, text: string): Promise<Sent | null> {
  try {
    await navigator.share({ title, text });
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? null : 'refused';
  }
}

/** Puts the text on the clipboard; on a page that is not secure by way of a selection. */
export async function copy(text: string): Promise<Sent> {
  try {
    if (navigator.clipboard) {
      await navigator.clipboard.writeText(text);
      return 'copied';
    }
    return copySelected(text) ? 'copied' : 'refused';
  } catch {
    return copySelected(text) ? 'copied' : 'refused';
  }
}

function copySelected(text: string): boolean {
  const before = document.activeElement;
  const box = document.createElement('textarea');
  box.value = text;
  box.className = 'for-ear';
  document.body.append(box);
  box.select();
  const done = document.execCommand('copy');
  box.remove();
  if (before instanceof HTMLElement) before.focus();
  return done;
}

/** Saves the text as a file on the device. */
export function save(name: string, text: string): Sent {
  saveFile(name, text);
  return 'saved';
}

/** Name of the file: the field and the moment, of letters that every system takes. */
export function fileName(field: string, madeAt: string): string {
  const plain = field
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `loamward-${plain || 'field'}-${madeAt.slice(0, 10)}.txt`;
}
