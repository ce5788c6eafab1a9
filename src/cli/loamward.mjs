#!/usr/bin/env node
import { importTypeScript, projectRoot } from '../tools/bundle.mjs';

const { main } = await importTypeScript('src/cli/node-main.ts');
await main(projectRoot);
