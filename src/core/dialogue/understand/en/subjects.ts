import type { Subject } from '../lexicon-types.ts';
import { words } from '../phrases.ts';

/** What a word speaks of. Patterns as in `phraseBook`. */
export const subjectWords: Readonly<Record<Subject, readonly string[]>> = {
  soil: words`
    the clay|silt|sand|peat, soil, soils, ground, the? land, earth, topsoil, seedbed, soil temp|temperature|thermometer, ground
    temp|temperature, dirt, soil texture|type, soil probe|probes, probe, probes, soil thermometers, soil temps|temperatures, ground thermometer, clods, soil moisture, soil feel|feels
  `,
  surface: words`surface, soil surface, on top, surface of the? soil, tramlines, wheelings`,
  drains: words`
    drain, drains, outfall|outfalls, drain|field outfall|outfalls, tile|land|field drains, drain pipes, drainage,
    drainflow, drain flow, tiles, pipes, drain pipe, outlet, outlets, outflow, outflows, drain ends, pipe ends, tile ends
  `,
  air: words`air, air temp|temperature, outside temp|temperature, air temperatures, outdoors, out here`,
  wind: words`wind, winds, wind speed, windspeed, breeze, wind at boom height, at|by|on the? boom|booms, at boom height, blowing, anemometer, wind meter, from the? north|south|east|west|northeast|northwest|southeast|southwest, from the? north|south|nor|sou east|west, westerly|northerly|southerly|easterly wind|breeze`,
  gust: words`gust, gusts, gusting, gusty, gusting up? to, gusts of|to|up, gusting at|around, peaks, peaking at|around?, peaks of|at, topping out at, gust speed, maxing out? at`,
  leaves: words`leaves, true leaves, leaf, leaf count, number of leaves`,
  tillers: words`tillers, tiller, tillering`,
  weed: words`
    black grass, blackgrass, rye grass, ryegrass, grass weed|weeds, grassweeds, weed, weeds, quadrat|quadrats,
    heads, weed count|density
  `,
  crop: words`crop, rape, oilseed rape, osr, plants, oilseed, colza`,
  tank: words`tank, in the tank, sprayer tank, mix, in with it, going in`,
  buffer: words`buffer, buffer strip|zone, no spray strip|zone|distance|area|line, buffers, no spray`,
  plan: words`plan, water plan, field plan, catchment plan`,
  zone: words`
    safeguard zone, safeguard|protected area, drinking water protected? zone|area, drinking water safeguard zone,
    protected zone, drinking water catchment, dwpa, drwpa, water protection zone|area, protected water area
  `,
  water: words`
    ditch, ditches, stream, pond, river, beck, brook, watercourse, dyke, dike, burn, lake, nearest|the water,
    from|to|off water, bank, top of the bank, water, ditch is|side, reservoir
  `,
  slope: words`slope, slopes, sloping, gradient, incline, hill, bank slope, fall`,
  area: words`area, field size, size, area to be sprayed, acreage`,
  rain: words`rain, rainfall, precipitation, weather`,
  'delta-t': words`delta t, deltat, delta tee`,
  peak: words`
    heaviest|wettest|worst hour, heaviest in an hour, peak hour|rate|intensity, wettest single hour, heaviest|biggest burst,
    hourly peak|max|maximum
  `,
  capacity: words`field capacity, field capacity is, percentage of field capacity`,
  humidity: words`humidity, rh, relative humidity, hygrometer, humid`,
  product: words`product, concentration, product contains|content, grams per litre, formulation, can contains`,
  label: words`
    label, maximum, max, label maximum|max, label allows, maximum dose, label says, max dose, label limit
  `,
  temperature: words`temperature, temp, temps, thermometer, degrees`,
  depth: words`deep, depth, down`,
  treatment: words`propyzamide, the active`,
};

/** Crops, each by all its names. */
export const cropNames: readonly (readonly string[])[] = [
  words`wheat, winter wheat, spring wheat`,
  words`barley, winter barley, spring barley`,
  words`oats, winter oats, spring oats`,
  words`rye, winter rye`,
  words`triticale`,
  words`maize`,
  words`beans, winter beans, spring beans`,
  words`peas`,
  words`potatoes`,
  words`beet, sugar beet`,
];
