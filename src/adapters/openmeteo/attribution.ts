/** Provider and licence of the forecast's numbers: shown wherever they show, as the licence asks. */
export const attribution = 'Weather data by Open-Meteo.com (CC BY 4.0)';

/** Shown in place of the provider where the weather comes from the stand-in. */
export const inventedAttribution = 'Invented weather of the stand-in, not a forecast.';

/** Header by which the stand-in owns up that its weather is invented. */
export const inventedHeader = 'x-loamward-invented';
