import type { Broken } from './examples.ts';
import { parameter } from './overlay-of.ts';

/** Broken examples for each way in which a parameter loosens beside a limit: what facts come from, ageing, a band, the dose. */
export const brokenParameters: readonly Broken[] = [
  {
    name: 'a derivation',
    parts: { parameters: [parameter('inversionWindBelowKmh', 2)] },
    code: 'OVERLAY_DERIVATION_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['air.inversionRisk', '3, or higher'],
  },
  {
    name: 'ageing',
    parts: { parameters: [parameter('goodForSoilSeenHours', 72)] },
    code: 'OVERLAY_AGEING_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['soil.surface'],
  },
  {
    name: 'ageing that looks tighter: what was measured would yield to the forecast sooner',
    parts: { parameters: [parameter('goodForSeenNowHours', 0.5)] },
    code: 'OVERLAY_AGEING_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['wind.boomKmh', '1 as shipped'],
  },
  {
    name: 'a band that looks tighter: a wind that is surely too high would only be possibly so',
    parts: { parameters: [parameter('forecastWindBandKmh', 2)] },
    code: 'OVERLAY_BAND_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['wind.boomKmh', '1 as shipped'],
  },
  {
    name: 'a derivation that tightens one protected rule and loosens another',
    parts: { parameters: [parameter('boomHeightAboveCropM', 1)] },
    code: 'OVERLAY_DERIVATION_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['0.5 as shipped'],
  },
  {
    name: 'the oldest forecast that counts',
    parts: { parameters: [parameter('forecastOldestHours', 96)] },
    code: 'OVERLAY_AGEING_LOOSENED',
    pointer: '/parameters/0/value',
  },
  {
    name: 'a band of the forecast',
    parts: { parameters: [parameter('forecastWindBandKmh', 0)] },
    code: 'OVERLAY_BAND_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['wind.boomKmh'],
  },
  {
    name: 'a parameter whose tighter direction is neither',
    parts: { parameters: [parameter('balanceErrorMmPerRootDay', 6)] },
    code: 'OVERLAY_BAND_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['as shipped'],
  },
  {
    name: 'the dose',
    parts: { parameters: [parameter('usualDoseGPerHa', 850)] },
    code: 'OVERLAY_DOSE_LOOSENED',
    pointer: '/parameters/0/value',
  },
  {
    name: 'a direction turned round',
    parts: { parameters: [parameter('windMostKmh', 8, { tighter: 'higher' })] },
    code: 'OVERLAY_DIRECTION_CHANGED',
    pointer: '/parameters/0/tighter',
  },
  {
    name: 'another unit',
    parts: { parameters: [parameter('windMostKmh', 6.5, { unit: 'm/s' })] },
    code: 'PARAMETER_UNIT_MISFIT',
    pointer: '/parameters/0/unit',
  },
];
