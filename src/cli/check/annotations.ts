/** What a workflow command says: where it points, and its words. */
export interface Annotation {
  readonly severity: 'error' | 'warning';
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly title: string;
  readonly message: string;
}

/**
 * A line in the syntax of workflow commands, `::error file=…,line=…,col=…,title=…::message`, that puts a note on the line of a
 * change (GitHub Docs, Workflow commands for GitHub Actions, "Setting an error message").
 */
export function annotationOf({ severity, file, line, column, title, message }: Annotation): string {
  const properties = Object.entries({ file, line, col: column, title });
  const listed = properties.map(([name, value]) => `${name}=${escapeProperty(String(value))}`).join(',');
  return `::${severity} ${listed}::${escapeData(message)}`;
}

/** Percent sign and line ends of a message, written as the runner reads them back. */
function escapeData(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

/** The same of a property, in which colon and comma have a meaning of their own. */
function escapeProperty(text: string): string {
  return escapeData(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
