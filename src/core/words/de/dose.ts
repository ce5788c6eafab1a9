import type { Catalogue } from '../catalogue.ts';

/** Dose and product. */
export const doseWords: Catalogue['dose'] = {
  dose: (active, product, strength, most) =>
    `${active} g/ha Wirkstoff: ${product} L/ha eines Mittels mit ${strength} g/L (abgerundet); die vorliegende Gebrauchsanleitung erlaubt höchstens ${most} g/ha.`,
  solid: 'Bei einem festen Mittel lesen Sie kg/ha und g/kg.',
  severe: 'Das ist die höhere Menge, nur für starken Befall.',
  cut: 'Die Höchstmenge der Gebrauchsanleitung kürzt die übliche Menge.',
  severeCut: 'Die Höchstmenge der Gebrauchsanleitung kürzt die höhere Menge, die nur für starken Befall gilt.',
  given: (active) => `Mit der abgerundeten Menge sind das ${active} g/ha.`,
  needs: (what) => `Noch keine Menge. Aus der vorliegenden Gebrauchsanleitung wird gebraucht: ${what}.`,
};
