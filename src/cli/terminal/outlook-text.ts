import type { OutlookView, TableView } from '../../core/dialogue/outlook-view/types.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';

/** The coming days: paragraph, windows and what would have to change. Days one by one are typed for. */
export function outlookLines(outlook: OutlookView, words: Catalogue): string[] {
  return ['', ...sentences(outlook, words), ...(outlook.hours ? [words.terminal.typing.days] : [])];
}

/** The coming days with all the tables that stand behind the page's figures. */
export function wholeOutlookLines(outlook: OutlookView, words: Catalogue): string[] {
  return [...sentences(outlook, words), '', ...dayLines(outlook)];
}

/** Hours, soil, rain and water as tables, a row a day. */
export function dayLines({ hours, soil, rain, water }: OutlookView): string[] {
  return [hours, soil, rain, water].flatMap((figure) =>
    figure === null ? [] : [`${figure.title}:`, ...tableLines(figure.table), figure.description, ''],
  );
}

/** A table as lines: columns as wide as their widest cell, the last as it comes. */
export function tableLines({ columns, rows }: TableView): string[] {
  const widths = columns.map((column, index) => Math.max(column.length, ...rows.map((row) => row[index]?.length ?? 0)));
  return [columns, ...rows].map((row) => {
    const cells = row.map((cell, index) => (index === row.length - 1 ? cell : cell.padEnd(widths[index] ?? 0)));
    return `  ${cells.join('  ')}`;
  });
}

function sentences(
  { heading, paragraph, further, windows, changes, least }: OutlookView,
  { terminal }: Catalogue,
): string[] {
  return [
    heading.toUpperCase(),
    paragraph,
    ...(further === '' ? [] : [further]),
    ...titled(
      terminal.windows,
      windows.map(({ text }) => text),
    ),
    ...titled(terminal.changes, [...changes, ...(least === null ? [] : [least])]),
  ];
}

function titled(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [`${title}:`, ...lines.map((line) => `  - ${line}`)];
}
