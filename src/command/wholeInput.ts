/*
 * The whole of a stream that may have nothing to give yet.
 */

/** How long to wait before a stream is asked again, ms. */
const PAUSE_MS = 10;

/**
 * Reads a stream to its end.
 *
 * @param into - puts the next bytes into an array and says how many; 0 at the end; throws EAGAIN where there
 * are none yet
 * @param wait - waits so many ms
 */
export function wholeInput(into: (bytes: Uint8Array) => number, wait: (ms: number) => void): string {
  const part = new Uint8Array(65_536);
  const decoder = new TextDecoder();
  let text = "";
  for (;;) {
    try {
      const count = into(part);
      if (count === 0) return text + decoder.decode();
      text += decoder.decode(part.subarray(0, count), { stream: true });
    } catch (error) {
      const { code } = error as Error & { readonly code?: string };
      // On Windows a pipe that was closed ends with an error.
      if (code === "EOF") return text + decoder.decode();
      if (code !== "EAGAIN") throw error;
      wait(PAUSE_MS);
    }
  }
}
