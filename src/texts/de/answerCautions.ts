/*
 * Cautions about a time, in German: what it rests on, the bath, contrast, light.
 */
import type { CautionFacts, CautionSentences } from "../../core/cautionTexts.js";
import { isFigure } from "../../core/digits.js";
import { alter, blenden, dativ, dauer, grad, gradBis, gradWeit, stellen, wort, zahl } from "./figures.js";
import type { brewSentences } from "./brewCautions.js";
import type { runSentences } from "./runCautions.js";
import { causes, ursachen } from "./words.js";

type Codes = Exclude<keyof CautionSentences, keyof typeof brewSentences | keyof typeof runSentences>;

const percent = (share: number): string => `${stellen(100 * share, 0)} %`;

/** How to try a safelight. */
const coinTest =
  "Vorher prüfen: eine Münze auf ein Reststück legen, so lange beleuchten, wie zugesehen wird, und " +
  "entwickeln. Zeichnet sie sich ab, ist das Licht zu hell.";

const printed = ({ limit, actual }: CautionFacts<"law-unusual">, unit: string, times = 1): string =>
  `Der ${actual < limit ? "kleinste" : "größte"} veröffentlichte Wert ist ${zahl(limit * times)}${unit}.`;

const WRONG_WAY = {
  temperature: "kältere",
  dilution: "schwächere",
  agitation: "weniger bewegte",
  age: "ältere",
} as const;

const mal = (ratio: number | undefined): string =>
  ratio === undefined ? "" : `, das ${zahl(ratio, 3)}-Fache`;

const unusual: {
  readonly [Reason in CautionFacts<"law-unusual">["data"]["reason"]]: (
    facts: CautionFacts<"law-unusual">,
  ) => string;
} = {
  "energy": ({ limit, actual, data: { over10C } }) =>
    `Die Aktivierungsenergie des Temperaturgesetzes ist ${zahl(actual)} kJ/mol` +
    `${mal(over10C?.actual)} auf 10 °C. ` +
    `Der ${actual < limit ? "kleinste" : "größte"} veröffentlichte Wert ist ` +
    `${zahl(limit)} kJ/mol${mal(over10C?.limit)}.`,
  "maybe-kilocalories": ({ actual }) =>
    `Die Aktivierungsenergie ist sehr klein, ${zahl(actual)} kJ/mol. Sind es kcal/mol?`,
  "maybe-fahrenheit": ({ limit, actual }) =>
    `Das Verhältnis gilt über ${zahl(actual)} Grad. Sind das °F? Es sind ${zahl(limit)} °C.`,
  "exponent": (facts) =>
    `Der Exponent des Verdünnungsgesetzes ist ${zahl(facts.actual)}. ${printed(facts, "")}`,
  "increase": (facts) =>
    `Nach dem Gesetz der Ausnutzung verlängert ein Film je Liter die Zeit um ` +
    `${zahl(100 * facts.actual)} %. ` +
    printed(facts, " %", 100),
  "maybe-percent": ({ actual }) => `Die Zunahme durch Ausnutzung ist ${zahl(actual)}. Sind das Prozent?`,
};

