// Brotli sizes of what an app carries when it imports this, dependencies and all. The bundler's notes on
// modules without side effects are silenced: they say only that sideEffects: false works.
const app = (names, limit, more = {}) => ({
  name: names,
  path: "dist/index.js",
  import: `{ ${names} }`,
  limit,
  brotli: true,
  modifyEsbuildConfig: (config) => ({ ...config, logLevel: "silent" }),
  ...more,
});

// Seven aims are missed. These limits hold what is reached, so that it does not grow unseen.
export default [
  app("fahrenheitToCelsius", "1 kB"),
  // Aim 1 kB. What is expected of a text is data, and its sentence is made of it.
  app("formatTime", "1.13 kB"),
  // Aim 11 kB. The causes with their laws, learned departures, drift and interaction; the judgement of a bath; the
  // cautions with their sentences and the errors with their data.
  app("compensate", "23.6 kB"),
  // Aim 12.5 kB. For the same reasons.
  app("parseTime, formatTime, compensate, handbookTemperatureLaw", "25.2 kB"),
  // Aim 17 kB. The above, and a regression of values and windows with its terms of runs, slips of the pen, and advice on them.
  app("startKnowledge, learn, predict", "38 kB"),
  // Aim 10 kB. The cautions in German are half of it, and what is refused is 2.7 kB.
  app("de", "21.5 kB", { path: "dist/texts/de.js", name: "texts/de" }),
  // Aim 17 kB. compensate is 22 kB of it, the plan that is aimed anew 4.1 kB, forecast, paths and readings 7 kB.
  app("steer", "37.6 kB"),
  // Aim 24 kB. It works out what it checks: compensate, learning, the chemistry of brews, the cautions of every module.
  app("checkRecipe", "66.8 kB"),
];
