/*
 * An evening of several plates, in German.
 */
import type { BrewMaterial } from "../../brew/brewCapacity.js";
import { formatTime } from "../../quantities/formatTime.js";
import type { EveningTexts } from "../../text/eveningTexts.js";
import { plan } from "./plan.js";

const names: Readonly<Record<BrewMaterial, string>> = { film: "Film", plate: "Platte", paper: "Blatt" };

/** All that an evening says in German. */
export const evening: EveningTexts = {
  ...plan,
  plate: (material, number, name) => `${names[material]} ${number}${name === undefined ? "" : ` (${name})`}`,
  begins: (plate, startS) => `${formatTime(startS)} ${plate} beginnt.`,
  between: (low, high) => `mit 90 % Sicherheit zwischen ${low} und ${high}`,
  during: (next, step) => `${next} beginnt in diesem Schritt: ${step}.`,
  until: (next, waitS) => `Noch ${formatTime(waitS)}, dann beginnt ${next}.`,
  fromTo: (first, last) => `${first} bis ${last}`,
  unplanned: (plate) => `${plate} und alles danach ist nicht geplant.`,
  months: "Monate",
};
