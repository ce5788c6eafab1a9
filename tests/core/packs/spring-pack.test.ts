import { describe, expect, test } from 'vitest';
import { decideFacts, observationsOf } from '../../../src/core/dialogue/decide.ts';
import { codedError } from '../../../src/core/errors/coded-error.ts';
import { outlookOf } from '../../../src/core/outlook/index.ts';
import { checkThoroughly } from '../../../src/core/rules/analyse/check-thoroughly.ts';
import { checkPack, loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import { reachedFacts } from '../../../src/core/rules/reach.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { filesOf } from '../../fixtures/mini-pack.ts';
import { springDay, springPack } from '../../fixtures/spring-pack.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { utc } from '../facts/moments.ts';

const { pack } = loadPack(filesOf(springPack()));
const at = utc('2026-04-10T09:00Z');
const place = { 'field.latitude': 52, 'field.longitude': -1 };

const weather = (columns: Parameters<typeof buildForecast>[0]['columns'] = {}) =>
  buildForecast({
    from: epochSeconds(at - 24 * 3600),
    fetchedAt: at,
    hours: 24 * 5,
    place: { latitude: 52, longitude: -1, askedLatitude: 52, askedLongitude: -1 },
    columns,
  });

describe('a pack of another kind', () => {
  test('loads without a finding: it needs no soil, dose or water parameters', () => {
    expect(checkPack(filesOf(springPack()))).toMatchObject({ ok: true, findings: [] });
    expect(Object.keys(reachedFacts(pack))).not.toContain('soil.feel');
  });

  test('is decided by its own facts, asked and from the forecast, with no dose', async () => {
    const forecast = weather({ temperature2mC: () => 9, precipitationMm: () => 0, windSpeed10mKmh: () => 8 });
    const facts = { ...springDay, ...place, 'air.nightLowestC': null };
    const decision = await decideFacts({ pack, facts, forecast, at, now: at, language: 'de' });
    expect(decision).toMatchObject({ verdict: 'spray-today', dose: { needs: [] }, doseText: '', missing: [] });
    expect(decision.facts['air.nightLowestC']).toMatchObject({ known: true, source: 'forecast' });
  });
});
