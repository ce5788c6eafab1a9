/** What of the Web Speech API's recogniser is used; no browser type library has it. */
export interface Recogniser {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  onresult: ((event: RecognitionResults) => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  readonly start: () => void;
  readonly stop: () => void;
  readonly abort: () => void;
}

/** What has been heard so far, piece by piece; a later event repeats the pieces of an earlier one. */
export interface RecognitionResults {
  readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }> & { readonly isFinal: boolean }>;
}

type RecogniserMaker = new () => Recogniser;

/** The browser's recogniser, under its standard name or the older one; null where it has none. */
export function recogniserMaker(): RecogniserMaker | null {
  const names = globalThis as unknown as Readonly<Record<string, RecogniserMaker | undefined>>;
  return names['SpeechRecognition'] ?? names['webkitSpeechRecognition'] ?? null;
}

/** True where the browser can listen: browsers give the microphone to secure pages only. */
export function canListen(): boolean {
  return isSecureContext && recogniserMaker() !== null;
}

/** True where the browser can speak. */
export function canSpeak(): boolean {
  return 'speechSynthesis' in globalThis && 'SpeechSynthesisUtterance' in globalThis;
}
