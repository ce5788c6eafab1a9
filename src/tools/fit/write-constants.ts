import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';
import type { SoilRecord } from '../soil-records/types.ts';

/** Constants of one depth with the records that they were fitted on. */
export interface FittedDepth {
  readonly constants: SoilModelConstants;
  readonly records: readonly SoilRecord[];
}

const file = join('src', 'core', 'science', 'soil', 'temperature', 'constants.ts');

/** Writes the constants of every depth as source, below the current folder (npm starts in that of the project), with stations, years and the day (YYYY-MM-DD). Returns the file's path. */
export function writeConstants(fitted: readonly FittedDepth[], day: string): string {
  const parts = fitted.map(({ constants, records }) => {
    const sources = records.map(({ station, source }) => ` * ${station} (${source});`).join('\n');
    const rows = Object.entries(constants).map(
      ([name, value]) => `  ${name}: ${Number(Number(value).toPrecision(4))},`,
    );
    const name = `soilConstants${Math.round(constants.depthM * 100)}cm`;
    return `/**
 * At ${Math.round(constants.depthM * 100)} cm. Fitted on September to December of even years (January to April of a record without an autumn) of
${sources.replace(/;$/, '.')}
 */
export const ${name}: SoilModelConstants = {
${rows.join('\n')}
};`;
  });
  const heading = `// Written by \`npm run fit\` on ${day}. Do not edit by hand.`;
  const text = `${heading}\nimport type { SoilModelConstants } from './model-constants.ts';\n\n${parts.join('\n\n')}\n`;
  writeFileSync(file, text);
  return file;
}
