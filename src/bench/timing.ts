/** Long enough for the engine to compile what is hot. */
const WARM_UP_SECONDS = 1.5;

/** Rounds take turns, so that a busy moment of the machine meets all works alike. */
const ROUNDS = 40;

/** Seconds of one call of each work once warm, the least of many rounds. */
export function secondsOfEach(...works: readonly (() => void)[]): number[] {
  const timed = works.map(work => {
    for (let spent = 0; spent < WARM_UP_SECONDS; ) spent += round(work, 20);
    return { work, calls: callsFor(work), best: Number.POSITIVE_INFINITY };
  });
  for (let i = 0; i < ROUNDS; i++)
    for (const each of timed) each.best = Math.min(each.best, round(each.work, each.calls) / each.calls);
  return timed.map(({ best }) => best);
}

/** As many calls as make a round long enough to measure. */
function callsFor(work: () => void, least = 0.01): number {
  let calls = 1;
  for (;;) {
    const seconds = round(work, calls);
    if (seconds >= least) return calls;
    calls = Math.max(calls + 1, Math.ceil((calls * least * 1.2) / Math.max(seconds, 1e-6)));
  }
}

function round(work: () => void, calls: number): number {
  const start = process.hrtime.bigint();
  for (let i = 0; i < calls; i++) work();
  return Number(process.hrtime.bigint() - start) / 1e9;
}

/** As `secondsOfEach`, for one work that is awaited. */
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

/**
 * Seconds of one call of each work, awaited, the least of some rounds in which they take turns; each is first called
 * until it is warm.
 */
export async function secondsInTurn(...works: readonly (() => Promise<void>)[]): Promise<number[]> {
  const once = async (work: () => Promise<void>): Promise<number> => {
    const start = process.hrtime.bigint();
    await work();
    return Number(process.hrtime.bigint() - start) / 1e9;
  };
  for (const work of works) for (let spent = 0; spent < WARM_UP_SECONDS; ) spent += await once(work);
  const best = works.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < ROUNDS / 4; round++)
    for (const [at, work] of works.entries()) best[at] = Math.min(best[at]!, await once(work));
  return best;
}
