/** A Markdown table; pipes and line breaks in cells are made safe. */
export function markdownTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map(safe).join(' | ')} |`;
  return [line(head), `|${head.map(() => '---').join('|')}|`, ...rows.map(line)].join('\n');
}

function safe(cell: string): string {
  return cell.replaceAll('|', '\\|').replaceAll('\n', ' ');
}
