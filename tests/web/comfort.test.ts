import { describe, expect, test } from 'vitest';
import { createMemory } from '../../web/chat/memory.ts';
import { buzzes } from '../../web/comfort/buzz.ts';
import { comfortOf, showLook, standardComfort } from '../../web/comfort/settings.ts';
import { textOfResults } from '../../web/speech/listen.ts';
import { bestVoice } from '../../web/speech/speak.ts';
import { loadWords, pageWords } from '../../web/words.ts';
import { mapStorage } from './fake-means.ts';

describe('settings of a device', () => {
  test('speech is off and the look is that of the device until something is set', () => {
    expect(comfortOf(createMemory(mapStorage)).get()).toEqual(standardComfort);
    expect(standardComfort).toMatchObject({ look: 'device', readsAloud: false, listens: false, sendsHeard: false });
  });

  test('what was set is there in the next life of the page', () => {
    const storage = mapStorage();
    comfortOf(createMemory(() => storage)).set({ look: 'sun', listens: true });
    expect(comfortOf(createMemory(() => storage)).get()).toMatchObject({ look: 'sun', listens: true, buzz: true });
  });

  test.each(['', 'null', '7', '{', '{"look":"red","listens":"yes"}', '[true]'])(
    'what is kept as %s counts as not set',
    (kept) => {
      const memory = createMemory(mapStorage);
      memory.write('loamward.comfort', kept);
      expect(comfortOf(memory).get()).toEqual(standardComfort);
    },
  );

  test('a look is marked on the root, and that of the device leaves no mark', () => {
    const root = { dataset: {} as Record<string, string> } as unknown as HTMLElement;
    showLook(root, 'night');
    expect(root.dataset['look']).toBe('night');
    showLook(root, 'device');
    expect(root.dataset).toEqual({});
  });
});

describe('buzzing', () => {
  test('each verdict can be told from the others by touch, in under two seconds', () => {
    const patterns = Object.values(buzzes);
    expect(new Set(patterns.map((one) => one.length)).size).toBe(patterns.length);
    for (const pattern of patterns) expect(pattern.reduce((sum, ms) => sum + ms, 0)).toBeLessThan(2000);
  });
});

describe('speech', () => {
  const results = (...pieces: readonly string[]) => ({
    results: pieces.map((transcript) => Object.assign([{ transcript }], { isFinal: true })),
  });

  test.each([
    [['crumbly', ' moist '], 'crumbly moist'],
    [['', 'nine point two'], 'nine point two'],
    [[], ''],
  ])('what was heard in pieces %j is one text', (pieces, text) => {
    expect(textOfResults(results(...pieces))).toBe(text);
  });

  test('a voice speaks the language of the page; one of the device comes before one of a service', () => {
    const voices = [
      { lang: 'fr-FR', localService: true },
      { lang: 'en-GB', localService: false },
      { lang: 'en_US', localService: true },
    ];
    expect(bestVoice(voices, 'en-GB')).toBe(voices[2]);
    expect(bestVoice(voices.slice(0, 2), 'en-GB')).toBe(voices[1]);
    expect(bestVoice(voices, 'de-DE')).toBeNull();
  });

  test.each([
    ['en', 'en-GB'],
    ['de', 'de-DE'],
  ])('the page in %s is spoken as %s', async (language, tag) => {
    await loadWords(language);
    expect(pageWords.tag).toBe(tag);
  });
});
