import { existsSync, statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { validateEvapotranspiration } from './evapotranspiration.ts';
import { validateMeasuredMoisture } from './measured-moisture.ts';
import { validateRecordedReplies } from './recorded-replies.ts';
import { validateRetention } from './retention.ts';
import { validateSoilClimatology } from './soil-climatology.ts';
import { validateSoilDepths } from './soil-depths.ts';
import { validateSoilTemperature } from './soil-temperature.ts';
import { validateTwoHeights } from './two-heights.ts';
import type { ValidationResult, Validator } from './validator.ts';
import { validateWaterBalance } from './water-balance.ts';

/** Every validator: a new one is a line here. */
const validators: readonly Validator[] = [
  { name: 'recorded forecast replies', run: validateRecordedReplies },
  { name: 'soil temperature', run: validateSoilTemperature },
  { name: 'soil temperature at other depths', run: validateSoilDepths },
  { name: 'soil temperature from usual air', run: validateSoilClimatology },
  { name: 'soil water retention', run: validateRetention },
  { name: 'reference evapotranspiration', run: validateEvapotranspiration },
  { name: 'soil water balance', run: validateWaterBalance },
  { name: 'soil water measured', run: validateMeasuredMoisture },
  { name: 'wind and temperature at two heights', run: validateTwoHeights },
];

type Named = ValidationResult & { readonly name: string };

/**
 * Checks against a folder of recorded data: `--data FOLDER`; with `--json` as one object of counts, lines and figures. Gives 1
 * where a check failed, 2 for a bad option, else 0.
 */
export async function main(options: readonly string[]): Promise<number> {
  const asked = read(options);
  if (asked === null) {
    process.stderr.write('Usage: npm run validate -- [--data FOLDER] [--json]\n');
    return 2;
  }
  const { data, json } = asked;
  const write = (line: string) => json || process.stdout.write(`${line}\n`);
  const found: Named[] = [];
  const note = whyNothing(data);
  if (note !== null) write(note);
  for (const { name, run } of note === null ? validators : []) {
    write(`${name}:`);
    const result = await run(data ?? '');
    for (const line of result.lines) write(`  ${line}`);
    found.push({ name, ...result });
  }
  const sum = (of: 'passed' | 'failed') => found.reduce((total, one) => total + one[of], 0);
  const total = { passed: sum('passed'), failed: sum('failed') };
  write(`${total.passed} passed, ${total.failed} failed`);
  if (json) process.stdout.write(`${JSON.stringify({ ...total, note, validators: found })}\n`);
  return total.failed > 0 ? 1 : 0;
}

function read(options: readonly string[]): { readonly data: string | undefined; readonly json: boolean } | null {
  try {
    const { values } = parseArgs({
      args: [...options],
      options: { data: { type: 'string' }, json: { type: 'boolean' } },
    });
    return { data: values.data, json: values.json ?? false };
  } catch {
    return null;
  }
}

function whyNothing(folder: string | undefined): string | null {
  if (folder === undefined) return 'No folder of recorded data was given (--data FOLDER), so nothing is validated.';
  if (existsSync(folder) && statSync(folder).isDirectory()) return null;
  return `The folder of recorded data ${folder} is absent, so nothing is validated.`;
}
