/** The forecast used, how long an answer stands, and which rules judged. */
export const forecastWords = {
  none: 'No forecast was used: the weather is as you told it.',
  fetched: (time: string, age: string) => `Forecast fetched ${time} (${age})`,
  use: (fetched: string, use: string) => `${fetched}; ${use}.`,
  reaches: (time: string) => `it reaches to ${time}`,
  gapNow: 'it lacks some of the weather of this hour, and what it lacks counts as not known',
  unused: {
    'too-old': 'it is too old, and nothing of it was used',
    'too-far': 'its point lies too far from the field, and nothing of it was used',
  },
  rainChance: (share: string, courses: string, mm: string) =>
    `Chance that at most ${mm} mm of rain falls in the next 48 hours: ${share} (${courses} courses of the weather).`,
  cell: (km: string) => `Its point lies ${km} km from the field.`,
  validUntil: (time: string) => `This answer stands until ${time} at the latest. After that, look again.`,
  doesNotAge: 'Nothing in this answer grows old today.',
  local: (title: string, author: string, place: string, rules: string) =>
    `Local rules: ${title} by ${author}, for ${place}: ${rules === '' ? 'no rule changed' : `rules changed or added: ${rules}`}.`,
  pack: (title: string, version: string, hash: string) => `Rules: ${title}, version ${version}, content ${hash}.`,
};
