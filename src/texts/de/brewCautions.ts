/*
 * Cautions about a brew, in German.
 */
import { isMuchGas } from "../../brew/gas.js";
import type { BrewCautionCode } from "../../brew/text.js";
import type { CautionSentences } from "../../core/cautionTexts.js";
import { stellen, wort, zahl } from "./figures.js";
import { hazards, ingredients } from "./words.js";

type Codes = Exclude<BrewCautionCode, "bath-past-life">;

const percent = (share: number): string => `${stellen(100 * share, 0)} %`;

/** A name that begins a sentence: what stands behind a comma is closed by one. */
const subject = (name: string): string => (name.includes(",") ? `${name},` : name);

const bis = (ends: unknown): string =>
  Array.isArray(ends) ? (ends as readonly unknown[]).map((end) => zahl(end)).join(" bis ") : "?";

export const brewSentences: Pick<CautionSentences, Codes> = {
  // Ansatz aus der Küche
  "no-agent": () => "Nichts darin entwickelt. Kaffee oder Vitamin C dazugeben.",
  "no-alkali": () => "Ohne Alkali entwickelt nichts.",
  "alkali-too-weak": ({ limit }) =>
    `Nicht alkalisch genug, unter pH ${stellen(limit)}. Natron allein ist zu schwach. ` +
    `Waschsoda nehmen, oder mehr davon.`,
  "alkali-low": ({ actual }) => `Kaum alkalisch, pH ${stellen(actual)}: langsam und ungleichmäßig.`,
  "ph-high": ({ severity, data }) =>
    severity === "stop"
      ? "Zu alkalisch für eine weiche Schicht: sie quillt und löst sich ab. Weniger Alkali nehmen."
      : data.soft
        ? "Eine weiche Schicht kann darin quellen und sich am Rand lösen. Kühl halten, vorsichtig anfassen."
        : "Gelatine quillt darin. Kühl halten, vorsichtig anfassen.",
  "ph-unsure": ({ data: { soft, low, high } }) =>
    `Der pH kann zwischen ${stellen(low)} und ${stellen(high)} liegen. ` +
    `Der wahrscheinliche ist unbedenklich. ` +
    `Das obere Ende ${soft ? "löst eine weiche Schicht ab" : "verätzt Augen und Haut"}. ` +
    `Mit Waschsoda oder Natron abpuffern, und das Alkali wiegen.`,
  "hydroxide-high": ({ limit }) =>
    `Mehr als ${zahl(limit, 2)} mol/l freies Hydroxid: es verätzt und löst die Schicht auf. ` +
    `Weniger Ätznatron nehmen.`,
  "caustic-bath": () =>
    "Schon das Bad verätzt Augen und Haut. Schutzbrille und Handschuhe tragen. Spritzer sofort abspülen.",
  "sulphur-dioxide": ({ limit }) =>
    `Sulfit gibt unter pH ${zahl(limit, 2)} Schwefeldioxid ab, das der Lunge schadet. ` +
    `Mehr Alkali nehmen oder kein Sulfit.`,
  "vitamin-c-without-coffee": () => "Vitamin C ohne Kaffee ist langsam und unsicher.",
  "coffee-without-vitamin-c": () => "Ohne Vitamin C ist es langsam und färbt.",
  "acid-foams": ({ data }) =>
    `Säure und Soda geben bis zu ${zahl(data.gasL, 2)} l Gas ab. ` +
    (isMuchGas(data.gasLPerL)
      ? `Ein Gefäß von doppelter Größe reicht nicht. Die Säure zuletzt in kleinen Portionen zugeben ` +
        `und nach jeder warten, bis es ruhig ist. Oder das nicht ansetzen. `
      : `Die Säure zuletzt und langsam zugeben, in einem offenen Gefäß von doppelter Größe. `) +
    `Nie verschließen, bevor es ruhig ist.`,
  "mix-apart": ({ data: { coffee, vitaminC } }) =>
    "Jedes für sich lösen." +
    (coffee ? " Kaffee ins Alkali gießen." : "") +
    (vitaminC ? " Vitamin C kommt zuletzt." : ""),
  "restrainer-wanted": ({ data: { iso, bromideGPerL, saltGPerL } }) =>
    `Filme ab ISO ${zahl(iso, 4)} verschleiern ohne ${zahl(bromideGPerL, 2)} g Kaliumbromid oder ` +
    `${bis(saltGPerL)} g Kochsalz je Liter.`,
  "restrainer-strong": ({ severity, limit, actual }) =>
    severity === "stop"
      ? `Verzögerer entsprechend ${zahl(actual, 2)} g/l Kaliumbromid: darin entwickelt kaum etwas. ` +
        `Rezepte enthalten 0,5 bis 5 g/l.`
      : `Mehr als ${zahl(limit, 2)} g/l Verzögerer: die Zeit ist geraten. Zuerst einen Probestreifen machen.`,
  "undissolved": ({ limit, actual, data }) =>
    `Bei dieser Temperatur löst sich nicht alles (${wort(ingredients, data.ingredient)}): ` +
    `möglich sind ${zahl(limit)} g/l, hier sind es ${zahl(actual)}.`,
  "too-concentrated": ({ severity, limit }) =>
    severity === "stop"
      ? `Zu viel Ätznatron, um es sicher zu lösen. Es braucht ${zahl(limit)} ml kaltes Wasser für sich. ` +
        `Mehr Bad ansetzen.`
      : `Ätznatron braucht ${zahl(limit)} ml kaltes Wasser für sich. ` +
        `Im Rest löst sich das Übrige vielleicht nicht. Mehr Bad ansetzen.`,
  "vitamin-c-left-out": () =>
    "Das Vitamin C bleibt im Regal: seine Säure braucht mehr Alkali, als da ist. Mit Waschsoda ginge es.",
  "caustic-in-coffee": ({ limit, actual }) =>
    `Der Filterkaffee lässt nur ${zahl(actual)} ml Wasser übrig, und Ätznatron braucht mit dem anderen ` +
    `Alkali ${zahl(limit)} ml. Ätznatron kommt nie in Kaffee. ` +
    `Weniger Filterkaffee nehmen, oder löslichen Kaffee und mehr Wasser.`,
  "decaffeinated": () => "Entkoffeinierter Kaffee ist oft schwächer. Ausprobieren.",
  "brewed-coffee": () => "Aufgebrühter Kaffee ist verschieden stark. Ausprobieren.",
  "tablet-filler": () => "Tabletten zerdrücken und abseihen, was sich nicht löst.",
  "tablet-label": () =>
    "Die Tabletten mit Vitamin C bleiben außen vor. " +
    "Angeben, wie viel mg eine Tablette enthält (labelMg), dann zählen sie.",
  "spoon-range": ({ data, actual }) =>
    `Besser wiegen: ${wort(ingredients, data.ingredient)}. ` +
    `Mit Löffeln streut die Zeit um ± ${percent(actual - 1)}.`,
  "spoon-too-large": ({ limit, actual, data }) =>
    `So wenig misst kein Löffel: ${wort(ingredients, data.ingredient)}. Nötig sind ${zahl(actual)} g. ` +
    `Auf ${zahl(data.spoons)} Löffel gehen mindestens ${zahl(limit)} g. ` +
    (data.solution === undefined
      ? `Wiegen oder mehr Bad ansetzen.`
      : `Eine Lösung von ${zahl(data.solution.percent)} % machen: ${zahl(data.solution.weighedG)} g in ` +
        `${zahl(data.solution.waterMl)} ml Wasser. ` +
        `In ${zahl(data.solution.ml)} ml davon ist, was nötig ist.`),
  "never-by-spoon": ({ data }) =>
    `Nie mit dem Löffel messen: ${wort(ingredients, data.ingredient)}. ` +
    `Einmal abwiegen, in eine Lösung von 10 %.`,
  "alkali-changed": ({ data }) =>
    `Der pH geht von ${stellen(data.fromPh)} auf ${stellen(data.toPh)}. ` +
    `Wie viel das an der Zeit ändert, ist kaum bekannt. Zuerst einen Probestreifen machen.`,
  "strength-far": ({ actual }) =>
    `Die Ansätze unterscheiden sich ${zahl(actual, 2)}-fach, zu viel für eine Regel. ` +
    `Zuerst einen Probestreifen machen.`,
  "scrap-without-known": () =>
    "Ohne ein Bad zum Vergleich sagt ein Reststück nur schnell oder langsam. " +
    "Zuerst einen Probestreifen machen.",
  "hazard": ({ data }) => `${subject(wort(ingredients, data.ingredient))} ${wort(hazards, data.hazard)}`,
  "baking-care": () =>
    "Natron im Ofen: Es wird heiß, ätzender Staub, Dampf und Gas entstehen. Ein offenes Blech nehmen, " +
    "das nie mehr mit Essen in Berührung kommt, keines aus Aluminium. " +
    "Brille und Ofenhandschuhe tragen, lüften, abkühlen lassen.",
  "baking-depth": ({ data }) =>
    `Gilt für ${zahl(data.depthMm, 1)} mm hohes Pulver, das schon heiß ist. ` +
    `Eine Schicht von 1 bis 2 cm braucht etwa eine Stunde, bis sie durch und durch warm ist.`,
  "soda-from-baking": () => "Natron wird im Ofen zu Waschsoda: 1 bis 2 cm hoch, eine Stunde bei etwa 200 °C.",
  "more-than-complete": ({ limit }) =>
    `Leichter als reines Karbonat (${zahl(limit)} g): es war feucht, oder etwas ging verloren.`,
  "gained-weight": ({ limit }) => `Schwerer als vorher (${zahl(limit)} g). Die Gewichte prüfen.`,
  "not-complete": ({ limit }) =>
    `Noch ein Gemisch: reines Karbonat wiegt ${zahl(limit)} g. Weiterbacken, oder siehe bakedSoda.`,
  "gloves-and-glasses": () =>
    "Handschuhe und Brille tragen. Keinen Staub machen: Alkali schadet Augen, Haut und Lunge.",
  "kitchenware": () =>
    "Was hierfür benutzt wurde, kommt nie mehr mit Essen in Berührung. " +
    "Kein Aluminium: Alkali zerfrisst es und setzt Wasserstoff frei.",
  "rest-before-use": ({ data: { minS, maxS } }) =>
    `${zahl(minS / 60)} bis ${zahl(maxS / 60)} min stehen lassen, bis die Blasen weg sind.`,
  "disposal": () => "Örtliche Vorschriften und Sicherheitsdatenblätter gehen vor, auch beim Entsorgen.",
};
