/** The pairs of neighbouring letters in a name, in lower case. */
function pairsOf(name: string): readonly string[] {
  const lower = name.slice(0, 60).toLowerCase();
  return Array.from({ length: Math.max(0, lower.length - 1) }, (_, i) => lower.slice(i, i + 2));
}

/** The share of letter pairs that two names have in common, from 0 to 1. */
function likeness(a: readonly string[], b: readonly string[]): number {
  const left = [...b];
  let shared = 0;
  for (const pair of a) {
    const i = left.indexOf(pair);
    if (i < 0) continue;
    left.splice(i, 1);
    shared += 1;
  }
  return (2 * shared) / Math.max(1, a.length + b.length);
}

/** Whether a name is short for another: "tempC" for "temperatureC". */
function shortens(name: string, long: string): boolean {
  if (name.length < 3 || name.length > long.length || name[0] !== long[0]) return false;
  let at = 0;
  for (const letter of long) if (letter === name[at]) at += 1;
  return at === name.length;
}

/** The known name that a misspelt one is nearest to, if it is near enough to be meant. */
export function nearestName(name: string, known: readonly string[]): string | undefined {
  const pairs = pairsOf(name);
  let best: string | undefined;
  let most = 0;
  for (const each of known) {
    const share = likeness(pairs, pairsOf(each));
    if (share > most) [best, most] = [each, share];
  }
  // Half of the letter pairs in common: "temprature" is near "temperatureC", "colour" is near nothing.
  return most >= 0.5 ? best : known.find((each) => shortens(name, each));
}
