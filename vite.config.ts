import { join } from 'node:path';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** The words of one language: its code is the folder's name. */
const wordsOfLanguage = /\/web\/words\/([a-z]+)\/index\.ts$/;

/**
 * Has the browser load the page's main part beside the entry, which opens the connection meanwhile, and names the files of each
 * language's words: the server has the browser load those of the language that it asks for.
 */
const loadStartAtOnce: Plugin = {
  name: 'load-start-at-once',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: (_html, { bundle }) => {
      const chunks = Object.values(bundle ?? {}).filter((file) => file.type === 'chunk');
      const entry = new Set(chunks.filter(({ isEntry }) => isEntry).map(({ fileName }) => fileName));
      const importsOf = new Map(chunks.map(({ fileName, imports }) => [fileName, imports]));
      const needed = (fileName: string, known = new Set<string>()): Set<string> => {
        if (known.has(fileName)) return known;
        known.add(fileName);
        for (const file of importsOf.get(fileName) ?? []) needed(file, known);
        return known;
      };
      const files = new Set(
        chunks.filter(({ name }) => name === 'start').flatMap(({ fileName }) => [...needed(fileName)]),
      );
      const ahead = [...files].filter((file) => !entry.has(file));
      const words = chunks.flatMap(({ facadeModuleId, fileName }) => {
        const language = wordsOfLanguage.exec(facadeModuleId?.replaceAll('\\', '/') ?? '')?.[1];
        const own = [...needed(fileName)].filter((file) => !entry.has(file) && !files.has(file));
        return language === undefined ? [] : [{ language, content: own.map((file) => `/${file}`).join(' ') }];
      });
      return [
        ...ahead.map((file) => ({
          tag: 'link',
          attrs: { rel: 'modulepreload', crossorigin: true, href: `/${file}` },
          injectTo: 'head' as const,
        })),
        ...words.map(({ language, content }) => ({
          tag: 'meta',
          attrs: { name: 'words', lang: language, content },
          injectTo: 'head' as const,
        })),
      ];
    },
  },
};

/**
 * The page: built from web/ into dist/web with hashed names. Nothing is inlined and no preload script is added, since the
 * server's content security policy runs only files of its own. The service worker keeps every file of the page; a newer one waits
 * until the person asks for it, so that no page changes under a running conversation.
 */
export default defineConfig({
  root: join(import.meta.dirname, 'web'),
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    // The core for going on without a signal, loaded when the page has time, has every language in it.
    chunkSizeWarningLimit: 700,
    outDir: join(import.meta.dirname, 'dist', 'web'),
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: false,
    reportCompressedSize: false,
  },
  plugins: [
    loadStartAtOnce,
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      manifest: {
        id: '/',
        start_url: '/',
        scope: '/',
        display: 'standalone',
        name: 'Loamward',
        short_name: 'Loamward',
        description: 'Does today suit a soil-acting residual herbicide on this field, and if not, when will it?',
        lang: 'en',
        background_color: '#f4f0e6',
        theme_color: '#12202e',
        icons: [
          { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: '/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{html,js,css,svg,png,webmanifest}'],
        navigateFallback: '/index.html',
        navigateFallbackAllowlist: [/^\/(index\.html)?(\?.*)?$/],
        mode: 'production',
        clientsClaim: true,
        skipWaiting: false,
        cleanupOutdatedCaches: true,
        sourcemap: false,
      },
    }),
  ],
});
