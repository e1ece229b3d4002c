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
  // Aim 1 kB, missed by 72 bytes: what is expected is data, and its sentence is made of it. A text that lost a letter in
  // a file of another encoding is told.
  app("formatTime", "1.08 kB"),
  // Aim 11 kB, missed by 11.1: the judgement of a bath, learned departures, the interaction of temperature and dilution,
  // thermometers and people, and the check for unusual laws came in since the aim was set. Half a kilobyte of it is
  // that each sentence names its figures, in °C or °F; 0.2 is that every rule of an error has its name and data, 0.25 that a
  // table in °F and the fields of another kind of law are told.
  // 1.1 is that the interaction is bounded, an unknown age and a far dilution are told, laws carry hydroquinone, and what
  // was prepared or given is not read again. 0.4 is that a brew may fail before its stated life, that an old bath slows,
  // and that a law which goes the wrong way is told.
  // 0.2 is that a bath of unknown capacity is told past practice, and that a name which all runs have is meant. 0.5 is
  // that what may end a bath is said before what makes its time less sure, and that spreads and lengths read plainly.
  app("compensate", "22.1 kB"),
  // Aim 12.5 kB, missed by 11.1, for the same reasons; and "8.30 min" is asked about.
  app("parseTime, formatTime, compensate, handbookTemperatureLaw", "23.6 kB"),
  // Aim 17 kB, missed by 18.3: the above, and a regression of values and windows with its run terms. 0.25 is that a
  // misspelt field and data that JSON would lose are refused where they stand. 0.25 is that runs which teach nothing are
  // counted with their reasons, 0.1 that the noise of a
  // gradient stays out of what gradients share.
  app("startKnowledge, learn, predict", "35.3 kB"),
  // Aim 10 kB, missed by 11: the cautions in German are half of it, and what is refused is 2.7. Solutions that are made
  // before the bath, and names in the accusative, are 0.3, an evening is 0.2,
  // and examples in German are 0.5.
  app("de", "21 kB", { path: "dist/texts/de.js", name: "texts/de" }),
  // Aim 17 kB, missed by 18.7: compensate is 22 of it. The plan that is aimed anew, with its cues in words, is 4.1;
  // the forecast, its simulated paths and the judgement of readings are 7.
  app("steer", "35.7 kB"),
  // Aim 24 kB, missed by 39.8: it works out what it checks. It holds compensate, learning, the chemistry of brews with
  // their ingredients, and the cautions of every module with their sentences. One kilobyte is that runs in minutes or
  // °F, names that come twice and fields of brews that are not read are told.
  app("checkRecipe", "63.8 kB"),
];