export const answerSentences: Pick<CautionSentences, Codes> = {
  // Zeit und Spanne
  "short-time": ({ limit }) =>
    `Unter ${dauer(limit)} wird die Entwicklung ungleichmäßig. Bad kühlen oder verdünnen.`,
  "long-time": ({ limit }) => `Zeiten über ${dauer(limit)} sind zu lang. Bad wärmen oder stärker ansetzen.`,
  "wide-interval": () => "Die Spanne ist groß. Zuerst einen Probestreifen machen.",
  "maybe-minutes": ({ actual, data }) =>
    `Die ${data.of === "clearing" ? "Klärzeit" : "Zeit"} ist ${zahl(actual)} s. Sind es Minuten?`,
  "other-baseline": () =>
    "Die bekannte Zeit ist nicht die gelernte. Ihr Zusammenhang mit den Gesetzen bleibt außer Acht.",
  "stored-differs": ({ data }) =>
    `Gespeicherte Werte passen nicht zu Vorwissen und Entwicklungen: ${data.fields.join(", ")}. ` +
    `Sie wurden neu berechnet.`,
  "default-law": ({ data }) =>
    `Keine eigenen Daten für ${ursachen(data.causes)}. Es gilt eine allgemeine Regel mit großer Streuung.`,
  "law-unusual": (facts) =>
    Object.hasOwn(unusual, facts.data.reason)
      ? unusual[facts.data.reason](facts)
      : "Das Gesetz ist ungewöhnlich.",
  "unknown-field": ({ data: { field, nearest } }) =>
    `Das Feld „${field}“ wird nicht gelesen.${nearest === undefined ? "" : ` Ist ${nearest} gemeint?`}`,
  "outside-table": ({ data }) =>
    `Die ${wort(causes, data.cause)} liegt außerhalb der Tabelle. ` +
    "Weitergerechnet wird mit der Steigung der letzten Zeilen.",
  "wrong-way": ({ data: { cause } }) =>
    cause === "push"
      ? "Ein Push braucht hier weniger Zeit als kein Push, oder ein Pull mehr. " +
        "Entwicklungen prüfen: fehlt ein Minus, sind dünn und dicht vertauscht?"
      : `Das ${WRONG_WAY[cause]} Bad wirkt hier schneller. ` +
        "Das tut kein Entwickler. Zeilen und Entwicklungen prüfen: sind dünn und dicht vertauscht?",
  "far-extrapolation": ({ severity, limit, actual, data: { cause, bath } }, unit) =>
    cause === "temperature"
      ? `Mehr als ${gradWeit(limit, unit)} von der Temperatur der bekannten Zeit entfernt.`
      : severity === "stop"
        ? `Bei 1+${zahl(actual)} ist weniger Konzentrat im Bad, als irgendwo gedruckt ist: 1+${zahl(limit)}.`
        : `Das Bad ist ${zahl(actual, 2)}-mal ` +
          (bath === "weaker"
            ? "so stark verdünnt"
            : bath === "stronger"
              ? "so stark"
              : "so stark oder schwach") +
          " wie das der bekannten Zeit. " +
          `Gedruckte Tabellen reichen ${zahl(limit)}-mal so weit.`,
  "stand": ({ data }) =>
    (data.side === "baseline" ? "Die bekannte Zeit gilt für Standentwicklung. Diese " : "Standentwicklung ") +
    "hängt davon ab, wie sich der Entwickler örtlich erschöpft. Die Zeit ist nur ein Anhalt.",
  "long-interval": ({ limit }) => `Das Gesetz der Bewegung gilt für Abstände bis ${dauer(limit)}.`,
  "near-limit": ({ limit, actual, data: { side } }) =>
    (side === "bottom"
      ? `Ein Kontrast von ${zahl(actual)} liegt nahe bei 0. `
      : `Ein Kontrast von ${zahl(actual)} liegt nahe an seiner Grenze von ${zahl(limit)}. `) +
    `Dort ist die Spanne unsicher. Zuerst einen Probestreifen machen.`,

  // Temperatur
  "maybe-fahrenheit": ({ actual, data }) =>
    `${zahl(actual, 4)} °C: sind das °F? ${zahl(actual, 4)} °F sind ${stellen(data.celsius)} °C.`,
  "temperature-limit": ({ data: { low, high } }, unit) =>
    `Unter ${grad(low, unit)} und über ${grad(high, unit)} ist keine Entwicklung beschrieben. ` +
    `Gelatine und Entwickler versagen dort.`,
  "temperature-unusual": ({ limit, actual, data: { low, high, unnamed } }, unit) =>
    actual < limit
      ? `Unter den üblichen ${gradBis(low, high, unit)} werden die Zeiten lang und unsicher.` +
        (unnamed === undefined ? "" : " Enthält der Entwickler Hydrochinon, hilft mehr Zeit nicht.")
      : `Über den üblichen ${gradBis(low, high, unit)} wird die Gelatine weich und die Zeit kurz.`,
  "hydroquinone-cold": ({ severity, limit }, unit) =>
    severity === "stop"
      ? `Hydrochinon arbeitet unter etwa ${grad(limit, unit)} fast nicht mehr. Mehr Zeit hilft nicht.`
      : `Hydrochinon wird unter etwa ${grad(limit, unit)} schwach. Der Kontrast wird geringer.`,
  "soft-emulsion-warm": ({ severity, limit }, unit) =>
    severity === "stop"
      ? `Weiche, ungehärtete Gelatine reißt über ${grad(limit, unit)}. Bad kühlen.`
      : `Weiche, ungehärtete Gelatine quillt über ${grad(limit, unit)} und kann reißen. Bad kühlen.`,
  "log-held": ({ limit, actual }) =>
    `Die Messreihe endet bei ${dauer(limit)}, die Entwicklung bei ${dauer(actual)}. ` +
    `Der letzte Messwert gilt weiter.`,
  "log-gap": ({ limit, actual }) =>
    `Eine Lücke von ${dauer(actual)} ist länger als der Rest der Messreihe, ${dauer(limit)}. ` +
    `Was dazwischen war, ist geraten.`,
  "target-passed": ({ limit, actual }) => `Die Zeit ist um ${dauer(actual - limit)} überschritten.`,

  // Bad und Stammlösung
  "bath-past-life": ({ severity, limit, actual, data }) => {
    const life = alter(limit);
    const age = alter(actual);
    if (data.at === "pour-in")
      return severity === "stop"
        ? `Das Bad ist älter als seine Lebensdauer von ${dativ(life)}. ` +
            `Es versagt sofort, keine Zeit hilft. Neu ansetzen.`
        : `Das Bad hält etwa ${life} und ist ${age} alt. Es kann vor dem Ende versagen. ` +
            `Erst kurz vorher ansetzen.`;
    return severity === "stop"
      ? `Das Bad hält ${life} und ist beim Ausgießen ${age} alt. Es versagt vor dem Ende. Neu ansetzen.`
      : `Das Bad hält ${life}. Am langen Ende der Spanne ist es ${age} alt. Erst kurz vorher ansetzen.`;
  },
  "bath-may-fail": ({ limit, actual, data }) =>
    data.at === "pour-in"
      ? `Das Bad ist ${alter(actual)} alt. Ab ${dativ(alter(limit))} kann es versagen. Neu ansetzen.`
      : `Das Bad kann ab ${dativ(alter(limit))} versagen. Am langen Ende der Spanne ist es ` +
        `${alter(actual)} alt. Erst kurz vorher ansetzen.`,
  "bath-past-capacity": ({ limit, actual }) =>
    `Das Bad hat je Liter ${zahl(actual, 4)} cm² entwickelt. Es schafft ${zahl(limit, 4)}. Neu ansetzen.`,
  "bath-well-used": ({ limit, actual }) =>
    `Das Bad hat je Liter ${zahl(actual, 4)} cm² entwickelt. Seine Ergiebigkeit ist unbekannt. ` +
    `Mit Film sind in der Praxis ${zahl(limit, 4)} üblich. Neu ansetzen.`,
  "bath-past-keeping": ({ limit }) =>
    `Das Bad ist zu alt. So aufbewahrt hält es ${alter(limit)}. Neu ansetzen.`,
  "age-unknown": ({ severity, limit, actual }) =>
    isFigure(actual)
      ? `Das Bad ist ${alter(actual)} alt. Lebensdauer und Haltbarkeit sind unbekannt. Was es nach ` +
        `mehr als ${alter(limit)} verliert, ist geschätzt. ` +
        (severity === "stop"
          ? `Ob es noch arbeitet, weiß niemand. Neu ansetzen.`
          : `Neu ansetzen oder prüfen.`)
      : `Über das Alter dieses Bades ist nichts bekannt. Die Zeit rechnet nicht damit. ` +
        `Das Bad erst an einem Reststück prüfen oder neu ansetzen.`,
  "bath-too-slow": ({ limit, actual }) =>
    `Das Bad braucht ${zahl(actual, 2)}-mal so lange wie ein frisches, mehr als ${zahl(limit)}-mal. ` +
    `Neu ansetzen.`,
  "bath-slow": ({ actual }) => `Das Bad braucht ${percent(actual - 1)} länger als ein frisches.`,
  "bath-past-agent": ({ limit, actual }) =>
    `Damit käme das Bad auf ${zahl(actual, 4)} cm² je Liter. Bei ${zahl(limit, 4)} ist der ganze ` +
    `Entwickler verbraucht. Mehr Bad nehmen.`,
  "bath-capacity-reached": ({ limit, actual }) =>
    `Damit kommt das Bad auf ${zahl(actual, 4)} cm² je Liter. Es schafft ${zahl(limit, 4)}. Mehr Bad nehmen.`,
  "too-little-stock": ({ limit, actual }) =>
    `Im Bad sind ${stellen(actual)} ml Stammlösung. Diese Fläche braucht mindestens ${stellen(limit)} ml. ` +
    `Mehr Bad nehmen oder weniger verdünnen.`,
  "thin-layer": ({ limit, actual, data }) =>
    `Das Bad bedeckt die Schale mit ${zahl(actual)} ml je cm². Nötig sind mindestens ${zahl(limit)}, ` +
    `zusammen ${zahl(data.leastMl)} ml.`,

  // Kontrast und Empfindlichkeit
  "push-far": ({ limit }) =>
    `Über einen Push von ${blenden(limit)} hinaus gibt es kaum veröffentlichte Zeiten. ` +
    `Die Schatten bleiben leer.`,
  "push-shadows": ({ actual, data }) =>
    `Ein Push um ${blenden(actual)} hebt die Mitteltöne. Die Schatten gewinnen höchstens ` +
    `${blenden(data.shadowStops)}.`,
  "push-untaught": ({ limit, actual }) =>
    `Zu ${zahl(actual)} Blenden sagen die Entwicklungen nichts: sie enden bei ${zahl(limit)}. ` +
    "Von dort geht die Zeit weiter wie gedruckt.",
  "pull-far": ({ limit }) => `Bei mehr als ${blenden(-limit)} Pull bleibt das Negativ flau.`,
  "push-and-contrast": () =>
    "Ein Push ändert schon den Kontrast. Beides zusammen zählt dasselbe doppelt. Eines weglassen.",
  "not-iso-contrast": ({ limit, actual }) =>
    `Die Dichte steigt über 1,30 in log H um ${stellen(actual, 2)} statt ${stellen(limit, 2)}. ` +
    `Das ist eine Empfindlichkeit für diese Entwicklung, keine nach ISO.`,

  // Sehen
  "panchromatic-dark": () =>
    "Panchromatisch: in völliger Dunkelheit nach Zeit und Temperatur entwickeln. " +
    "Kein Dunkelkammerlicht zeigt das Bild, ohne es zu verschleiern.",
  "safelight-red": () => "Orthochromatisch: nur dunkelrotes Licht, schwach und nicht nah. " + coinTest,
  "safelight-amber": () =>
    "Blauempfindlich: gelbes oder rotes Dunkelkammerlicht nach Angabe des Herstellers. " + coinTest,
  "estimates-disagree": ({ data: { firstS, secondS } }) =>
    `Die beiden Schätzungen, ${dauer(firstS)} und ${dauer(secondS)}, widersprechen sich. ` +
    `Zuerst Temperatur, Verdünnung und Faktor prüfen.`,
  "strength-outside": ({ limit, actual }) =>
    `Keine Liste reicht bis ${zahl(actual)} g/l. Es gilt der Faktor der nächsten gedruckten Stärke, ` +
    `${zahl(limit)} g/l.`,
};
