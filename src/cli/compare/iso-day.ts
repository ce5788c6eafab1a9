/** The day (YYYY-MM-DD) so many days after another. */
export function isoDayAfter(iso: string, days: number): string {
  return new Date(Date.parse(`${iso}T00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}
