interface Run {
  readonly words: readonly string[];
  readonly ends: number;
  readonly input?: string | undefined;
}
export declare const RUNS: readonly Run[];
/** A record of all runs, with so many lines of each output, and in a sentence those that ended otherwise than is said. */
export declare function recorded(
  lines: number,
  runs?: readonly Run[],
): Promise<{ readonly text: string; readonly wrong: readonly string[] }>;
