import { describe, expect, test } from 'vitest';
import { type MutationReport, reportText, summaryOf } from '../../../src/tools/mutation/report.ts';

const mutant = (status: string, line: number, replacement = 'false') => ({
  mutatorName: 'BooleanLiteral',
  replacement,
  status,
  location: { start: { line, column: 3 } },
});
const report: MutationReport = {
  files: {
    'src/core/b.ts': {
      mutants: [mutant('Survived', 9, '{\n  return\n}'), mutant('CompileError', 8), mutant('Ignored', 7)],
    },
    'src/core/a.ts': {
      mutants: [mutant('Killed', 1), mutant('Timeout', 2), mutant('NoCoverage', 3), mutant('Killed', 4)],
    },
  },
};

describe('what a run found', () => {
  test('noticed are those that failed a test or never ended; those that could not run are not judged', () => {
    expect(summaryOf(report)).toEqual({
      noticed: 3,
      judged: 5,
      leftOut: 1,
      survivors: [
        'src/core/a.ts:3:3 BooleanLiteral: false (no test runs it)',
        'src/core/b.ts:9:3 BooleanLiteral: { return }',
      ],
    });
  });

  test('is told with its interval (Wilson: 3 of 5 is 23.1 to 88.2 %) and each that nobody noticed', () => {
    const text = reportText(summaryOf(report), { files: 2, lines: 40, changed: 7 });
    expect(text).toContain('40 lines of code in 2 files, 7 of them changed.');
    expect(text).toContain('3 of 5 changes noticed: 60.0 % (95 %: 23.1 % to 88.2 %); 1 more stand');
    expect(text).toContain('src/core/a.ts:3:3');
  });

  test('is no share where nothing could be judged', () => {
    expect(reportText(summaryOf({ files: {} }), { files: 0, lines: 0, changed: 0 })).toContain('nothing to judge');
  });
});
