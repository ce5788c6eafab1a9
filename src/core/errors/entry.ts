/** One row of the error table: what a code says, what a person does next, and what a transport answers. */
export interface ErrorEntry {
  /** One sentence ending in a full stop. */
  readonly says: string;
  /** What to do next, one sentence ending in a full stop. */
  readonly next: string;
  /** HTTP status where the code can answer a request. */
  readonly httpStatus?: number;
  /** Web socket close code where the code ends a connection. */
  readonly closeCode?: number;
}
