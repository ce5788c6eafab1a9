import { words } from '../phrases.ts';
import { choice, type WordRow } from '../rows.ts';

/** Counties and regions that lie in one country, as an answer where the field lies. */
export const countyWords: readonly WordRow[] = [
  choice(
    'field.country',
    'GB-ENG',
    '',
    words`
    county? durham, bedfordshire, beds, berkshire, buckinghamshire, bucks, cambridgeshire, cambs, cheshire, cornwall, cumbria, cumberland, derbyshire, devon, dorset, essex, gloucestershire, glos, hampshire, hants, herefordshire, hertfordshire, herts, huntingdonshire, kent, lancashire, lancs, leicestershire, leics, lincolnshire, lincs, norfolk, northamptonshire, northants, northumberland, nottinghamshire, notts, oxfordshire, oxon, rutland, shropshire, salop, somerset, staffordshire, staffs, suffolk, surrey, east|west? sussex, warwickshire, westmorland, wiltshire, wilts, worcestershire, worcs, north|south|east|west? yorkshire, north|south|east|west yorks, isle of wight, east anglia, home counties, west country, fens, cotswolds, humberside, wolds, vale of york, holderness, west|east midlands
  `,
  ),
  choice(
    'field.country',
    'GB-SCT',
    '',
    words`
    aberdeenshire, angus, ayrshire, banffshire, berwickshire, caithness, clackmannanshire, dumfriesshire, dumfries and galloway, east|west|mid lothian, lothian, lothians, fife, galloway, inverness shire?, kincardineshire, kinross, lanarkshire, midlothian, moray, morayshire, nairnshire, orkney, peeblesshire, perthshire, perth, renfrewshire, roxburghshire, selkirkshire, stirlingshire, sutherland, tayside, black isle, highlands, mearns, scottish borders
  `,
  ),
  choice(
    'field.country',
    'GB-WLS',
    '',
    words`
    anglesey, breconshire, brecknockshire, caernarfonshire, cardiganshire, ceredigion, carmarthenshire, clwyd, denbighshire, dyfed, flintshire, glamorgan, vale of glamorgan, gower, gwent, gwynedd, meirionnydd, monmouthshire, montgomeryshire, pembrokeshire, powys, radnorshire
  `,
  ),
  choice(
    'field.country',
    'GB-NIR',
    '',
    words`
    county|co antrim|armagh|down|fermanagh|derry|londonderry|tyrone, antrim, armagh, fermanagh, londonderry, tyrone, ards peninsula
  `,
  ),
];
