/** One piece of work whose time is worth knowing. Files named *.bench.ts export a list of them. */
export interface Bench {
  /** What is timed, as a sentence's subject: "the free layer of F13 under D5". */
  readonly name: string;
  /** Times the work is done; the first one warms up and is not counted, unless it is the only one. */
  readonly repeats?: number;
  /**
   * What must be reached; goes into the table at the end. Times are on one core: of clock and
   * computing time whichever is less, since the machine may be shared.
   */
  readonly target?: { readonly most: number; readonly unit: "ms" | "MB" };
  /** True: left out unless its name is asked for. */
  readonly isOnDemand?: boolean;
  /** Does the work; a text that it returns is shown behind the time. */
  readonly run: () => unknown;
}

/** What a piece of work may return when its own time is not what counts. */
export class Found {
  /**
   * @param value - what the target is compared with, in the target's unit
   * @param text - shown behind the time
   */
  constructor(
    readonly value: number,
    readonly text: string,
  ) {}
}

/**
 * Times work on one core.
 * @param work - what to do
 * @returns milliseconds by the clock, and what this process computed (helper threads included);
 *   on one core of its own it takes the lesser of the two
 */
export async function timed(
  work: () => unknown,
): Promise<{ readonly clock: number; readonly computing: number; readonly found: unknown }> {
  const cpu = process.cpuUsage();
  const start = performance.now();
  const found = await work();
  const clock = performance.now() - start;
  const { user, system } = process.cpuUsage(cpu);
  return { clock, computing: (user + system) / 1000, found };
}

/** The middle of some numbers; the lower of the two middle ones where they are even. */
export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
}
