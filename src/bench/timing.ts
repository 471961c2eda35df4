/** Long enough for the engine to compile what is hot. */
const WARM_UP_SECONDS = 1.5;

/** Seconds of one call once warm, the least of several rounds, so that a busy machine disturbs little. */
export function secondsOf(work: () => void, rounds = 15, least = 0.02): number {
  for (let spent = 0; spent < WARM_UP_SECONDS; ) spent += round(work, 20);
  let calls = 1;
  // As many calls as make a round long enough to measure.
  for (;;) {
    const seconds = round(work, calls);
    if (seconds >= least) break;
    calls = Math.max(calls + 1, Math.ceil((calls * least * 1.2) / Math.max(seconds, 1e-6)));
  }
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < rounds; i++) best = Math.min(best, round(work, calls) / calls);
  return best;
}

function round(work: () => void, calls: number): number {
  const start = process.hrtime.bigint();
  for (let i = 0; i < calls; i++) work();
  return Number(process.hrtime.bigint() - start) / 1e9;
}

/** As `secondsOf`, for work that is awaited. */
export async function secondsOfAsync(work: () => Promise<void>, rounds = 7): Promise<number> {
  await work();
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < rounds; i++) {
    const start = process.hrtime.bigint();
    await work();
    best = Math.min(best, Number(process.hrtime.bigint() - start) / 1e9);
  }
  return best;
}
