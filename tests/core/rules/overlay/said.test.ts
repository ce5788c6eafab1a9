import { test } from 'vitest';
import { expectPage } from '../said/said-of.ts';
import { brokenConditions } from './examples.ts';
import { brokenOtherwise } from './other-examples.ts';
import { apply } from './overlay-of.ts';
import { brokenParameters } from './parameter-examples.ts';

test.each([
  ['overlay-conditions', brokenConditions],
  ['overlay-parameters', brokenParameters],
  ['overlay-otherwise', brokenOtherwise],
] as const)('everything that is said of what loosens stands on the page %s, word for word', async (page, broken) => {
  const said = broken.map(({ name, parts }) => [name, apply(parts).findings] as const);
  await expectPage(page, said);
});
