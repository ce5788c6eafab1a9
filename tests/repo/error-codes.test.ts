import { expect, test } from 'vitest';
import { errorTable } from '../../src/core/errors/table.ts';
import { projectFiles, textOf } from './files.ts';

test('every error code is given somewhere: none stands in the table alone', () => {
  const code = projectFiles(/^(src|web)\/.*\.(ts|tsx|mjs)$/)
    .filter((path) => !path.startsWith('src/core/errors/groups/'))
    .map(textOf)
    .join('\n');
  expect(Object.keys(errorTable).filter((one) => !code.includes(`'${one}'`))).toEqual([]);
});
