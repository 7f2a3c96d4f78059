interface Said {
  readonly from: "client" | "server";
  readonly message: {
    readonly id?: number | string;
    readonly method?: string;
    readonly params?: unknown;
    readonly result?: unknown;
  };
}
export declare function talkLsp(
  command: readonly string[],
  options: {
    readonly cwd?: string;
    readonly env?: NodeJS.ProcessEnv;
    readonly uri: string;
    readonly text: string;
    readonly ask?: { readonly method: string; readonly params: unknown };
    /** Milliseconds until it is ended. */
    readonly patience?: number;
  },
): Promise<{ readonly said: readonly Said[]; readonly status: number | null }>;
