/**
 * What a squeezed handful feels like, by texture group and class. After USDA NRCS, "Estimating Soil Moisture by Feel and Appearance"
 * (1998), in our own words and from memory: its coarse, medium and fine textures. Saturated is common practice, no source.
 */
export const feels = {
  light: {
    dry: 'Loose grains run through the fingers. A squeezed handful falls apart when touched. The hand stays clean.',
    'slightly-moist':
      'A very weak ball, with finger marks to be seen. A few grains stick to the fingers, no water does.',
    moist: 'A weak ball, darker than dry. Grains and a light damp stain on the fingers. No ribbon.',
    wet: 'A weak ball that leaves a wet outline on the hand. Heavy damp stain on the fingers. No ribbon.',
    'at-capacity': 'A soft, weak ball. Squeezed or shaken, water shows on it for a moment. Fingers coated wet.',
    saturated: 'Water runs out of the handful without squeezing. No ball stands.',
  },
  medium: {
    dry: 'Crumbs and clods that break under the thumb. No ball, no stain on the fingers.',
    'slightly-moist': 'A weak ball with a rough skin; a few crumbs break away. No damp stain on the fingers.',
    moist:
      'A ball that stays, dark and pliable. A very light damp stain. Thumb and finger press out a weak, short ribbon.',
    wet: 'A ball with clear finger marks and a wet outline on the hand. Soil and water coat the fingers. It ribbons.',
    'at-capacity': 'A soft ball. Squeezed or shaken, water glistens on it for a moment. Thick wet coat on the fingers.',
    saturated: 'Water runs out without squeezing, and the handful slumps.',
  },
  heavy: {
    dry: 'Hard clods that the thumb can hardly crumble. No ball, no stain.',
    'slightly-moist': 'A weak ball, hardly a crumb breaks away; clods flatten under the thumb. No damp stain.',
    moist: 'A smooth ball with clear finger marks. Light damp stain. It presses out to a ribbon.',
    wet: 'A ball that coats the fingers unevenly, wet outline on the hand. It ribbons long and easily.',
    'at-capacity': 'A soft ball, slick and sticky. Squeezed or shaken, water shows on it. Thick coat on the fingers.',
    saturated: 'Water runs out without squeezing; the clay smears like paste.',
  },
};
