/*
 * Module: inspection. The English sentences of its cautions, each from its data.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { digits } from "../core/digits.js";
import { lengthText } from "../quantities/lengthText.js";

/** How to try a safelight. */
const COIN =
  "Test it first: lay a coin on a scrap, light it for as long as you will look, and develop it. " +
  "If the coin shows, the light is too bright.";

/** What light a material may see. */
export const safelightSentences: Pick<
  CautionSentences,
  "panchromatic-dark" | "safelight-red" | "safelight-amber"
> = {
  "panchromatic-dark": () =>
    "Panchromatic: develop in complete darkness, by time and temperature. " +
    "No safelight shows the image without fogging it.",
  "safelight-red": () => "Orthochromatic: deep red safelight only, weak and not near. " + COIN,
  "safelight-amber": () => "Blue-sensitive: amber or red safelight as the maker says. " + COIN,
};

export const disagreeSentence: Pick<CautionSentences, "estimates-disagree"> = {
  "estimates-disagree": ({ data: { firstS, secondS } }) =>
    `The two estimates, ${lengthText(firstS)} and ${lengthText(secondS)}, disagree beyond chance. ` +
    `Check temperature, dilution and factor before trusting either.`,
};

export const strengthOutsideSentence: Pick<CautionSentences, "strength-outside"> = {
  "strength-outside": ({ limit, actual }) =>
    `No list goes to ${digits(actual)} g/l. The factor is that of the nearest printed strength, ` +
    `${digits(limit)} g/l.`,
};
