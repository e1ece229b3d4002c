/** An object or list inside a document. */
export type Holder = Record<string, unknown>;

/** A copy of a JSON document with one field changed, anywhere in it; `place` says where. */
export function changed(
  document: unknown,
  place: number,
  change: (holder: Holder, key: string) => void,
): unknown {
  const copy: unknown = structuredClone(document);
  const holders: Holder[] = [];
  const walk = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    holders.push(node as Holder);
    Object.values(node).forEach(walk);
  };
  walk(copy);
  const holder = holders[place % holders.length]!;
  const keys = Object.keys(holder);
  change(holder, keys[place % (keys.length || 1)] ?? "new");
  return copy;
}

/** Takes a field away; in a list it gets the value instead. */
export function takeAway(holder: Holder, key: string, value: unknown): void {
  if (Array.isArray(holder)) holder[key as never] = value as never;
  else Reflect.deleteProperty(holder, key);
}
