import { importTypeScript } from './bundle.mjs';

/** `node src/tools/run.mjs ENTRY.ts [arguments]`: runs a TypeScript tool of the project. */
const [entry, ...rest] = process.argv.slice(2);
if (!entry) {
  process.stderr.write('node src/tools/run.mjs ENTRY.ts [arguments]\n');
  process.exit(2);
}
/** `… | head` closes our output early: that is no failure. */
process.stdout.on('error', (error) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});
process.argv = [process.argv[0], entry, ...rest];
const tool = await importTypeScript(entry);
if (typeof tool.main === 'function') process.exitCode = (await tool.main(rest)) ?? 0;
