/** Why a file could not be read or written, in words where it is one of the usual reasons; else the code of the system. */
export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return 'no reason given';
  switch ((error as NodeJS.ErrnoException).code) {
    case 'ENOENT':
      return 'no such file or folder';
    case 'EACCES':
    case 'EPERM':
      return 'no leave to do so';
    case 'EISDIR':
      return 'a folder';
    case 'ENOTDIR':
      return 'a file where a folder must be';
    case 'ERR_ENCODING_INVALID_ENCODED_DATA':
      return 'text that is not UTF-8';
    default:
      return (error as NodeJS.ErrnoException).code ?? error.name;
  }
}
