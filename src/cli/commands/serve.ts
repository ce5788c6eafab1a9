import { join } from 'node:path';
import { systemTimers } from '../../adapters/clock.ts';
import { createForecastService } from '../../adapters/openmeteo/forecast-service.ts';
import { settingsFromEnvironment } from '../../adapters/openmeteo/settings.ts';
import { systemMeans } from '../../adapters/openmeteo/system-means.ts';
import { isLoamwardError } from '../../core/errors/coded-error.ts';
import { jsonLog } from '../../server/log.ts';
import { type StartedServer, type StartOptions, startServer } from '../../server/main.ts';
import { openRuleBook } from '../../server/rules/rule-book.ts';
import { serverSettingsFrom } from '../../server/settings.ts';
import type { Command } from '../command.ts';
import type { Io } from '../io.ts';
import { languageOption, wordsFor } from '../language.ts';
import { overlayOption } from '../overlay-option.ts';
import { buildPage } from '../page-build.ts';
import { ruleSources } from '../rule-sources.ts';
import { versionOf } from '../version.ts';

/** `loamward serve`: builds the page where needed and serves it until stopped. */
export const serve: Command = {
  name: 'serve',
  summary: 'Serves the page on this machine; npm start is the same.',
  options: {
    overlay: overlayOption,
    language: languageOption,
    json: { type: 'boolean', help: 'print the address as JSON' },
  },
  examples: ['npx loamward serve', 'LOAMWARD_PORT=0 npx loamward serve', 'LOAMWARD_FORECAST=off npx loamward serve'],
  run: async (parsed, io) => {
    wordsFor(parsed, io);
    const forecast = settingsFromEnvironment(io.env);
    const settings = serverSettingsFrom(io.env);
    const overlays = [...(parsed.lists['overlay'] ?? []), ...(settings.overlays === null ? [] : [settings.overlays])];
    const log = jsonLog(io.writeError, io.now);
    const rules = await openRuleBook({ ...ruleSources(io, overlays), now: io.now, timers: systemTimers, log });
    try {
      await buildPage(io.root);
      const server = await startSomewhere(io, {
        settings,
        packs: rules.packs(),
        rules,
        coreVersion: await versionOf(io),
        forecastService: createForecastService({ ...systemMeans, settings: forecast }),
        webRoot: join(io.root, 'dist', 'web'),
        log,
      });
      io.write(parsed.options['json'] ? `${JSON.stringify({ url: server.url })}\n` : `${server.url}\n`);
      await io.untilStopped();
      await server.close();
      return 0;
    } finally {
      rules.close();
    }
  },
};

/** Listens on the port that was set; where none was set and the usual one is taken, on any free one. */
async function startSomewhere(io: Io, options: StartOptions): Promise<StartedServer> {
  try {
    return await startServer(options);
  } catch (error) {
    if (io.env['LOAMWARD_PORT'] || !isLoamwardError(error) || error.code !== 'PORT_TAKEN') throw error;
    return startServer({ ...options, settings: { ...options.settings, port: 0 } });
  }
}
