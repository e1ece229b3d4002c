/*
 * Why a shelf gives no brew, in German.
 */
import type { NoBrewReason } from "../../brew/noBrew.js";

export const noBrew: Readonly<Record<NoBrewReason, string>> = {
  "no-agent": "Nichts im Vorrat entwickelt. Kaffee oder Vitamin C dazunehmen.",
  "label-missing": "Von den Tabletten fehlt die Angabe auf der Packung: labelMg, mg Vitamin C je Stück.",
  "no-alkali": "Nichts im Vorrat macht das Bad alkalisch. Waschsoda dazunehmen.",
  "alkali-too-weak": "Das Alkali im Vorrat ist zu schwach. Waschsoda dazunehmen.",
  "caustic-alone":
    "Ätznatron allein lässt sich mit Kaffee nicht sicher dosieren. " +
    "Waschsoda dazunehmen oder stattdessen nehmen.",
  "too-little": "Der Vorrat reicht nicht für diese Menge.",
  "volume-too-small": "Das Bad ist zu klein, um mit diesem Löffel zu messen. Mehr ansetzen.",
  "does-not-dissolve": "Was nötig ist, löst sich in so kaltem Wasser nicht.",
  "too-alkaline": "Jeder Ansatz aus diesem Vorrat ist zu alkalisch für die Schicht.",
  "too-cold": "In einem so kalten Bad ist keine Zeit verlässlich. Das Bad wärmen.",
  "too-warm": "Ein so warmes Bad verträgt die Schicht nicht. Das Bad kühlen.",
  "dies-too-soon": "Jeder Ansatz aus diesem Vorrat wäre tot, bevor seine Zeit um ist.",
  "too-slow": "Jeder Ansatz aus diesem Vorrat braucht mehr als anderthalb Stunden.",
};
