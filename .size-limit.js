// Brotli sizes of what an app carries when it imports one thing. The bundler's notes on side-effect-free chunks are silenced: they say
// only that sideEffects: false works.
const quiet = { path: "dist/index.js", brotli: true, modifyEsbuildConfig: (config) => ({ ...config, logLevel: "silent" }) };
const dependencies = ["d3-interpolate", "simple-statistics", "decimal.js"];
const brew =
  "massOf, spoonSizesMl, spoonsFor, sodaMass, bakeYield, bakeProgress, bakedSoda, bakeTime, solubility, brewPh, brewStrength, checkBrew, scaleBrew, mixingSteps, handbookIngredients";
const pure = ["fahrenheitToCelsius", "useFactor", "ageFactor", "replenishmentMl"];

export default [
  ...pure.map((name) => ({ ...quiet, name: `${name}, all it pulls in`, import: `{ ${name} }`, limit: "500 B" })),
  { ...quiet, name: "compensate, own code", import: "{ compensate }", ignore: dependencies, limit: "6 kB" },
  // Of the 11.2 kB the room itself is 5.7: the rest are the causes and compensate, which it stands on.
  { ...quiet, name: "learning, own code with all it stands on", import: "{ startKnowledge, learn, predict, nextTest }", ignore: dependencies, limit: "11.5 kB" },
  { ...quiet, name: "brew room, own code", import: `{ ${brew} }`, ignore: dependencies, limit: "8 kB" },
  { ...quiet, name: "compensate, dependencies bundled", import: "{ compensate }", limit: "12 kB" },
];
