/*
 * Module: handbook. Dissociation constants at infinite dilution, mol per kg water, and what coffee brings by
 * the gram. Every constant is log10 K = a + bT + c/T + d·log10 T + e/T², T in kelvin, 0 to 50 °C.
 */
import type { HandbookRange } from "./ingredients.js";

/** Coefficients a, b, c, d, e. */
export type LogK = readonly [a: number, b?: number, c?: number, d?: number, e?: number];

/** The acids a brew may hold, each from its fully protonated, uncharged form. */
export type AcidSystem =
  | "carbonate"
  | "ascorbate"
  | "coffeeAcid"
  | "coffeePhenol"
  | "chlorogenate"
  | "borate"
  | "phosphate"
  | "sulphite"
  | "citrate";

/*
 * carbonate, water, Henry: L. N. Plummer, E. Busenberg, Geochim. Cosmochim. Acta 46, 1982, p. 1011 (0 to 90
 * °C). ascorbate: 4.15; second constant 11.8 ± 0.3, between the handbooks' 11.57 to 11.79 (from memory) and
 * 12.07 by capillary zone electrophoresis (abstract). No temperature coefficient was found, so none is
 * applied; likewise for coffee, sulphite and citrate. chlorogenate: literature values for 5-caffeoylquinic
 * acid (from memory). coffeeAcid, coffeePhenol: lumps, see handbookCoffee. borate: B. B. Owen, J. Am. Chem.
 * Soc. 56, 1934, p. 1695, in the form 2237.94/T + 0.016883 T − 3.305 (from memory); it gives 9.235 at 25 °C,
 * where the USGS thermodynamic database of 2009 has 9.24. phosphate: USGS thermodynamic database of 2009,
 * 7.207 and 12.346 with their enthalpies (0.99 and 3.53 kcal/mol); first step 2.15 (from memory). sulphite:
 * 1.9 and 7.2 (from memory). citrate: 3.13, 4.76 and 6.40 (from memory).
 */
export const handbookAcids: Readonly<Record<AcidSystem, readonly LogK[]>> = {
  carbonate: [
    [-356.3094, -0.06091964, 21834.37, 126.8339, -1684915],
    [-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9],
  ],
  ascorbate: [[-4.15], [-11.8]],
  coffeeAcid: [[-6]],
  coffeePhenol: [[-9.5]],
  chlorogenate: [[-3.45], [-8.4], [-11.25]],
  borate: [[3.305, -0.016883, -2237.94]],
  phosphate: [[-2.15], [-6.4813, 0, -216.36], [-9.7584, 0, -771.5]],
  sulphite: [[-1.9], [-7.2]],
  citrate: [[-3.13], [-4.76], [-6.4]],
};

/** Ion product of water; source as for carbonate. */
export const handbookWater: LogK = [-283.971, -0.05069842, 13323, 102.24447, -1119669];

/** Solubility of carbon dioxide at one atmosphere; source as for carbonate. */
export const handbookHenry: LogK = [108.3865, 0.01985076, -6919.53, -40.45154, 669365];

/**
 * Millimoles per gram of dry coffee. Chlorogenic acids: 6 g per 100 g, 3.5 to 10.7 (reviews of coffee
 * constituents, from memory), as 5-caffeoylquinic acid. Acid: 0.5 to 1 mmol/g to pH 7.5 (from memory); a
 * tenth of it neutralised, which gives coffee its pH of 4.9 to 5.1. Phenol: what coffee still takes up to
 * about pH 10.6; a household recipe that sets its pH with coffee (ascorbate and caustic soda, 2013) implies 2
 * to 2.5 mmol/g in all, kept inside the range here.
 */
export const handbookCoffee: Readonly<Record<"chlorogenate" | "coffeeAcid" | "coffeePhenol", HandbookRange>> =
  {
    chlorogenate: { low: 0.099, value: 0.169, high: 0.302 },
    coffeeAcid: { low: 0.55, value: 0.8, high: 1.1 },
    coffeePhenol: { low: 0.3, value: 0.9, high: 1.5 },
  };

/**
 * Specific interaction coefficients with sodium, kg/mol, by ionic charge and for hydroxide: carbonate −0.08,
 * bicarbonate 0.00, hydroxide 0.04, phosphate −0.25. OECD Nuclear Energy Agency, thermochemical data base,
 * guideline TDB-2 on ionic strength corrections (from memory), at 25 °C and used at every temperature.
 */
export const handbookInteraction: { readonly byCharge: readonly number[]; readonly hydroxide: number } = {
  byCharge: [0, 0, -0.08, -0.25],
  hydroxide: 0.04,
};
