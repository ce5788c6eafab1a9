import { stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { readPackFolder } from '../adapters/pack-files/read-pack-folder.ts';
import { codedError } from '../core/errors/coded-error.ts';
import { nearestName } from '../core/errors/nearest.ts';

/** Pack that is used where none is named. */
export const firstPack = 'propyzamide-winter-oilseed-rape';
