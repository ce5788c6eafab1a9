import { basename } from 'node:path';
import { type DataFile, dataFiles } from '../../src/adapters/weather-records/folder.ts';
import { isLoamwardError } from '../../src/core/errors/coded-error.ts';
import { estimateSoilWater } from '../../src/core/science/soil/saxton-rawls.ts';
import { textureClassOf } from '../../src/core/science/soil/texture-triangle.ts';
import { soilWaterOfClass } from '../../src/core/science/soil/water-shares.ts';
import { type Retention, retentionSamples } from './retention-samples.ts';
import { figuresOf, groupBy, sayScore, score } from './score.ts';
import { type Figures, hold, nothingToCheck, runChecks, type ValidationResult } from './validator.ts';

/** A sample measured and estimated, m3/m3, at 33 and 1500 kPa. */
interface Estimated {
  readonly group: string;
  readonly pairs: {
    readonly fieldCapacity: Pair | null;
    readonly wiltingPoint: Pair | null;
    readonly available: Pair | null;
  };
  readonly byClass: Pair | null;
}
type Pair = readonly [estimate: number, measured: number];

/** Organic matter taken where a sample does not say, percent. */
const unknownOrganicMatterPercent = 1;
const groupOf = {
  sand: 'coarse',
  'loamy-sand': 'coarse',
  'sandy-loam': 'coarse',
  loam: 'medium',
  'silt-loam': 'medium',
  silt: 'medium',
  'sandy-clay-loam': 'medium',
  'clay-loam': 'fine',
  'silty-clay-loam': 'fine',
  'sandy-clay': 'fine',
  'silty-clay': 'fine',
  clay: 'fine',
} as const;

/** Scores Saxton & Rawls 2006 against measured retention curves, in every JSON file of the form of the UNSODA tables. */
export function validateRetention(folder: string): ValidationResult {
  const results = dataFiles(folder, ['.json']).flatMap((file) => {
    const samples = retentionSamples(file.text);
    return samples.length === 0 ? [] : [scoreFile(file, samples)];
  });
  if (results.length === 0) return nothingToCheck('a JSON file of retention curves (particle_size, lab_drying_h-t)');
  return {
    passed: results.reduce((sum, { passed }) => sum + passed, 0),
    failed: results.reduce((sum, { failed }) => sum + failed, 0),
    lines: results.flatMap(({ lines }) => lines),
    figures: Object.assign({}, ...results.map(({ figures }) => figures)) as Figures,
  };
}

function scoreFile(file: DataFile, samples: readonly Retention[]): ValidationResult & { figures: Figures } {
  const name = basename(file.path);
  const outside: string[] = [];
  const estimated = samples.flatMap((sample) => estimate(sample, outside));
  const lines = [
    `${name}: ${samples.length} samples with texture and retention, ${outside.length} beyond the equations`,
  ];
  const figures: Record<string, Figures> = {};
  const groups = [['all', estimated] as const, ...groupBy(estimated, ({ group }) => group)];
  for (const [group, members] of groups) {
    const of = (which: keyof Estimated['pairs']) =>
      score(members.map(({ pairs }) => pairs[which]).filter((pair) => pair !== null));
    const class33 = score(members.map(({ byClass }) => byClass).filter((pair) => pair !== null));
    lines.push(
      `${group}: at 33 kPa ${sayScore(of('fieldCapacity'), 3, 'm3/m3')}; at 1500 kPa ${sayScore(of('wiltingPoint'), 3, 'm3/m3')}; ` +
        `available ${sayScore(of('available'), 3, 'm3/m3')}; 33 kPa from the class alone ${sayScore(class33, 3, 'm3/m3')}`,
    );
    figures[group] = {
      at33kPa: figuresOf(of('fieldCapacity')),
      at1500kPa: figuresOf(of('wiltingPoint')),
      available: figuresOf(of('available')),
      at33kPaByClass: figuresOf(class33),
    };
  }
  const all = score(estimated.map(({ pairs }) => pairs.fieldCapacity).filter((pair) => pair !== null));
  const checks = runChecks([
    [
      `${name}: every estimate is finite, or refused with its code`,
      () => hold(estimated.length > 0, () => 'none was estimated'),
    ],
    [`${name}: RMSE at 33 kPa within 0.10 m3/m3 over all`, () => hold(all.rmse <= 0.1, () => all.rmse.toFixed(3))],
  ]);
  return { ...checks, lines: [...lines, ...checks.lines], figures: { [name]: figures } };
}

function estimate(sample: Retention, outside: string[]): Estimated[] {
  const organicMatterPercent = sample.organicMatterPercent ?? unknownOrganicMatterPercent;
  const texture = textureClassOf(sample);
  try {
    const soil = estimateSoilWater({ ...sample, organicMatterPercent });
    const pair = (value: number, measured: number | null): Pair | null =>
      measured === null ? null : [value, measured];
    const { at33kPa, at1500kPa } = sample;
    const available = at33kPa === null || at1500kPa === null ? null : at33kPa - at1500kPa;
    return [
      {
        group: groupOf[texture],
        pairs: {
          fieldCapacity: pair(soil.fieldCapacity, at33kPa),
          wiltingPoint: pair(soil.wiltingPoint, at1500kPa),
          available: pair(soil.fieldCapacity - soil.wiltingPoint, available),
        },
        byClass: pair(soilWaterOfClass(texture).fieldCapacity, at33kPa),
      },
    ];
  } catch (error) {
    if (!isLoamwardError(error)) throw error;
    outside.push(error.code);
    return [];
  }
}
