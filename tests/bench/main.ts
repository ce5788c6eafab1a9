import { availableParallelism, cpus } from 'node:os';
import { parseArgs } from 'node:util';
import { main as weighPage } from '../../src/tools/size.ts';
import { benchAsking } from './asking-bench.ts';
import { benchChat } from './chat-bench.ts';
import { benchCompare } from './compare-bench.ts';
import { benchReplay } from './replay-bench.ts';
import { benchRules } from './rules-bench.ts';
import { benchScan } from './scan-bench.ts';

/** `npm run bench [-- --data FOLDER]`: measures, and compares within the same run only. */
export async function main(args: readonly string[]): Promise<number> {
  const { values } = parseArgs({ args: [...args], options: { data: { type: 'string' } } });
  const say = (lines: readonly string[]) => process.stdout.write(`${lines.join('\n')}\n`);
  say([`${availableParallelism()} cores, ${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}`, '']);
  say(['Rules', ...(await benchRules('.')), '']);
  say(['Days ahead', ...(await benchScan('.')), '']);
  say(['Seasons replayed', ...(await benchReplay('.', values.data ?? null)), '']);
  say(['Two rule sets compared', ...(await benchCompare('.', values.data ?? null)), '']);
  say(['Asking', ...(await benchAsking('.')), '']);
  say(['Chat', ...(await benchChat()), '']);
  say(['Page, bytes after gzip']);
  return weighPage();
}
