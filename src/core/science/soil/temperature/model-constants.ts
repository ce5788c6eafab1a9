/** Constants of the model of one depth; one set for every site. Temperatures in C, memories and noise per day. */
export interface SoilModelConstants {
  readonly depthM: number;
  /** Daily step of the quick and of the slow memory of air temperature, 0 to 1. */
  readonly quickStep: number;
  readonly slowStep: number;
  /** Share of each memory in the soil's temperature before the site's readings correct it. */
  readonly quickShare: number;
  readonly slowShare: number;
  /** Soil above what the air explains: yearly mean, and the cosine and sine of the year counted from 1 January. */
  readonly offsetC: number;
  readonly offsetCosC: number;
  readonly offsetSinC: number;
  /** Share of frost in the air that reaches the soil, 0 to 1: frozen ground and snow shield it. */
  readonly frostShare: number;
  /** Offset of the site: what stays of it from day to day, its spread over sites, and its noise a day. */
  readonly siteKept: number;
  readonly siteSdC: number;
  readonly siteNoiseC: number;
  /** Passing deviation (sun, rain, wind): what stays from day to day, and its noise a day. */
  readonly passingKept: number;
  readonly passingNoiseC: number;
  /** Spread over sites of the two shares, and how they wander, per square root of a day. */
  readonly quickShareSd: number;
  readonly slowShareSd: number;
  readonly quickShareNoise: number;
  readonly slowShareNoise: number;
  /** How much larger the noise of early June is than that of the winter half: 0 for alike. */
  readonly summerNoise: number;
  /** How much larger the noise is where it has been cold for weeks: 0 for alike. */
  readonly frostNoise: number;
  /** Errors that the first reading of a site counts for: soil far from what the air tells is soil of another kind. */
  readonly firstWorth: number;
  /** Errors that the model's own error size is worth against the errors seen at the site. */
  readonly scaleWorth: number;
  /** Error of one reading that its own standard error leaves out, C. */
  readonly spotSdC: number;
  /** Standard errors to either side that hold 80 % and 95 % in the years fitted on. */
  readonly reach80: number;
  readonly reach95: number;
}
