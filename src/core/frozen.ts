/** Freezes plain data through and through, so that no caller can change what others rely on; returns it. */
export function frozen<T>(data: T): T {
  if (typeof data === "object" && data !== null && !Object.isFrozen(data)) {
    Object.freeze(data);
    for (const part of Object.values(data)) frozen(part);
  }
  return data;
}
