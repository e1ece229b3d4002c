/* What the section of the shelf says, in both languages. Steps, hazards and reasons come from the package. */
import type { BrewMaterial } from "darkroom-kinetics";
import type { Language } from "./sheet.js";

const english = {
  heading: "Shelf",
  cupboard: "What is in the cupboard?",
  others: "Also",
  label: "One tablet holds",
  labelUnit: "mg of vitamin C, by its label",
  sentence: "{volume} of bath at {temperature}, for {material}, measured with {spoon}.",
  volume: "volume of the brew",
  temperature: "temperature of the brew",
  material: "what is developed",
  materials: { film: "film", plate: "a plate", paper: "paper" } satisfies Record<BrewMaterial, string>,
  spoon: "how it is measured",
  weighed: "scales",
  spoonOf: (ml: string) => `a spoon of ${ml}`,
  brew: "The brew",
  amount: (spoons: string, spoonMl: string, grams: string, name: string) =>
    `${spoons} level spoons of ${spoonMl} (${grams}) ${name}`,
  solution: (volume: string, percent: number, name: string) =>
    `${volume} of a solution of ${percent} % ${name}`,
  tablets: (count: string, name: string) => `${count} × ${name}`,
  weight: (grams: string, name: string) => `${grams} ${name}`,
  lives: (hours: string) => `It lives about ${hours}.`,
  pieces: {
    film: ["film", "films"],
    plate: ["plate", "plates"],
    paper: ["sheet", "sheets"],
  } as Readonly<Record<BrewMaterial, readonly [one: string, more: string]>>,
  carries: (count: number, pieces: string, format: string) =>
    `It carries ${count} ${pieces} of size ${format}.`,
  begin: (time: string, low: string, high: string, temperature: string) =>
    `Begin with ${time} at ${temperature}, nine times in ten ${low} to ${high}.`,
  strip: (times: string) => `For a strip: ${times}.`,
  add: "What would help",
  more: { "more-bath": "a larger bath", "warm-water": "warmer water", "cool-water": "cooler water" },
  mixing: "Mixing, one step at a time",
  step: (step: number, of: number) => `Step ${step} of ${of}`,
  back: "Back",
  next: "Next",
  use: "Use this brew",
  used: "The brew is what is known now, with its starting time. Run the strip before a negative.",
};

export type ShelfWords = typeof english;

const german: ShelfWords = {
  heading: "Vorrat",
  cupboard: "Was ist im Schrank?",
  others: "Außerdem",
  label: "Eine Tablette enthält",
  labelUnit: "mg Vitamin C, laut Aufdruck",
  sentence: "{volume} Bad bei {temperature}, für {material}, gemessen mit {spoon}.",
  volume: "Menge des Ansatzes",
  temperature: "Temperatur des Ansatzes",
  material: "was entwickelt wird",
  materials: { film: "Film", plate: "eine Platte", paper: "Papier" },
  spoon: "womit gemessen wird",
  weighed: "einer Waage",
  spoonOf: (ml) => `einem Löffel von ${ml}`,
  brew: "Der Ansatz",
  amount: (spoons, spoonMl, grams, name) => `${spoons} gestrichene Löffel von ${spoonMl} (${grams}) ${name}`,
  solution: (volume, percent, name) => `${volume} einer Lösung von ${percent} % ${name}`,
  tablets: (count, name) => `${count} × ${name}`,
  weight: (grams, name) => `${grams} ${name}`,
  lives: (hours) => `Er hält etwa ${hours}.`,
  pieces: { film: ["Film", "Filme"], plate: ["Platte", "Platten"], paper: ["Blatt", "Blatt"] },
  carries: (count, pieces, format) => `Er reicht für ${count} ${pieces} ${format}.`,
  begin: (time, low, high, temperature) =>
    `Beginne mit ${time} bei ${temperature}, in 9 von 10 Fällen ${low} bis ${high}.`,
  strip: (times) => `Für einen Streifen: ${times}.`,
  add: "Was helfen würde",
  more: { "more-bath": "mehr Bad", "warm-water": "wärmeres Wasser", "cool-water": "kühleres Wasser" },
  mixing: "Ansetzen, Schritt für Schritt",
  step: (step, of) => `Schritt ${step} von ${of}`,
  back: "Zurück",
  next: "Weiter",
  use: "Diesen Ansatz nehmen",
  used: "Der Ansatz ist nun das Bekannte, mit seiner Anfangszeit. Erst der Streifen, dann das Negativ.",
};

export const shelfWordsOf = (language: Language): ShelfWords => (language === "de" ? german : english);
