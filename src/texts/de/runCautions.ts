/*
 * Cautions about a run, in German: its plan, its readings, and what was learned.
 */
import type { LearningCautionCode } from "../../learning/text.js";
import type { eveningSentences } from "../../process/eveningText.js";
import type { NotesCautionCode } from "../../notes/text.js";
import type { ProcessCautionCode } from "../../process/text.js";
import type { ReadingCautionCode } from "../../steering/text.js";
import type { CautionSentences, TemperatureUnit } from "../../core/cautionTexts.js";
import { isFigure } from "../../core/digits.js";
import { formatTime } from "../../quantities/formatTime.js";
import { dauer, grad, gradWeit, satzanfang, stellen, wort, zahl } from "./figures.js";
import { dilution, learned, notFitted, reasons, steps, ursachen } from "./words.js";

type Codes =
  | ProcessCautionCode
  | keyof typeof eveningSentences
  | ReadingCautionCode
  | NotesCautionCode
  | Exclude<LearningCautionCode, "stored-differs">;

/** Wofür eine Zeit gilt. */
function seite(cause: unknown, side: unknown, unit: TemperatureUnit): string {
  if (cause === "temperature") return grad(side, unit);
  if (cause === "agitation")
    return isFigure(side) ? `Bewegung alle ${zahl(side, 4)} s` : wort(bewegungen, side);
  return side === "stock" ? "unverdünnte Stammlösung" : `die Verdünnung ${dilution(String(side))}`;
}

const bewegungen = { continuous: "ständige Bewegung", stand: "Standentwicklung" };

