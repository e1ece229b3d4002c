/*
 * A development in progress in German.
 */
import type { SteeringTexts } from "../../text/steeringTexts.js";
import { cautions } from "./cautions.js";

const colderOrWarmer = (colder: boolean): string => `Das Bad ist ${colder ? "kälter" : "wärmer"} als geplant`;

/** All that steering says in German. */
export const steering: SteeringTexts = {
  cautions,
  goal: (time, lift) =>
    lift ? `${time} nach dem Einlegen herausheben.` : `${time} nach dem Einguss ausgießen.`,
  now: (lift) => (lift ? "Jetzt herausheben." : "Jetzt ausgießen."),
  refused: "Keine verlässliche Zeit:",
  refusedGoal: (time, lift) =>
    lift
      ? `Die Gesetze allein ergäben: ${time} nach dem Einlegen herausheben.`
      : `Die Gesetze allein ergäben: ${time} nach dem Einguss ausgießen.`,
  asPlanned: "Das Bad ist wie geplant.",
  drifted: (colder, clock, work) => `${colderOrWarmer(colder)}: ${clock} haben so viel bewirkt wie ${work}.`,
  drifting: (colder, clock, work) => `${colderOrWarmer(colder)}: ${clock} bewirken so viel wie ${work}.`,
  appeared: (when, time) =>
    when === "on-time"
      ? "Das Bild kam zur erwarteten Zeit."
      : `Das Bild kam ${when === "early" ? "früh" : "spät"}: allein danach wären es ${time}.`,
};
