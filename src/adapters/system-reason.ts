/** Why the system refused a file or an address, in words where it is one of the usual reasons; else its code. */
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
    case 'ENOSPC':
      return 'no room left';
    case 'EADDRINUSE':
      return 'another program listens there';
    case 'EADDRNOTAVAIL':
      return 'no such address on this machine';
    case 'ERR_ENCODING_INVALID_ENCODED_DATA':
      return 'text that is not UTF-8';
    default:
      return (error as NodeJS.ErrnoException).code ?? error.name;
  }
}
