import { join } from 'node:path';
import { createForecastService } from '../../adapters/openmeteo/forecast-service.ts';
import { settingsFromEnvironment } from '../../adapters/openmeteo/settings.ts';
import { systemMeans } from '../../adapters/openmeteo/system-means.ts';
import { jsonLog } from '../../server/log.ts';
import { startServer } from '../../server/main.ts';
import { serverSettingsFrom } from '../../server/settings.ts';
import type { Command } from '../command.ts';
import { firstPack, loadNamedPack } from '../packs.ts';
import { buildPage } from '../page-build.ts';

/** `loamward serve`: builds the page where needed and serves it until stopped. */
export const serve: Command = {
  name: 'serve',
  summary: 'Serves the page on this machine; npm start is the same.',
  options: { json: { type: 'boolean', help: 'print the address as JSON' } },
  examples: ['npx loamward serve', 'LOAMWARD_PORT=0 npx loamward serve', 'LOAMWARD_FORECAST=off npx loamward serve'],
  run: async (parsed, io) => {
    const settings = serverSettingsFrom(io.env);
    const forecast = settingsFromEnvironment(io.env);
    const { pack } = await loadNamedPack(io, firstPack);
    await buildPage(io.root);
    const server = await startServer({
      settings,
      packs: [pack],
      forecastService: createForecastService({ ...systemMeans, settings: forecast }),
      webRoot: join(io.root, 'dist', 'web'),
      log: jsonLog(io.writeError, io.now),
    });
    io.write(parsed.options['json'] ? `${JSON.stringify({ url: server.url })}\n` : `${server.url}\n`);
    await io.untilStopped();
    await server.close();
    return 0;
  },
};
