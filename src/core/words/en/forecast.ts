/** The forecast used, how long an answer stands, and which rules judged. */
export const forecastWords = {
  none: 'No forecast was used: the weather is as you told it.',
  used: (fetched: string, age: string, reach: string) =>
    `Forecast fetched ${fetched} (${age}); it reaches to ${reach}.`,
  cell: (km: string) => `Its point lies ${km} km from the field.`,
  validUntil: (time: string) => `This answer stands until ${time} at the latest. After that, look again.`,
  doesNotAge: 'Nothing in this answer grows old today.',
  pack: (title: string, version: string, hash: string) => `Rules: ${title}, version ${version}, content ${hash}.`,
};
