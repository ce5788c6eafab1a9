import { answer, choice, type WordRow } from '../rows.ts';
import { words } from './spelling.ts';

const sensitive =
  'haus|häuser|häusern|dorf|dörfer|garten|gärten|schule|siedlung|graben|gräben|bach|bäche|teich|fluss|wasser|gewässer|bienen|bienenstock|bienenstöcke|bienenstand|weg|wege|radweg|fußweg|leute|menschen|wohnhaus|wohnhäuser|nachbarn|nachbarhaus|nachbarhof|see|straße|hof|spielplatz|kindergarten|gebäude|ort|ortschaft|hecke|reitweg|wanderweg|nachbargarten|rüben|gemüse|nachbarfeld|nachbaracker|stall|ställe|weide';
const place =
  'haus|häusern|dorf|dörfern|garten|gärten|schule|siedlung|bienen|nachbarn|nachbarhaus|straße|ort|ortschaft|kindergarten';
const to = `auf|in|gegen|über der|die|das|den|dem|einen|ein|eine|unser|unsere|unseren|mein|meinen|meine?`;
const blows = 'weht|bläst';
const strong = { strong: true } as const;

/** What is said of wind and gusts, and of where the wind blows. */
export const windWords: readonly WordRow[] = [
  answer(
    'wind.boomKmh',
    'stronger',
    '',
    words`windig, ziemlich windig|stark, kleine bäume schwanken, bäume schwanken`,
    { doubtful: true },
  ),
  answer(
    'wind.boomKmh',
    'calm',
    '',
    words`rauch steigt gerade|senkrecht auf?, rauch steigt auf, nichts bewegt sich, kein blatt bewegt sich, kein blatt rührt sich`,
  ),
  answer('wind.boomKmh', 'light-breeze', 'none wind', words`schwach|leicht|wenig|kaum windig`, { doubtful: true }),
  answer('wind.boomKmh', 'light-air', '', words`rauch zieht, rauch zieht leicht, kaum zu spüren, kaum spürbar`),
  answer(
    'wind.boomKmh',
    'light-breeze',
    '',
    words`blätter säuseln|rascheln, wind im gesicht, im gesicht zu spüren, im gesicht spürbar, leicht zu spüren`,
  ),
  answer(
    'wind.boomKmh',
    'gentle-breeze',
    '',
    words`blätter und? zweige, blätter bewegen sich, zweige bewegen sich, blätter und? dünne? zweige bewegen sich, dünne zweige bewegen sich`,
  ),
  answer(
    'wind.boomKmh',
    'moderate-breeze',
    '',
    words`kleine äste bewegen sich, äste bewegen sich, staub hebt sich, staub wirbelt auf, staub fliegt`,
  ),
  answer(
    'wind.boomKmh',
    'calm',
    'none wind air',
    words`
    windstill, windstille, kein wind, kein lüftchen, nicht ein lüftchen, völlig windstill, ganz windstill, total windstill, kein hauch, völlige windstille, absolut windstill, es geht kein wind, geht kein wind, kein lüftchen regt sich, überhaupt kein wind, gar kein wind, es weht kein lüftchen, weht kein lüftchen, es weht nichts, stille luft
  `,
  ),
  answer('wind.boomKmh', 'calm', 'wind', words`keiner, still, ruhig, null wind, gar keiner`),
  answer('wind.boomKmh', 'calm', '', words`still, ruhig, keiner, gar keiner, ganz still, stille`),
  answer(
    'wind.boomKmh',
    'light-air',
    'none wind',
    words`leiser zug, leichter zug, leiser hauch, hauch von wind, ein hauch, leichter hauch, leichter luftzug, leiser luftzug, ein lüftchen`,
  ),
  answer('wind.boomKmh', 'light-breeze', 'none wind', words`leichte brise, leichter wind`),
  answer('wind.boomKmh', 'gentle-breeze', 'none wind', words`schwache brise, schwacher wind, sanfte brise`),
  answer('wind.boomKmh', 'moderate-breeze', 'none wind', words`mäßige brise, mäßiger wind`),
  answer(
    'wind.boomKmh',
    'stronger',
    'none wind',
    words`
    frische brise, starke brise, starker wind, steife brise, steifer wind, frischer wind, sturm, stürmisch*, stürmt, es stürmt, orkan, sehr windig, zu windig, kräftiger wind, pfeift, bläst stark|kräftig, weht stark|kräftig, windet stark, heftiger wind, starkwind
  `,
  ),
  answer('wind.boomKmh', 'stronger', 'wind', words`sehr? stark, kräftig, heftig, zu stark, stärker`),
  answer('wind.boomKmh', 'stronger', '', words`stark, sehr stark, stärker, kräftig, zu stark, zu windig`),
  answer(
    'wind.gustKmh',
    'medium',
    '',
    words`kleine äste bewegen sich, kleine äste, staub hebt sich, mäßig, äste bewegen sich, staub wirbelt auf, staub fliegt, äste`,
  ),
  answer(
    'wind.gustKmh',
    'light',
    '',
    words`blätter und? zweige, blätter, zweige, nur blätter, nur zweige, höchstens blätter, keine böen, nicht böig, kaum böen, keine, kaum welche, höchstens zweige, dünne zweige`,
  ),
  answer('wind.gustKmh', 'light', 'none', words`keine böen, nicht böig, kaum böen, keine windböen, böenfrei`, {
    doubtful: true,
  }),
  answer(
    'wind.gustKmh',
    'strong',
    '',
    words`kleine bäume schwanken, bäume schwanken, bäume biegen sich, bäume wiegen sich, bäume bewegen sich, bäume, stark, schwanken, kleine bäume`,
  ),
  choice(
    'wind.towardsSensitive',
    'yes',
    'none wind',
    words`
    ${blows} ${to} ${sensitive} zu|hin?, ${blows} genau|direkt|voll ${to} ${sensitive} zu|hin?, ${blows} genau|direkt|voll? richtung der|die|das|den? ${sensitive}, ${blows} genau|direkt|voll? zum|zur ${sensitive} hin?, ${blows} in richtung der|die|das|den? ${sensitive}, ${blows} ins dorf|haus|wasser|gewässer,
    ${blows} auf etwas empfindliches zu, ${blows} zu den ${sensitive} hin?, ${blows} in|auf richtung ${sensitive}, ${blows} in|auf die richtung ${sensitive}, ${blows} genau|direkt|voll? auf was? empfindliches zu
  `,
    strong,
  ),
  choice(
    'wind.towardsSensitive',
    'yes',
    'wind',
    words`
    geht|zieht|drückt|steht|treibt ${to} ${sensitive} zu|hin?, geht|zieht|drückt|steht|treibt richtung der|die|das|den? ${sensitive}, ${to} ${sensitive} zu, richtung der|die|das|den? ${sensitive}, in richtung der|die|das|den? ${sensitive}, zum|zur ${place}, zum|zur ${sensitive} hin, genau|direkt auf der|die|das|den ${sensitive} zu?, auf etwas empfindliches zu, zu den ${sensitive} hin?, auf ${sensitive} zu, genau|direkt richtung ${sensitive}
  `,
    strong,
  ),
  choice(
    'wind.towardsSensitive',
    'yes',
    '',
    words`
    auf der|die|das|den ${sensitive} zu?, richtung der|die|das|den? ${sensitive}, in richtung der|die|das|den? ${sensitive}, zum|zur ${place}, zum|zur ${sensitive} hin, genau|direkt auf der|die|das|den ${sensitive} zu?, zu den ${place} hin?, auf ${sensitive} zu
  `,
  ),
  choice(
    'wind.towardsSensitive',
    'yes',
    'none wind',
    words`
    in windrichtung ist|liegt|liegen|sind|steht|stehen der|die|das|ein|eine|unser|mein? ${sensitive}, der|die|das|ein|eine? ${sensitive} liegt|liegen|ist|sind|steht|stehen in windrichtung
  `,
    strong,
  ),
  choice(
    'wind.towardsSensitive',
    'no',
    'none wind',
    words`
    ${blows} nicht auf|in|gegen der|die|das|den ${sensitive} zu, ${blows} nicht richtung der|die|das|den? ${sensitive}, ${blows} nicht zum|zur ${sensitive} hin?, ${blows} nicht zu den ${sensitive} hin?, ${blows} nicht in richtung der|die|das|den? ${sensitive}, ${blows}? vom ${sensitive} weg, ${blows}? von den|der|dem|einem|einer|unserem|unserer? ${sensitive} weg, ${blows}? weg vom ${sensitive}, ${blows}? weg von den|der|dem|einem|einer|allem? ${sensitive}?, nichts empfindliches in windrichtung, in windrichtung nichts empfindliches?, in windrichtung ist nichts empfindliches?,
    in windrichtung liegt? nichts empfindliches?, nichts in windrichtung, liegt nichts empfindliches? in windrichtung, ${blows} von allem weg, ${blows} auf nichts empfindliches zu, ${blows} auf freies feld, ${blows} aufs freie feld|land, ${blows} ins freie, ${blows} übers freie feld, von allem weg, ${blows}
    auf das freie feld, ${blows} auf unser|unsere eigenes|eigenen? feld|felder|acker, ${blows} auf nichts zu, nichts empfindliches, nur acker|felder|feld in windrichtung, in windrichtung nur acker|felder|feld, aufs offene feld, ${blows} aufs offene feld
  `,
    strong,
  ),
];
