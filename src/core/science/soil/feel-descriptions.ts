import type { FeelClass } from './feel-classes.ts';
import type { FeelGroup } from './feel-groups.ts';

const atCapacity = 'Makes a soft wet ball; squeezed or shaken, a film of water shows for a moment and the hand is wet.';
const saturated = 'Water runs out of a handful without any squeezing.';

/** What a hand finds when it squeezes a handful and draws it out between thumb and finger: the guide (USDA NRCS 1998) in our own words. */
export const feelDescriptions: Readonly<Record<FeelGroup, Readonly<Record<FeelClass, string>>>> = {
  coarse: {
    dry: 'Loose; single grains trickle through the fingers.',
    'slightly-moist': 'A squeeze makes a very weak ball that falls apart; the hand stays clean.',
    moist: 'A squeeze makes a weak ball; a few grains cling to the fingers. Makes no ribbon.',
    wet: 'A squeeze makes a weak ball; grains cling and water marks the hand. Makes no ribbon.',
    'at-capacity': atCapacity,
    saturated,
  },
  'moderately-coarse': {
    dry: 'Loose; clumps come apart at a touch.',
    'slightly-moist': 'A squeeze makes a weak ball that hardly takes finger marks; the hand stays clean.',
    moist: 'A squeeze makes a ball with finger marks and stains the hand a little. Makes no ribbon.',
    wet: 'A squeeze makes a ball with clear finger marks; water and soil coat the fingers. Makes no ribbon.',
    'at-capacity': atCapacity,
    saturated,
  },
  medium: {
    dry: 'Clods crumble when pressed.',
    'slightly-moist': 'A squeeze makes a weak ball with a rough face; no water marks the hand.',
    moist: 'A squeeze makes a ball with clear finger marks and marks the hand lightly. Makes a weak ribbon.',
    wet: 'A squeeze makes a ball with sharp finger marks; soil and water coat the fingers. Makes a ribbon.',
    'at-capacity': atCapacity,
    saturated,
  },
  fine: {
    dry: 'Hard clods, often with cracks, that are not easily broken.',
    'slightly-moist': 'Clods flatten when pressed; a squeeze makes a weak ball and no water marks the hand.',
    moist: 'A squeeze makes a smooth ball and marks the hand lightly. Makes a ribbon between thumb and finger.',
    wet: 'A squeeze makes a ball and leaves a patchy coat of soil and water on the fingers. Makes a ribbon easily.',
    'at-capacity': atCapacity,
    saturated,
  },
};
