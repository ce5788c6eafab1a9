import { fold } from './fold.ts';
import { type Numeral, readNumeral } from './numerals.ts';

interface Span {
  /** Place in the text: first and one past the last character. */
  readonly start: number;
  readonly end: number;
}

/** One word, number or sign of a text. `odd` is a number-like thing that is no quantity: a date, a telephone number. */
export type Token = Span &
  (
    | { readonly kind: 'word'; readonly text: string }
    | { readonly kind: 'number'; readonly numeral: Numeral }
    | { readonly kind: 'break'; readonly text: string }
    | { readonly kind: 'odd' }
  );

const pieces = /\d+(?:[.,:/-]\d+)*|[\u00bd\u00bc\u00be]|\p{L}+(?:'\p{L}+)*|[^\s\p{L}\d]|\n/gu;
const wordSigns: Readonly<Record<string, string>> = {
  '%': '%',
  '°': '°',
  '/': '/',
  '@': 'at',
  '&': 'and',
  '+': 'and',
  '~': 'about',
  '<': '<',
  '>': '>',
  '"': '"',
  "'": "'",
};
const breaks = ',;.!?()\u2026\n';
const abbreviations = new Set(['approx', 'deg', 'temp', 'abt']);
const mayLeadNumber = new Set(['bbch', 'gs', 'at', 'force']);

/** The tokens of a text in its order; linear in its length. */
export function tokenise(text: string): readonly Token[] {
  const folded = fold(text);
  const tokens: Token[] = [];
  for (const match of folded.matchAll(pieces)) {
    const start = match.index;
    const token = tokenOf(match[0], start, folded, tokens.at(-1));
    if (token) tokens.push(token);
  }
  return tokens;
}

function tokenOf(piece: string, start: number, folded: string, before: Token | undefined): Token | null {
  const span = { start, end: start + piece.length };
  if (/^[\d\u00bd\u00bc\u00be]/.test(piece)) return numberToken(piece, span, folded, before);
  if (/^\p{L}/u.test(piece)) return { kind: 'word', text: plainWord(piece), ...span };
  if (piece === '.' && before?.kind === 'word' && abbreviations.has(before.text)) return null;
  if (piece === '-') return dashToken(span, folded);
  if (piece === '+' && /\d/.test(folded.charAt(span.end))) return null;
  if (piece === '"' || piece === "'") return quoteToken(piece, span, before);
  if (breaks.includes(piece)) return { kind: 'break', text: piece, ...span };
  const word = wordSigns[piece];
  if (word !== undefined) return { kind: 'word', text: word, ...span };
  return ':*_='.includes(piece) ? null : { kind: 'odd', ...span };
}

const shortened = new Set("it's that's what's there's here's he's she's how's where's who's let's".split(' '));

/** A word without its apostrophes; a name's "'s" is left off. */
function plainWord(word: string): string {
  const isOwner = word.endsWith("'s") && !shortened.has(word);
  return (isOwner ? word.slice(0, -2) : word).replaceAll("'", '');
}

function numberToken(piece: string, span: Span, folded: string, before: Token | undefined): Token {
  const isGlued = before?.kind === 'word' && /\p{L}/u.test(folded.charAt(span.start - 1));
  const isLedByWord = isGlued && !mayLeadNumber.has(before.text);
  const isMoney = '£€$#'.includes(folded.charAt(span.start - 1) || ' ');
  const isDecimalTail = folded.charAt(span.start - 1) === '.' && /[\s]|^$/.test(folded.charAt(span.start - 2));
  const numeral = isLedByWord || isMoney ? null : readNumeral(isDecimalTail ? `0.${piece}` : piece);
  return numeral === null ? { kind: 'odd', ...span } : { kind: 'number', numeral, ...span };
}

/** A minus before a number, a dash between clauses, or a mere hyphen. */
function dashToken(span: Span, folded: string): Token | null {
  const before = folded.charAt(span.start - 1);
  const after = folded.charAt(span.end);
  if (/\d/.test(after) && (before === '' || /[\s(:=@]/.test(before))) return { kind: 'word', text: 'minus', ...span };
  if (/\s/.test(before) && /\s/.test(after)) return { kind: 'break', text: '-', ...span };
  return null;
}

/** Inches or feet right after a number; else a quotation mark that says nothing. */
function quoteToken(piece: string, span: Span, before: Token | undefined): Token | null {
  return before?.kind === 'number' && before.end === span.start ? { kind: 'word', text: piece, ...span } : null;
}
