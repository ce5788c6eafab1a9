#!/usr/bin/env node
import { importTypeScript } from '../tools/bundle.mjs';

const { main } = await importTypeScript('src/cli/node-main.ts');
await main();
