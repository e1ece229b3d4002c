/**
 * Whether a text has more characters than `most`, as JSON Schema counts them. What is far too long is not
 * counted.
 */
export function longer(text: string, most: number): boolean {
  return text.length > most && (text.length > 2 * most || Array.from(text).length > most);
}
