import { describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { fakeIo } from './fake-io.ts';

async function run(...options: string[]) {
  const io = fakeIo({});
  const status = await runCommandLine(['rules', 'say', ...options], io);
  return { status, out: io.out(), err: io.err() };
}

describe('loamward rules say', () => {
  test('prints every rule of the pack once, under its topic', async () => {
    const { status, out } = await run();
    expect(status).toBe(0);
    for (const { id } of shipped.pack.rules) expect(out.split(`(${id}; `)).toHaveLength(2);
    expect(out).toMatch(/^soil\n {2}Peaty soil/m);
    expect(out).toContain(
      '    Holds (lifts in days): when soil temperature at 30 cm is above 10 C (soilTemperatureMaxC).\n',
    );
  });

  test('one rule alone, in German, as JSON, with its limits', async () => {
    const { out } = await run(shipped.pack.id, 'gusty', '--language', 'de', '--json');
    expect(JSON.parse(out).rules).toEqual([
      expect.objectContaining({
        topic: 'weather',
        rule: 'gusty',
        title: 'Böig',
        sentence: 'Hält auf (löst sich in Stunden), wenn gilt: Böen am Spritzgestänge über 14,5 km/h (gustMostKmh).',
        parameters: [expect.stringMatching(/^gustMostKmh ist 14,5 km\/h ab dem 1\. Januar 2026; /)],
      }),
    ]);
  });

  test('a rule that the pack lacks is refused with the nearest right name', async () => {
    const { status, err } = await run(shipped.pack.id, 'gustyy');
    expect(status).toBe(2);
    expect(err).toMatch(/^OPTION_VALUE: .*gusty/);
  });
});