export const runSentences: Pick<CautionSentences, Codes> = {
  // Ablauf
  "answer-differs": ({ data: { cause, answered, planned } }, unit) =>
    `Die Zeit gilt für ${seite(cause, answered, unit)}, der Plan für ${seite(cause, planned, unit)}.`,
  "bath-drifted": ({ data: { fromC, toC } }, unit) =>
    `Das Bad ist von ${grad(fromC, unit)} auf ${grad(toC, unit)} gekommen. Die Zeit rechnet damit. ` +
    `Wird es wieder ${isFigure(fromC) && fromC < toC ? "gekühlt" : "gewärmt"}, ` +
    "mit der Temperatur danach planen.",
  "plan-cut-short": ({ limit, actual }) =>
    `Die Entwicklung würde ${dauer(actual)} dauern, mehr als ein Plan fasst. ` +
    `Geplant sind ${dauer(limit)}. Bad wärmen oder stärker ansetzen.`,
  "development-rounded": ({ limit, actual }) =>
    `Das Runden macht aus ${dauer(limit)} Entwicklung ${dauer(actual)}. Feiner runden.`,
  "drain-too-long": ({ limit, actual }) =>
    `Das Ablaufen dauert ${dauer(actual)}, die Entwicklung ${dauer(limit)}. Bad kühlen oder verdünnen.`,
  "late-pour": ({ limit, actual }) =>
    `Das Ablaufen endet ${dauer(limit - actual)} nach der Entwicklungszeit.`,
  "drum-not-turned": () =>
    "Wenig Bad in einer liegenden Trommel benetzt nur, was unten ist. " +
    "Ohne Pause drehen, und die Zeit dafür nehmen.",
  "drum-turned": ({ data }, unit) =>
    "Eine Trommel wird ohne Pause gedreht, und die Zeit gilt dafür. " +
    `Im Rezept steht: ${seite("agitation", data.agitation, unit)}.`,
  "temperature-step": ({ limit, actual, data }, unit) =>
    `Der Temperatursprung um ${gradWeit(actual, unit)} vor „${wort(steps, data.bath)}“ ` +
    "kann Runzelkorn geben. " +
    (data.bath === "wash" ? "Vor dem Wässern" : "Zwischen Bädern") +
    ` auf höchstens ${gradWeit(limit, unit)} Unterschied angleichen.`,
  "no-fix": () => "Kein Fixierbad vorgesehen. Das Bild hält am Licht nicht.",
  "no-stop": () =>
    "Vor dem Fixierbad ist weder Stoppbad noch Spülen vorgesehen. Entwickler darin gibt Schleier und " +
    "Flecken und schwächt es. Dazwischen spülen oder stoppen.",
  "no-wash": () => "Kein Wässern vorgesehen. Fixierer in der Gelatine verfärbt und bleicht das Bild.",
  "short-fix": ({ limit, data }) =>
    data.times === undefined
      ? `Kürzer fixiert als ${dauer(limit)}, was dieses Material mindestens braucht.`
      : `Kürzer fixiert als ${zahl(data.times)} Klärzeiten (${dauer(limit)}).`,
  "long-fix": ({ limit }) =>
    `Über ${dauer(limit)} bleicht Schnellfixierer feine Einzelheiten. Ein frisches oder wärmeres Bad nehmen.`,
  "fixer-spent": ({ limit, actual, data }) =>
    data.assumed === true
      ? `Klärt in ${dauer(actual)}. Ein frisches Fixierbad braucht vermutlich ${dauer(limit / 2)}. ` +
        "Dieses ist vielleicht verbraucht: mit einem frischen vergleichen."
      : `Klärt in ${dauer(actual)}, frisch in ${dauer(limit / 2)}: das Fixierbad ist verbraucht.`,
  "fixer-past-capacity": () => "Das Fixierbad ist über seine Kapazität hinaus. Neu ansetzen.",
  "fixer-capacity-reached": () =>
    "Mit diesem Material kommt das Fixierbad über seine Kapazität. Frisches Bad nehmen, oder mehr.",
  "acid-stop-blisters": () =>
    "Säure nach Soda bildet Gas in weicher Gelatine und wirft Blasen. Mit reinem Wasser stoppen.",
  "acid-into-hypo": () =>
    "Säure in reinem Fixiernatron gibt Schwefeldioxid ab und fällt Schwefel aus. Mit reinem Wasser stoppen.",
  "stop-gas": () =>
    "Säure nach Soda gibt Gas ab, das auf ein geschlossenes Gefäß drückt. Die Kappe zum Eingießen einmal " +
    "abnehmen. Der lichtdichte Deckel bleibt zu.",
  "short-wash": ({ limit }) =>
    `Kürzer gewässert als ${dauer(limit)}. Fixierer in der Gelatine verfärbt und bleicht das Bild.`,
  "wash-unproven": () =>
    "Wässern mit gezähltem Kippen ist für Film nach Schnellfixierer beschrieben. " +
    "Fließendes Wasser nehmen oder das Wasser wechseln.",
  "wash-frills": ({ limit }) =>
    `Weiche Gelatine kann sich nach ${dauer(limit)} im Wasser kräuseln oder ablösen. ` +
    "Mit einer Wässerungshilfe kürzer wässern, oder vorher in Alaun härten.",
  "clearing-assumed": ({ actual }) =>
    `Eine Klärzeit von ${dauer(actual)} ist angenommen. An einem Reststück messen.`,
  "fixing-split": ({ data }) =>
    `Manche Quellen nennen zwei Klärzeiten, manche drei. Vorgesehen sind ${zahl(data.times)}.`,
  "cold-wash": ({ actual }) =>
    `Kaltes Wasser wässert langsam. Vorgesehen ist das ${stellen(actual)}-Fache der üblichen Zeit.`,
  "bench-gloves": () => "Handschuhe und Brille tragen. Bäder von Essen fernhalten.",
  "bench-air": () => "Lüften. Stoppbad und Fixierbad geben Dämpfe ab.",
  "bench-acid": () =>
    "Ein saures Stoppbad hat 1 bis 2 % Essigsäure oder Zitronensäure. Säure ins Wasser gießen. " +
    "Eisessig und 25-prozentige Essigessenz nie unverdünnt nehmen.",
  "silver-disposal": () =>
    "Gebrauchtes Fixierbad enthält Silber. Getrennt sammeln und nach örtlicher Vorschrift abgeben.",
  "safety-data-sheets": () => "Örtliche Vorschriften und Sicherheitsdatenblätter gehen vor diesem Plan.",

  // Messen
  "maybe-celsius": ({ actual, data }) =>
    `${zahl(actual, 4)} °C: wurde ein Wert in °C noch einmal umgerechnet? Dann waren es ` +
    `${stellen(data.celsius)} °C.`,
  "reading-missing": ({ data: { text } }) =>
    typeof text === "string"
      ? `Der Messwert „${text}“ ist ein Text, keine Zahl.`
      : "Vom Thermometer kam kein Messwert.",
  "reading-ahead": ({ limit, actual }) =>
    `Der Messwert gilt für ${dauer(actual)} nach dem Einguss, aber die Uhr steht bei ${dauer(limit)}.`,
  "reading-out-of-range": ({ actual }, unit) =>
    `${grad(actual, unit)} kann kein Bad sein. Thermometer prüfen.`,
  "reading-jump": ({ actual, data: { readC, atS, mixedC } }, unit) =>
    `${grad(readC, unit)}, gemessen ${dauer(atS)} nach dem Einguss, liegt ${gradWeit(actual, unit)} von ` +
    (mixedC === undefined ? "den anderen" : `den ${grad(mixedC, unit)}, auf die das Bad angesetzt ist`) +
    `, weiter als dieses Bad sich ändert. ${mixedC === undefined ? "Prüfen." : "Noch einmal messen."}`,
  "surroundings-doubted": () =>
    "Die Messwerte stimmen überein, aber nicht mit Gefäß und Luft, wie sie angegeben sind. " +
    "Die Messwerte gelten. Die Angaben zu Gefäß und Luft prüfen.",
  "thermometer-frozen": ({ actual }, unit) =>
    `Die Anzeige steht, aber das Bad muss sich um etwa ${gradWeit(actual, unit)} geändert haben.`,
  "log-order": () => "Die Messwerte wurden nach der Zeit geordnet, je Zeitpunkt einer.",
  "bath-changed": ({ actual }, unit) => `Das Bad wurde um ${gradWeit(actual, unit)} geändert.`,
  "forecast-only": ({ data }) =>
    `Kein Messwert später als ${dauer(data.sinceS)} nach dem Einguss ist glaubhaft. ` +
    "Die Zeit folgt allein der Vorhersage.",

  // Lernen
  "mixed-notes": ({ actual, data: { heading, values, unnamed } }) => {
    const zeilen = (count: number): string => `${count} ${count === 1 ? "Zeile" : "Zeilen"}`;
    const genannt = values.map(({ value, runs }, i) => `${value} (${i === 0 ? zeilen(runs) : runs})`);
    const mehr = actual - values.length;
    return (
      `${heading} hat ${actual} ${actual === 1 ? "Wert" : "Werte"}: ${genannt.join(", ")}` +
      (mehr > 0 ? ` und ${mehr} weitere` : "") +
      (unnamed > 0 ? `; ${zeilen(unnamed)} ohne` : "") +
      ". Alle werden zusammen gelesen."
    );
  },
  "doubted-run": ({ data: { run, named: hasId, timeS, temperatureC, date, reason } }, unit) => {
    const when = date === undefined ? "" : `, ${date.slice(0, 10)},`;
    const what = `${isFigure(timeS) ? formatTime(timeS) : "?"} bei ${grad(temperatureC, unit)}`;
    const which = hasId
      ? `Entwicklung ${String(run)} (${what})${when}`
      : `Die Entwicklung mit ${what}${when}`;
    return `${which} ${wort(reasons, reason)} und zählt weniger. Die Notizen prüfen.`;
  },
  "not-fitted": ({ actual, data: { runs, reasons: why } }) =>
    `Aus ${actual} von ${runs} ${runs === 1 ? "Entwicklung" : "Entwicklungen"} ist nichts zu lernen: ` +
    why.map((one) => `${wort(notFitted, one.reason)} (${one.runs})`).join(", ") +
    (why.some(({ reason }) => reason === "past-covered")
      ? ". Mit einer Halbwertszeit des Bades beginnen, als laws.age."
      : "."),
  "held-at-limit": ({ data }) =>
    `${satzanfang(wort(learned, data.cause))}: nach den Entwicklungen jenseits der Grenze. ` +
    "Es gilt die Grenze. Die Notizen prüfen.",
  "far-from-known": ({ actual, data }) =>
    `${satzanfang(wort(learned, data.cause))}: nach den Entwicklungen ${stellen(Math.abs(actual))} ` +
    `Standardabweichungen vom Bekannten. Die Notizen prüfen.`,
  "trend": ({ data }) =>
    `Die Zeiten haben sich verschoben. Sie sind ${stellen(data.ratio, 2)}-mal so lang wie am ältesten Tag. ` +
    `Bad und Thermometer prüfen.`,
  "undated-runs": ({ data: { dated } }) =>
    dated
      ? "Einige Entwicklungen haben kein Datum. Sie zählen, als lägen sie in der Mitte der datierten."
      : "Viele Entwicklungen haben kein Datum: verschobene Zeiten fielen nicht auf. Den Tag notieren.",
  "scatter": ({ actual, data: { runs, few } }) =>
    few
      ? `${runs === 1 ? "Die Entwicklung und die bekannte Zeit" : "Die Entwicklungen und das Bekannte"} ` +
        `widersprechen sich mehr, als beide erwarten lassen. ` +
        "Zuerst einen Probestreifen machen und die Notizen prüfen."
      : `Die Entwicklungen streuen ${stellen(actual)}-mal so stark, wie ihre Ergebnisse sagen. ` +
        `Nicht alles steht in den Notizen.`,
  "not-separated": ({ data }) =>
    `Die Entwicklungen trennen nicht: ${ursachen(data.causes, learned)}. Sie änderten sich zusammen. ` +
    `Beim nächsten Versuch nur eines ändern.`,
  "only-good": () =>
    "Fast alle Entwicklungen waren zur vorhergesagten Zeit gut. Wie weit daneben noch gut ist, sagen sie " +
    "nicht, und die Spanne kann zu eng sein. Einmal 30 % länger oder kürzer entwickeln.",
  "equal-runs": ({ actual }) =>
    actual === 1
      ? "Eine Entwicklung ist die Kopie einer anderen, in jedem Feld gleich. Beide zählen. " +
        "Jeder eine id geben oder eine streichen."
      : `${actual} Entwicklungen sind Kopien anderer, in jedem Feld gleich. Alle zählen. ` +
        "Jeder Entwicklung eine id geben oder die Kopien streichen.",
};
