/** The entry of a table by a name that may be anything; what every object inherits is not in it. */
export function ownEntry<Entry>(table: Readonly<Record<string, Entry>>, name: string): Entry | undefined {
  return Object.hasOwn(table, name) ? table[name] : undefined;
}
