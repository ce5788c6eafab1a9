/** What the drawings show in English, for whoever does not see them, and the words in and below them; loaded with the drawings. */
export const pictures = {
  'texture-roll': {
    light: 'Light: falls apart, or a short roll that crumbles.',
    medium: 'Medium: a thick roll that cracks when it is bent.',
    heavy: 'Heavy: a thin roll that closes to a ring.',
  },
  'feel-by-hand': {
    title:
      'A handful squeezed hard, then a ribbon pressed out between thumb and finger. The words of the answers decide.',
    groups: { light: 'Light', medium: 'Medium', heavy: 'Heavy' },
    feels: {
      dry: 'Dry',
      'slightly-moist': 'Slightly moist',
      moist: 'Moist',
      wet: 'Wet',
      'at-capacity': 'As wet as it can hold',
    },
    balls: { none: 'no ball, crumbs', weak: 'a weak ball', firm: 'a firm ball' },
    ribbons: ['', 'a short ribbon', 'a long ribbon'],
    waters: ['', 'a damp mark', 'a wet outline', 'water glistens'],
  },
  'soil-surface': {
    friable: 'Crumbly: breaks underfoot.',
    cracked: 'Cracked: narrow cracks count.',
    sticky: 'Sticky: hangs on the boot.',
    ponded: 'Puddles: water stands.',
    frozen: 'Frozen: hard with frost.',
    snow: 'Snow lies.',
  },
  'thermometer-30cm': {
    says: 'A thermometer pushed 30 cm into the soil in the shade of the crop; a clock shows five minutes.',
    caption: 'In the shade of the crop, straight down to 30 cm. Wait five minutes, then read.',
    depth: '30 cm',
    wait: '5 minutes',
  },
  'true-leaves': {
    says: 'A young rape plant: two seed leaves low on the stem, not counted; three true leaves above, numbered 1 to 3.',
    caption: 'Count the true leaves, here 3. The two seed leaves at the bottom do not count.',
    seed: 'seed leaf',
  },
  tillers: {
    says: 'A grass plant from its base: the first shoot is numbered 0, three shoots beside it 1 to 3.',
    caption: 'Count the shoots from the base; the first one is none. Here: 3 tillers.',
  },
  quadrat: {
    says: 'A square frame lies in the crop. Five grass plants stand inside it, four outside.',
    caption: 'Half a metre by half a metre: the plants inside, times 4, stand on a square metre. Here 5, so 20.',
    side: 'half a metre',
  },
  slope: {
    says: 'A field falls towards a ditch. Along 100 m it falls 2 m where it is gentle and 5 m where it is steep.',
    caption: 'Drawn steeper than it is: 2 m of fall along 100 m is 2 %, 5 m is 5 %.',
    along: '100 m',
    gentle: '2 m',
    steep: '5 m',
  },
  'water-distance': {
    says: 'A boom over the crop and a ditch beside the field; the distance runs from the last nozzle to the top of the bank.',
    caption: 'From the last nozzle to the top of the bank, not to the water.',
    measure: 'the distance',
    bank: 'top of the bank',
  },
  'soil-water': {
    deficit: 'Deficit: air in the pores. The soil can take up rain.',
    capacity: 'Field capacity: films of water cling to the grains, the large pores have drained.',
    saturated: 'Saturated: every pore is full. More water runs off.',
  },
  'soil-thread': {
    smears: 'Wetter: a thread 3 mm thick holds and bends.',
    limit: 'At the plastic limit: at 3 mm it just begins to crumble.',
    thickness: '3 mm',
  },
  'drain-and-mole': {
    says: 'A cut through a field: a round channel drawn by a mole plough, gravel below it, a pipe in it that leads to an outfall in the ditch.',
    caption: 'Water goes from the mole channel through gravel to the pipe, and out at the outfall.',
    mole: 'mole channel',
    pipe: 'pipe',
    outfall: 'outfall',
  },
  inversion: {
    says: 'Cold air lies at the ground under warmer air. Smoke rises a little, then creeps away flat.',
    caption: 'Smoke that lies flat: fine drops do the same.',
    warm: 'warmer air',
    cold: 'cold air',
  },
  'boom-height': {
    says: 'A boom over the crop: its height is measured from the nozzle to the top of the crop. Fine drops drift off with the wind.',
    caption: 'From the nozzle to the top of the crop. The higher the boom, the more drifts.',
    height: 'height',
  },
};
