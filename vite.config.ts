import { join } from 'node:path';
import { defineConfig } from 'vite';

/**
 * The page: built from web/ into dist/web with hashed names. Nothing is inlined and no preload script is added, since the
 * server's content security policy runs only files of its own.
 */
export default defineConfig({
  root: join(import.meta.dirname, 'web'),
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    outDir: join(import.meta.dirname, 'dist', 'web'),
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: false,
    reportCompressedSize: false,
  },
});
