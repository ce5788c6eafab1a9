import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** A file of the folder of recorded data. */
export interface DataFile {
  readonly path: string;
  readonly text: string;
}

/** Every text file of a folder and below that ends in one of `endings`, in the order of their names. */
export function dataFiles(folder: string, endings: readonly string[]): DataFile[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .sort()
    .map((name) => join(folder, name))
    .filter((path) => endings.some((ending) => path.toLowerCase().endsWith(ending)) && statSync(path).isFile())
    .map((path) => ({ path, text: readFileSync(path, 'utf8') }));
}

/** Rows of a table with a heading line that holds all of `columns`, wherever it stands; empty where there is none. */
export function rowsWith({ text }: DataFile, columns: readonly string[]): Readonly<Record<string, string>>[] {
  const lines = text.split(/\r?\n/);
  const at = lines.slice(0, 60).findIndex((line) => {
    const names = cells(line);
    return columns.every((column) => names.includes(column));
  });
  if (at < 0) return [];
  const names = cells(lines[at] ?? '');
  return lines
    .slice(at + 1)
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const row: Record<string, string> = {};
      for (const [index, cell] of cells(line).entries()) {
        const name = names[index];
        if (name !== undefined && !(name in row)) row[name] = cell;
      }
      return row;
    });
}

/** A number as written; null where blank, no number, or one of the codes for missing. */
export function numberOf(text: string | undefined, missing: readonly number[] = []): number | null {
  const value = Number(text?.trim() || Number.NaN);
  return Number.isFinite(value) && !missing.includes(value) ? value : null;
}

function cells(line: string): string[] {
  return line.split(/[,;]/).map((cell) => cell.trim().replace(/^"|"$/g, ''));
}
