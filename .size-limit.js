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

export default [
  app("fahrenheitToCelsius", "1 kB"),
  app("formatTime", "1 kB"),
  app("compensate", "11 kB"),
  app("parseTime, formatTime, compensate, handbookTemperatureLaw", "12.5 kB"),
  app("startKnowledge, learn, predict", "17 kB"),
];
