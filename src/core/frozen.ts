/** Freezes plain data through and through, so that no caller can change what others rely on; returns it. */
export function frozen<T>(data: T): T {
  if (typeof data === "object" && data !== null && !Object.isFrozen(data)) {
    Object.freeze(data);
    for (const part of Object.values(data)) frozen(part);
  }
  return data;
}

/** The names in a table of published figures, in its order, frozen: what a menu offers. */
export function namesOf<Name extends string>(
  table: Readonly<Partial<Record<Name, unknown>>>,
): readonly Name[] {
  return Object.freeze(Object.keys(table) as Name[]);
}
