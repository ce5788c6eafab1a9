import { fold } from './fold.ts';
import type { LanguageWords } from './language-words.ts';
import { type Numeral, readNumeral } from './numerals.ts';

interface Span {
  /** Place in the text: first and one past the last character. */
  readonly start: number;
  readonly end: number;
}

/** One word, number or sign of a text. `odd` is a number-like thing that is no quantity: a date, a telephone number. */
export type Token = Span &
  (
    | { readonly kind: 'word'; readonly text: string; readonly isMended?: true }
    | { readonly kind: 'number'; readonly numeral: Numeral }
    | { readonly kind: 'break'; readonly text: string }
    | { readonly kind: 'odd' }
  );

const pieces = /m2(?![\p{L}\d])|\d+(?:[.,:/-]\d+)*|[\u00bd\u00bc\u00be]|\p{L}+(?:'\p{L}+)*|[^\s\p{L}\d]|\n/gu;
const namedSigns: Readonly<Record<string, 'at' | 'and' | 'about'>> = {
  '@': 'at',
  '&': 'and',
  '+': 'and',
  '~': 'about',
};
const wordSigns: Readonly<Record<string, string>> = {
  '%': '%',
  '°': '°',
  '/': '/',
  '<': '<',
  '>': '>',
  '±': '±',
  '"': '"',
  "'": "'",
};
const breaks = ',;.!?()\u2026\n';

type Spelling = Pick<LanguageWords, 'little' | 'spell' | 'retell' | 'retellNumber' | 'numbers'>;

/** The tokens of a text in its order; linear in its length. */
export function tokenise(text: string, language: Spelling): readonly Token[] {
  const folded = fold(text);
  const tokens: Token[] = [];
  let open = '';
  for (const match of folded.matchAll(pieces)) {
    const start = match.index;
    const token = match[0] === open ? null : tokenOf(match[0], start, folded, tokens.at(-1), language);
    if ((match[0] === '"' || match[0] === "'") && token === null) open = open === match[0] ? '' : match[0];
    if (token) tokens.push(...withoutEnd(token, match[0], language));
  }
  return language.retell === undefined ? tokens : language.retell(tokens);
}

/** A word and what is joined to its end, each on its own: "drains'll". */
function withoutEnd(token: Token, piece: string, { little }: Spelling): readonly Token[] {
  const at = piece.lastIndexOf("'");
  const end = at > 0 && token.kind === 'word' ? little.joinedEnds?.[piece.slice(at)] : undefined;
  if (end === undefined) return [token];
  const place = token.start + at;
  return [
    { kind: 'word', text: piece.slice(0, at).replaceAll("'", ''), start: token.start, end: place },
    { kind: 'word', text: end, start: place, end: token.end },
  ];
}

function tokenOf(
  piece: string,
  start: number,
  folded: string,
  before: Token | undefined,
  language: Spelling,
): Token | null {
  const { little } = language;
  const span = { start, end: start + piece.length };
  if (/^[\d\u00bd\u00bc\u00be]/.test(piece)) return numberToken(piece, span, folded, before, language);
  if (/^\p{L}/u.test(piece)) return { kind: 'word', text: plainWord(piece, language), ...span };
  if (piece === '.' && before?.kind === 'word' && little.abbreviations.has(before.text)) return null;
  if (piece === '-') return dashToken(span, folded, language);
  if (piece === '+' && folded.charAt(span.end) === '-') return { kind: 'word', text: '±', ...span };
  if (piece === '+' && /\d/.test(folded.charAt(span.end))) return null;
  if (piece === '"' || piece === "'") return quoteToken(piece, span, before);
  if (breaks.includes(piece)) return { kind: 'break', text: piece, ...span };
  const named = namedSigns[piece];
  const word = named === undefined ? wordSigns[piece] : little[named];
  if (word !== undefined) return { kind: 'word', text: word, ...span };
  return ':*_='.includes(piece) ? null : { kind: 'odd', ...span };
}

/** A word without its apostrophes; a name's "'s" is left off. */
function plainWord(word: string, { little, spell }: Spelling): string {
  const isOwner = word.endsWith("'s") && !little.shortened.has(word);
  const plain = (isOwner ? word.slice(0, -2) : word).replaceAll("'", '');
  return spell === undefined ? plain : spell(plain);
}

function numberToken(
  piece: string,
  span: Span,
  folded: string,
  before: Token | undefined,
  { little: { mayLeadNumber }, retellNumber = (written) => written }: Spelling,
): Token {
  const isGlued = before?.kind === 'word' && /\p{L}/u.test(folded.charAt(span.start - 1));
  const isLedByWord = isGlued && !mayLeadNumber.has(before.text);
  const isMoney = '£€$#'.includes(folded.charAt(span.start - 1) || ' ');
  const isDecimalTail = folded.charAt(span.start - 1) === '.' && /[\s]|^$/.test(folded.charAt(span.start - 2));
  const numeral = isLedByWord || isMoney ? null : readNumeral(isDecimalTail ? `0.${piece}` : retellNumber(piece));
  return numeral === null ? { kind: 'odd', ...span } : { kind: 'number', numeral, ...span };
}

/** A minus before a number, a dash between clauses, or a mere hyphen. */
function dashToken(span: Span, folded: string, { numbers }: Spelling): Token | null {
  const [minus = ''] = numbers.minus;
  const before = folded.charAt(span.start - 1);
  const after = folded.charAt(span.end);
  if (/\d/.test(after) && (before === '' || /[\s(:=@]/.test(before))) return { kind: 'word', text: minus, ...span };
  if (/\s/.test(before) && /\s/.test(after)) return { kind: 'break', text: '-', ...span };
  return null;
}

/** Inches or feet right after a number; else a quotation mark that says nothing. */
function quoteToken(piece: string, span: Span, before: Token | undefined): Token | null {
  return before?.kind === 'number' && before.end === span.start ? { kind: 'word', text: piece, ...span } : null;
}
