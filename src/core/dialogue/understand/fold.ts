const typographic: Readonly<Record<string, string>> = {
  '\u2018': "'",
  '\u2019': "'",
  '\u02bc': "'",
  '`': "'",
  '\u00b4': "'",
  '\u2032': "'",
  '\u2033': '"',
  '\u201c': '"',
  '\u201e': '"',
  '\u00ab': '"',
  '\u00bb': '"',
  '\u201a': "'",
  '\u201d': '"',
  '\u2013': '-',
  '\u2014': '-',
  '\u2212': '-',
  '\u2010': '-',
  '\u2011': '-',
  '\u00a0': ' ',
  '\u202f': ' ',
  '\u00ba': '°',
  '\u00b2': '2',
  '\u00d7': 'x',
  '\u2248': '~',
};

/** Lower case and plain signs, unit by unit: the result is exactly as long, so that places in it are places in the text. */
export function fold(text: string): string {
  let folded = '';
  for (let at = 0; at < text.length; at += 1) {
    const sign = text.charAt(at);
    const lower = typographic[sign] ?? sign.toLowerCase();
    folded += lower.length === 1 ? lower : sign;
  }
  return folded;
}
