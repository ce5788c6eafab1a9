/** Dose and product. */
export const doseWords = {
  dose: (active: string, product: string, strength: string, most: string) =>
    `${active} g/ha of active: ${product} L/ha of ${articleOf(strength)} ${strength} g/L product (rounded down); the label in hand allows ${most} g/ha at most.`,
  solid: 'For a solid product read kg/ha and g/kg.',
  severe: 'This is the higher dose, for severe infestations only.',
  cut: "The label's maximum cuts the usual dose.",
  severeCut: "The label's maximum cuts the higher dose, which is for severe infestations only.",
  given: (active: string) => `With the product rounded down that is ${active} g/ha.`,
  needs: (what: string) => `No dose yet. Needed from the label in hand: ${what}.`,
};

/** "an" before a number that is said with a vowel: eight, eleven, eighteen, eighty, eight hundred. */
function articleOf(number: string): 'a' | 'an' {
  return /^(8|1[18](\.|$))/.test(number) ? 'an' : 'a';
}
