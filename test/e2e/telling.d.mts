/** What a scenario came to: `error` where it failed, `again` where it was tried a second time. */
export interface Result<S> {
  readonly scenario: S;
  readonly error: unknown;
  readonly again?: boolean;
}

export function withSecondTry<S>(
  chosen: readonly S[],
  run: (chosen: readonly S[]) => Promise<readonly Result<S>[]>,
): Promise<Result<S>[]>;

export function close(results: readonly Result<{ readonly name: string }>[], seconds: string): number;
