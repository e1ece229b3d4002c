/*
 * Room: core. JSON Pointer: P. Bryan, K. Zyp, M. Nottingham, RFC 6901, 2013.
 */

/** The pointer to a member of what `parent` points to: `~` is written `~0` and `/` is written `~1` (RFC 6901, section 3). */
export function pointerTo(parent: string, key: string | number): string {
  return `${parent}/${String(key).replaceAll("~", "~0").replaceAll("/", "~1")}`;
}
