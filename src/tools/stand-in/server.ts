import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { inventedHeader } from '../../adapters/openmeteo/attribution.ts';
import { type ArchiveFailureName, archiveFailures, describeArchive } from './archive.ts';
import { buildReply, type ReplyDescription } from './build-forecast.ts';
import { type EnsembleFailureName, ensembleFailures } from './ensemble-failures.ts';
import { type Failure, type FailureName, failures, type Reply } from './failures.ts';
import { inventMembers } from './invented-members.ts';
import { inventWeather, type Scenario, scenarios } from './invented-weather.ts';

/** How the stand-in answers: it can be changed while it runs. */
export interface StandInControl {
  scenario: Scenario;
  /** Every reply fails so, until changed. */
  failure: FailureName | null;
  /** These fail first, one a question. */
  readonly next: FailureName[];
  /** Every reply of the ensemble fails so, until changed. */
  ensembleFailure: EnsembleFailureName | null;
  /** Every reply of the archive fails so, until changed. */
  archiveFailure: ArchiveFailureName | null;
  /** Weather of one's own in place of the scenario's. */
  describe: ((invented: ReplyDescription) => ReplyDescription) | null;
}

/** A running stand-in. */
export interface StandIn {
  /** Base address, for LOAMWARD_FORECAST_URL. */
  readonly url: string;
  readonly control: StandInControl;
  /** Paths with query of the questions for a forecast that came, oldest first. */
  readonly questions: readonly string[];
  /** The same of the questions for an ensemble. */
  readonly ensembleQuestions: readonly string[];
  /** The same of the questions for the usual air of a place. */
  readonly archiveQuestions: readonly string[];
  readonly close: () => Promise<void>;
}

/**
 * Starts the stand-in of the forecast service on 127.0.0.1: invented weather as real FlatBuffers bytes. Paths may choose for
 * one question: /scenario/NAME/v1/forecast, /fail/NAME/v1/forecast, or both; /v1/ensemble gives the runs of an ensemble, /v1/archive the air of past days. `clock` in epoch seconds; port 0 takes a free one.
 */
export async function startStandIn(
  options: { readonly clock: () => number; readonly port?: number } & Partial<
    Pick<StandInControl, 'scenario' | 'failure' | 'ensembleFailure' | 'archiveFailure'>
  >,
): Promise<StandIn> {
  const control: StandInControl = {
    scenario: options.scenario ?? 'seasonal',
    failure: options.failure ?? null,
    ensembleFailure: options.ensembleFailure ?? null,
    archiveFailure: options.archiveFailure ?? null,
    next: [],
    describe: null,
  };
  const questions: string[] = [];
  const ensembleQuestions: string[] = [];
  const archiveQuestions: string[] = [];
  const server = createServer((request, response) => {
    const asked = request.url ?? '';
    const isArchive = asked.includes('/v1/archive');
    (isArchive ? archiveQuestions : asked.includes('/v1/ensemble') ? ensembleQuestions : questions).push(asked);
    if (isArchive) {
      answerArchive(request, response, control.archiveFailure);
      return;
    }
    answer(request, response, control, options.clock());
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(options.port ?? 0, '127.0.0.1', resolve);
  });
  const close = () =>
    new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    control,
    questions,
    ensembleQuestions,
    archiveQuestions,
    close,
  };
}

function answerArchive(request: IncomingMessage, response: ServerResponse, failed: ArchiveFailureName | null): void {
  const description = describeArchive(new URL(request.url ?? '/', 'http://127.0.0.1').searchParams);
  if (description === null) send(response, { status: 400, headers: {}, body: new TextEncoder().encode('{}') });
  else give(request, response, description, failed === null ? null : archiveFailures[failed]);
}

function answer(request: IncomingMessage, response: ServerResponse, control: StandInControl, now: number): void {
  const address = new URL(request.url ?? '/', 'http://127.0.0.1');
  const path = /^(?:\/scenario\/([^/]+))?(?:\/fail\/([^/]+))?\/v1\/(forecast|ensemble)$/.exec(address.pathname);
  const ensemble = path?.[3] === 'ensemble';
  const scenario = scenarios.find((name) => name === (path?.[1] ?? control.scenario));
  const ways: Readonly<Record<string, Failure>> = ensemble ? ensembleFailures : failures;
  const failed = ensemble ? control.ensembleFailure : (path?.[2] ?? control.next.shift() ?? control.failure);
  const known = failed === null || Object.hasOwn(ways, failed);
  const forecast = path && scenario && known ? describe(address.searchParams, scenario, control, now) : null;
  if (!forecast) {
    send(response, { status: 404, headers: {}, body: new TextEncoder().encode('There is nothing here.\n') });
    return;
  }
  const description = ensemble ? inventMembers(forecast) : forecast;
  const failure = failed === null ? null : (ways[failed] ?? null);
  give(request, response, description, failure);
}

/** Answers with what is described, or fails the way that is named. */
function give(
  request: IncomingMessage,
  response: ServerResponse,
  description: ReplyDescription,
  failure: Failure | null,
): void {
  if (failure === 'silence') return;
  if (failure === 'reset') {
    request.socket.resetAndDestroy();
    return;
  }
  send(response, failure ? failure(description) : { status: 200, headers: {}, body: buildReply(description) });
}

/** The weather for a question; null where the question is not of the right form. */
function describe(
  query: URLSearchParams,
  scenario: Scenario,
  control: StandInControl,
  now: number,
): ReplyDescription | null {
  const number = (name: string) => (query.get(name) ? Number(query.get(name)) : Number.NaN);
  const [latitude, longitude] = [number('latitude'), number('longitude')];
  const [past, ahead] = [number('past_days'), number('forecast_days')];
  if (![latitude, longitude, past, ahead].every(Number.isFinite)) return null;
  const start = (Math.floor(now / 86_400) - past) * 86_400;
  const invented = inventWeather(scenario, { latitude, longitude, start, hours: (past + ahead) * 24 }, now);
  return control.describe ? control.describe(invented) : invented;
}

function send(response: ServerResponse, reply: Reply): void {
  response.writeHead(reply.status, { ...reply.headers, [inventedHeader]: 'yes' });
  response.end(reply.body);
}
