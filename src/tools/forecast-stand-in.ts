import { type ArchiveFailureName, archiveFailures } from './stand-in/archive.ts';
import { type EnsembleFailureName, ensembleFailures } from './stand-in/ensemble-failures.ts';
import { type FailureName, failures } from './stand-in/failures.ts';
import { type Scenario, scenarios } from './stand-in/invented-weather.ts';
import { startStandIn } from './stand-in/server.ts';

const usage = `Serves invented weather in the form of the forecast service, for trying the program without a connection.

  npm run forecast:stand-in -- [--port 8099] [--scenario NAME] [--fail NAME] [--fail-ensemble NAME] [--fail-archive NAME]

  --scenario  ${scenarios.join(', ')}
  --fail      ${Object.keys(failures).join(', ')}
  --fail-ensemble  ${Object.keys(ensembleFailures).join(', ')}
  --fail-archive   ${Object.keys(archiveFailures).join(', ')}

Then start the program with LOAMWARD_FORECAST_URL set to the address printed.
`;

/** Runs the stand-in until it is interrupted. Gives 2 for a bad option, 0 for --help. */
export async function main(options: readonly string[]): Promise<number> {
  const write = (text: string) => process.stdout.write(text);
  const given = readOptions(options);
  if (given === 'help') {
    write(usage);
    return 0;
  }
  if (given === null) {
    process.stderr.write(usage);
    return 2;
  }
  const standIn = await startStandIn({ ...given, clock: () => Date.now() / 1000 });
  write(
    `Invented weather (${given.scenario}${given.failure ? `, failing: ${given.failure}` : ''}) at ${standIn.url}\n`,
  );
  write(`LOAMWARD_FORECAST_URL=${standIn.url} npm start\n`);
  await new Promise<void>((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
  await standIn.close();
  return 0;
}

function readOptions(options: readonly string[]) {
  const given = {
    port: 8099,
    scenario: 'seasonal' as Scenario,
    failure: null as FailureName | null,
    ensembleFailure: null as EnsembleFailureName | null,
    archiveFailure: null as ArchiveFailureName | null,
  };
  if (options.includes('--help')) return 'help' as const;
  for (let index = 0; index < options.length; index += 2) {
    const value = options[index + 1] ?? '';
    const scenario = scenarios.find((name) => name === value);
    if (options[index] === '--port' && /^\d{1,5}$/.test(value) && Number(value) < 65_536) given.port = Number(value);
    else if (options[index] === '--scenario' && scenario) given.scenario = scenario;
    else if (options[index] === '--fail' && Object.hasOwn(failures, value)) given.failure = value as FailureName;
    else if (options[index] === '--fail-ensemble' && Object.hasOwn(ensembleFailures, value))
      given.ensembleFailure = value as EnsembleFailureName;
    else if (options[index] === '--fail-archive' && Object.hasOwn(archiveFailures, value))
      given.archiveFailure = value as ArchiveFailureName;
    else return null;
  }
  return given;
}
