import { pageWords } from '../words.ts';
import { canSpeak } from './abilities.ts';

/** Reads sentences aloud in the language of the page; what was being read before is dropped. Silent where the browser cannot speak. */
export function speak(sentences: readonly string[]): void {
  if (!canSpeak()) return;
  const { speechSynthesis } = globalThis;
  speechSynthesis.cancel();
  const language = pageWords.tag;
  for (const sentence of sentences.filter((one) => one !== '')) {
    const utterance = new SpeechSynthesisUtterance(sentence);
    utterance.lang = language;
    const voice = bestVoice(speechSynthesis.getVoices(), language);
    if (voice) utterance.voice = voice;
    speechSynthesis.speak(utterance);
  }
}

/** Stops reading. */
export function hush(): void {
  if (canSpeak()) globalThis.speechSynthesis.cancel();
}

type Voice = Pick<SpeechSynthesisVoice, 'lang' | 'localService'>;

/** A voice for the language: one of the device itself before one that needs a service, the right country before another. */
export function bestVoice<V extends Voice>(voices: readonly V[], language: string): V | null {
  const tag = (voice: V) => voice.lang.replace('_', '-').toLowerCase();
  const wanted = language.toLowerCase();
  const fitting = voices.filter((voice) => tag(voice).split('-')[0] === wanted.split('-')[0]);
  const score = (voice: V) => (voice.localService ? 2 : 0) + (tag(voice) === wanted ? 1 : 0);
  return [...fitting].sort((a, b) => score(b) - score(a))[0] ?? null;
}
