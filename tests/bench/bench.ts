/** One piece of work whose time is worth knowing. Files named *.bench.ts export a list of them. */
export interface Bench {
  /** What is timed, as a sentence's subject: "the free layer of F13 under D5". */
  readonly name: string;
  /** Times the work is done; the first one warms up and is not counted, unless it is the only one. */
  readonly repeats?: number;
  /** Does the work; what it returns is shown behind the time when it is a text. */
  readonly run: () => unknown;
}
