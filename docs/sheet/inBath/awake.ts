/* A screen that does not go to sleep while a negative is in the bath, where the browser can keep it awake. */

let lock: WakeLockSentinel | undefined;
let wanted = false;

/** Keeps the screen on, or lets it go off. */
export function stayAwake(on: boolean): void {
  if (on === wanted) return;
  wanted = on;
  if (on) void ask();
  else {
    void lock?.release();
    lock = undefined;
  }
}

async function ask(): Promise<void> {
  // Older browsers have no such lock, whatever the types say.
  const { wakeLock } = navigator as Partial<Pick<Navigator, "wakeLock">>;
  try {
    lock = await wakeLock?.request("screen");
  } catch {
    // A battery that runs low refuses it: the clock is right all the same.
  }
}

// A page that was hidden has lost its lock.
if (typeof document !== "undefined")
  document.addEventListener("visibilitychange", () => {
    if (wanted && document.visibilityState === "visible") void ask();
  });
