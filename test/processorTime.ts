/** The least processor time of several calls, ms: what others do on the machine does not count. */
export function bestOf(runs: number, call: () => unknown): number {
  let best = Infinity;
  for (let i = 0; i < runs; i++) {
    const start = process.cpuUsage();
    call();
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1000);
  }
  return best;
}
