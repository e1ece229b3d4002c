/** A word of a table by a name that may be anything; what every object inherits is no word. */
export function ownWord(
  words: Readonly<Record<string, string | undefined>>,
  name: string,
): string | undefined {
  return Object.hasOwn(words, name) ? words[name] : undefined;
}
