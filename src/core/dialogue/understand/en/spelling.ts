const dialect: Readonly<Record<string, string>> = {
  nowt: 'nothing',
  nowts: 'nothing',
  nuthin: 'nothing',
  nothin: 'nothing',
  naething: 'nothing',
  owt: 'anything',
  summat: 'something',
  nae: 'no',
  nane: 'none',
  isnae: 'isnt',
  arenae: 'arent',
  wasnae: 'wasnt',
  hasnae: 'hasnt',
  havenae: 'havent',
  didnae: 'didnt',
  doesnae: 'doesnt',
  cannae: 'cant',
  dinnae: 'dont',
  dinna: 'dont',
  dunnae: 'dont',
  yesterdee: 'yesterday',
  mebbe: 'maybe',
  mebbes: 'maybe',
  runnin: 'running',
  rainin: 'raining',
  blowin: 'blowing',
  goin: 'going',
  dryin: 'drying',
};

/** A lower-case word of a dialect as the word lists have it. */
export function spell(word: string): string {
  return Object.hasOwn(dialect, word) ? (dialect[word] ?? word) : word;
}

/** Words that are no mistyped word of the lists, though a letter away from one. */
export const properWords: readonly string[] = (
  'stocky stick sticks sticker stacked tracks crackle cracker cackled front fronts frosting later lever levers trains grains grain drained drainer ' +
  'rained puddings paddles muddles cuddles lakes leased leaver leavers lived dried mould molded mounted moat moist most most coast clays clan clean classy class ' +
  'slops slope slight sleep steel steps stream steam strain strains string spring springs sprint spirit pounded bonded blended ground grounds grown growing groan round rounds ' +
  'wired wider wiring winding winds wines wined winded windy winter sandy handy sands hands silts stilts salty silky loamy roamy level levels livid frozen froze dozen ' +
  'flower flowers flooded flood floods blooded flown following follow hollow yellow fallow fellow shallow swallow running ruining gunning punning turning stopping stepping ' +
  'treated greeted tread trail trailer trials tiled tiller tilled tills filler rapid rapes ripe ripped tipped rippled snowed shower showed slowly shows showing heavily heaven heaves heats hearty weather whether ' +
  'marked market marker market parked park barked measured measures pegging pegged begged agreed greed greet plane plans planes plant planted plants plenty planet planes pipes piped pikes bikes dikes ' +
  'county counts count country counter court wheels wells walls waled wales whales scorched inside insides outside outsides insider outsider within without something sometime sometimes sensible sensitive ' +
  'hills hilly chilly gentle genteel gently gusto gusts guests ghosts dusts dusty rusty musty misty mists mister master calmer calmed palms balms alarm stilled stiller spilt split spoil spoils soiled soils sails tails foils boiled ' +
  'patch patchy pitchy porch batch match watch catch parts party pearl years yearly early nearly clearly dearly beaten beetle beetles beetroot potatoes potato onions lettuce spraying spray sprayed prayed stray strayed straw straws strip stripe strips stripes'
).split(' ');
