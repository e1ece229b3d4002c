/*
 * Mutants by hand, of the kind that a mutation tool does not make: laws swapped, a side taken for the other, a
 * wrong unit, the sign of a covariance, a limit in another logarithm. Each replaces one text of one source
 * file, which has to stand there exactly once. `tests` are the folders whose tests should notice it.
 */

/** All mutants, by module from the bottom up. */
export const handMutants = [
  // Quantities.
  mutant(
    "°F minus 32 after the division",
    "quantities/fahrenheitToCelsius",
    'temperatureF") - 32) / 1.8;',
    'temperatureF") / 1.8) - 32;',
  ),
  mutant(
    "minutes of a clock counted as hours",
    "quantities/timeText",
    "Number(minutes ?? 0) * 60",
    "Number(minutes ?? 0) * 3600",
  ),
  mutant(
    "times rounded down in place of half up",
    "quantities/toStep",
    "(2n * units + stepUnits)",
    "(2n * units)",
  ),
  mutant(
    "a rounded interval by the low end twice",
    "quantities/roundEstimate",
    "(highS - lowS) / 20",
    "(timeS - lowS) / 20",
  ),
  // Temperature.
  mutant(
    "a coefficient with from and to swapped",
    "temperature/law",
    "(Math.log(law.ratio) / law.intervalC) * (fromC - toC)",
    "(Math.log(law.ratio) / law.intervalC) * (toC - fromC)",
  ),
  mutant(
    "a coefficient in the decimal logarithm",
    "temperature/law",
    "(Math.log(law.ratio) / law.intervalC)",
    "(Math.log10(law.ratio) / law.intervalC)",
  ),
  mutant("the gas constant in kcal", "temperature/law", "8.314462618e-3", "1.98720425864083e-3"),
  mutant("0 °C at 273 K", "temperature/law", "= 273.15", "= 273"),
  mutant(
    "the Arrhenius law with from and to swapped",
    "temperature/law",
    "(inverseStep(fromC, toC) / GAS_CONSTANT_KJ);\n    return law.walk",
    "(inverseStep(toC, fromC) / GAS_CONSTANT_KJ);\n    return law.walk",
  ),
  mutant(
    "the guard against °F at 55 °C",
    "temperature/temperatureCautions",
    "FAHRENHEIT_ABOVE_C: number = 45",
    "FAHRENHEIT_ABOVE_C: number = 55",
  ),
  mutant(
    "hydroquinone that weakens where it stops",
    "temperature/temperatureCautions",
    "const HYDROQUINONE_C = [16, 13] as const;",
    "const HYDROQUINONE_C = [13, 16] as const;",
  ),
  mutant(
    "°C shown for a reading in °F without its conversion",
    "temperature/temperatureCautions",
    "fahrenheitToCelsius(c).toFixed(1)",
    "c.toFixed(1)",
  ),
  mutant(
    "a table's factor turned upside down",
    "temperature/cause",
    "exact: timeAt(to) / timeAt(from)",
    "exact: timeAt(from) / timeAt(to)",
  ),
  mutant(
    "the spread of a coefficient in place of its logarithm",
    "temperature/cause",
    "const slope = (fromC - toC) / (intervalC * ratio);",
    "const slope = (fromC - toC) / intervalC;",
  ),
  mutant(
    "a coefficient of a law over the wrong side",
    "temperature/temperatureCoefficient",
    "temperatureEffect(ready, highC, lowC)",
    "temperatureEffect(ready, lowC, highC)",
  ),
  mutant(
    "a rate that falls with temperature",
    "temperature/rateFunction",
    "Math.exp(perC * (bathTemperature(AT, c) - referenceC))",
    "Math.exp(perC * (referenceC - bathTemperature(AT, c)))",
  ),
  mutant(
    "one printed developer with the figures of the next",
    "handbook/temperature",
    '"pyro-metol": read(1.4, 7, IVES)',
    '"pyro-metol": read(2, 7, IVES)',
  ),
  // Dilution.
  mutant(
    "a power of dilution with from and to swapped",
    "dilution/cause",
    "const slope = from - to;",
    "const slope = to - from;",
  ),
  mutant(
    "a power of dilution upside down where only the time is asked",
    "dilution/cause",
    "(to) => law.exponent * (from - to)",
    "(to) => law.exponent * (to - from)",
  ),
  mutant(
    "a column of water parts without its one part of stock",
    "dilution/cause",
    "-Math.log1p(inRange(at, water, 0, 1e5))",
    "-Math.log(inRange(at, water, 0, 1e5))",
  ),
  mutant(
    "the departure from a power by the step, not by its root",
    "dilution/cause",
    "DEPARTURE_LOG_SD * Math.sqrt(step)",
    "DEPARTURE_LOG_SD * step",
  ),
  mutant(
    "the scatter of rows over a decade, not over a halving",
    "dilution/cause",
    "Math.min(1, step / Math.LN2)",
    "Math.min(1, step / Math.LN10)",
  ),
  mutant(
    "the share of stock by the water alone",
    "dilution/mixVolumes",
    ".div(parts.plus(waterParts))",
    ".div(waterParts)",
  ),
  // Agitation, use, age.
  mutant(
    "stand that is quicker than motion",
    "agitation/cause",
    "-Math.log(STAND_RATE)",
    "Math.log(STAND_RATE)",
  ),
  mutant(
    "the stale share of an interval taken for the fresh one",
    "agitation/agitation",
    "1 + Math.expm1(-x) / x",
    "-Math.expm1(-x) / x",
  ),
  mutant(
    "linear and compound use swapped",
    "use/useFactor",
    '(growth === "linear" ? Math.log1p',
    '(growth === "compound" ? Math.log1p',
  ),
  mutant(
    "use counted without the first side",
    "use/useFactor",
    "(useSlope(ready, to) - useSlope(ready, from))",
    "useSlope(ready, to)",
  ),
  mutant(
    "a printed rule of use in a bath of another dilution, the wrong way",
    "use/cause",
    "usedCm2PerL / stockShare",
    "usedCm2PerL * stockShare",
  ),
  mutant(
    "a half-life in the decimal logarithm",
    "age/law",
    "const rate = Math.LN2 / law.halfLifeH;\n    const sd",
    "const rate = Math.LN10 / law.halfLifeH;\n    const sd",
  ),
  mutant(
    "the spread of a life by the whole age, not by the difference",
    "age/law",
    "(LIFE_LOG_SD * Math.abs(differenceH)) / law.lifeH",
    "(0.1 * toH) / law.lifeH",
  ),
  mutant(
    "an age past a day counted in days",
    "age/law",
    "unknownHours(fromH, toH, coveredAge(law),",
    "unknownHours(fromH, toH / 24, coveredAge(law),",
  ),
  mutant("an old bath as likely quicker as slower", "age/law", "log: ONE_SIDED_MEAN * past", "log: 0 * past"),
  mutant(
    "a development counted in minutes of age",
    "age/livesUntil",
    "const endH = ageH + timeS / 3600;",
    "const endH = ageH + timeS / 60;",
  ),
  mutant(
    "the age of a bath past its life taken whole",
    "age/cause",
    'return ageEffect(law, law.kind === "life" ? 0 : fromH, limit);',
    "return ageEffect(law, fromH, toH);",
  ),
  // Contrast, push, interaction.
  mutant(
    "the limit of contrast in the decimal logarithm",
    "contrast/cause",
    "Z90 * effect.beside > Math.abs(effect.log)",
    "Z90 * effect.beside > Math.abs(effect.log) / Math.LN10",
  ),
  mutant(
    "a correlation of the growth law with the wrong sign",
    "contrast/contrastSpread",
    "appearance ** 2 + 2 * shared",
    "appearance ** 2 - 2 * shared",
  ),
  mutant(
    "two sides of contrast added in place of subtracted",
    "contrast/contrastSpread",
    "byLimit(from, fromS) - byLimit(to, toS)",
    "byLimit(from, fromS) + byLimit(to, toS)",
  ),
  mutant(
    "development that begins at the pour-in",
    "contrast/growth",
    "return appearanceS - log / ratePerS",
    "return -log / ratePerS",
  ),
  mutant(
    "the average gradient over 1.5 of log H",
    "contrast/averageGradient",
    "const SPAN = 1.3;",
    "const SPAN = 1.5;",
  ),
  mutant(
    "a speed from the natural logarithm",
    "contrast/isoSpeed",
    "0.8 / 10 ** point.logH",
    "0.8 / Math.exp(point.logH)",
  ),
  mutant(
    "a pull that bends as a push does",
    "push/cause",
    "(stops > 0 ? growth * stops * stops : 0)",
    "growth * stops * stops",
  ),
  mutant(
    "the interaction by e-folds, not by halvings",
    "interaction/pair",
    "(fromLogC - toLogC) / Math.LN2",
    "fromLogC - toLogC",
  ),
  mutant(
    "the interaction with its dilutions swapped",
    "interaction/pair",
    "(fromLogC - toLogC)",
    "(toLogC - fromLogC)",
  ),
  // The answer.
  mutant("an interval of 95 % called 90 %", "core/estimate", "1.6448536269514722", "1.959963984540054"),
  mutant(
    "a limit that is past when it is met",
    "core/caution",
    "actual > limit * (1 + 1e-9)",
    "actual >= limit",
  ),
  mutant(
    "standard deviations added in place of squares",
    "compensate/loop",
    "variance += row.logSd * row.logSd;",
    "variance += row.logSd;",
  ),
  mutant(
    "a covariance with the wrong sign",
    "compensate/joint",
    "sum += 2 * amount * otherAmount",
    "sum -= 2 * amount * otherAmount",
  ),
  mutant(
    "a covariance counted once",
    "compensate/joint",
    "sum += 2 * amount * otherAmount",
    "sum += amount * otherAmount",
  ),
  mutant(
    "the basis of the row before",
    "compensate/rows",
    "factors[i + 1], term.law",
    "factors[i], term.law",
  ),
  mutant(
    "the sources of a known time that was given, and none for one that was not",
    "compensate/rows",
    "const said = own ? (sources",
    "const said = !own ? (sources",
  ),
  mutant(
    "a baseline that is any baseline",
    "compensate/joint",
    "Math.max(1, 0.01 * learned.timeS)",
    "Math.max(60, 0.1 * learned.timeS)",
  ),
  mutant(
    "a warmer bath that is less sure the same way",
    "compensate/driftEffect",
    "Math.sign(fromC - c) * temperatureSpread(law, fromC, c)",
    "temperatureSpread(law, fromC, c)",
  ),
  mutant(
    "two hours in minutes",
    "compensate/outcomeCautions",
    "const LONGEST_S = 7200;",
    "const LONGEST_S = 120;",
  ),
  // Drift and steering.
  mutant(
    "a bath that drifts away from the air",
    "drift/newtonDrift",
    "startC + (startC - ambientC) * Math.expm1",
    "startC - (startC - ambientC) * Math.expm1",
  ),
  mutant(
    "the bend of the rate with the wrong sign",
    "drift/equivalentTime",
    "(u * (beforeSlope - slope)) / 12",
    "(u * (slope - beforeSlope)) / 12",
  ),
  mutant(
    "a log read in steps",
    "drift/log",
    "from.temperatureC + (to.temperatureC - from.temperatureC) * share",
    "(share < 1 ? from : to).temperatureC",
  ),
  mutant(
    "the end of a bath's own use in place of its mean",
    "drift/ownUse",
    "whole: 1 + slower / 2",
    "whole: 1 + slower",
  ),
  mutant(
    "a bath fitted from its first reading, not from the pour-in",
    "drift/fitDrift",
    "step * Math.exp(rate * firstS)",
    "step",
  ),
  mutant(
    "a forecast whose level and air move apart",
    "steering/forecast",
    "2 * left * both,\n",
    "-2 * left * both,\n",
  ),
  mutant(
    "a reading in °F taken for kelvins",
    "steering/meaning",
    "fahrenheitToCelsius(given)",
    "given - 273.15",
  ),
  mutant(
    "the whole width of an appearance in place of its half",
    "steering/appearance",
    "Math.log(steady.highS / steady.lowS) / 2",
    "Math.log(steady.highS / steady.lowS)",
  ),
  mutant(
    "jumps measured from the reading after",
    "steering/judge",
    "actual: one.celsius - before.celsius",
    "actual: before.celsius - one.celsius",
  ),
  // Inspection, brew, bath.
  mutant(
    "the wider of two estimates trusted more",
    "inspection/combineEstimates",
    "sum > 0 ? varianceB / sum : 0.5",
    "sum > 0 ? varianceA / sum : 0.5",
  ),
  mutant(
    "a reaction by hand against the whole time",
    "inspection/appearanceEstimate",
    '0, 60, "timeS") / appearanceS',
    '0, 60, "timeS") / timeS',
  ),
  mutant(
    "two of baking soda for two of soda",
    "brew/bakeYield",
    "SODA_G_PER_MOL / (2 * BICARBONATE_G_PER_MOL)",
    "SODA_G_PER_MOL / BICARBONATE_G_PER_MOL",
  ),
  mutant(
    "an oven in °C where the law wants kelvins",
    "brew/bakeTime",
    "(temperatureC + ZERO_CELSIUS_K)",
    "(temperatureC + 32)",
  ),
  mutant(
    "a pH in the natural logarithm",
    "brew/equilibrium",
    "const activity = 10 ** -ph;",
    "const activity = Math.exp(-ph);",
  ),
  mutant(
    "a heaped spoon that is level at its low end",
    "brew/massOf",
    "low: spoonMl * bulk.low * heap.low",
    "low: spoonMl * bulk.low",
  ),
  mutant(
    "a stronger brew that takes longer",
    "brew/brewStrength",
    "restrainer - exponent * power",
    "restrainer + exponent * power",
  ),
  mutant(
    "a brew that is quicker without its coffee",
    "brew/agentPair",
    "Math.max(0, powerChange(rest, agents).log)",
    "0 * powerChange(rest, agents).log",
  ),
  mutant(
    "an agent that is missed from the other side alone",
    "brew/agentPair",
    " - gained(known, from, to, agent, solve)",
    "",
  ),
  mutant(
    "a life that acid carries past its cap",
    "brew/brewLife",
    "Math.min(capH, openH)",
    "Math.min(capH * slower, openH)",
  ),
  mutant(
    "the warning of a bath that may fail at the end of its life",
    "age/livesUntil",
    "isPast(latestH, lowH)",
    "isPast(latestH, lifeH)",
  ),
  mutant(
    "known and today's brew swapped",
    "brew/brewStrength",
    "const change = powerChange(agents.to, agents.from);",
    "const change = powerChange(agents.from, agents.to);",
  ),
  mutant(
    "water that evaporates with its load",
    "bath/walkLedger",
    'if (kind === "evaporated") continue;',
    'if (kind === "pouredOff") continue;',
  ),
  mutant("a replenisher's rule upside down", "bath/walkLedger", "amount / mlPerCm2", "amount * mlPerCm2"),
  mutant(
    "a printed capacity of the stock in any dilution",
    "bath/judgeBath",
    "use.capacityCm2PerL * share",
    "use.capacityCm2PerL",
  ),
  mutant("the least stock by the litre", "bath/leastStock", "* areaCm2) / ROLL_CM2", "* areaCm2) / 1000"),
  mutant(
    "the stock in a bath by the decimal logarithm",
    "bath/stockCautions",
    "totalMl * Math.exp(logConcentration(dilution))",
    "totalMl * 10 ** logConcentration(dilution)",
  ),
  mutant(
    "a capacity in litres where millilitres are given",
    "bath/capacityOf",
    "capacityCm2: (cm2PerL * volumeMl) / 1000",
    "capacityCm2: cm2PerL * volumeMl",
  ),
  // Learning and notes.
  mutant(
    "a judged ratio that shortens the time it lengthens",
    "learning/readOutcome",
    "given + shift, Math.hypot(JUDGED_LOG_SD",
    "given - shift, Math.hypot(JUDGED_LOG_SD",
  ),
  mutant(
    "dense and thin swapped",
    "learning/readOutcome",
    "thin: (_outcome, _at, given) => beyond(given, 1)",
    "thin: (_outcome, _at, given) => beyond(given, -1)",
  ),
  mutant(
    "a gradient measured over the one wanted, upside down",
    "learning/readOutcome",
    "Math.log(aim / found) / GROWTH_EXPONENT",
    "Math.log(found / aim) / GROWTH_EXPONENT",
  ),
  mutant(
    "the newest run that has drifted the most",
    "learning/runTerms/driftTerm",
    ".sort().reverse()",
    ".sort()",
  ),
  mutant(
    "steps under that count as steps over",
    "notes/judgement",
    "(IS_UNDER.test(side) ? -1 : 1)",
    "(IS_UNDER.test(side) ? 1 : -1)",
  ),
  // Process.
  mutant(
    "a cold wash that is quicker",
    "process/wash",
    "COLD_WASH.belowC - temperatureC) / COLD_WASH",
    "temperatureC - COLD_WASH.belowC) / COLD_WASH",
  ),
  mutant(
    "a cold fixer that is quicker",
    "process/clearingTimeAt",
    "(stepC > 0 ? slower : quicker)",
    "(stepC > 0 ? quicker : slower)",
  ),
  mutant(
    "a wash without its last filling",
    "process/wash",
    "return Math.ceil(durationS",
    "return Math.floor(durationS",
  ),
  mutant(
    "a fixer measured warm and used cold, without the conversion",
    "process/fixing",
    '7200, "timeS"), measuredAtC)',
    '7200, "timeS"), toC)',
  ),
];

function mutant(what, module, from, to) {
  return { what, file: `src/${module}.ts`, tests: [`test/${module.split("/")[0]}/`], from, to };
}

/** The source with the mutant in it, or an error that names it where its text does not stand exactly once. */
export function applied({ what, file, from, to }, source) {
  const parts = source.split(from);
  if (parts.length !== 2)
    throw new Error(
      `"${what}": ${file} holds its text ${parts.length - 1} times: ${from}. Bring it up to date.`,
    );
  return parts.join(to);
}
