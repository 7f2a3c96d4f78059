export declare const NAMES_TOO: readonly string[];
/** The Vim files of the language by their paths. */
export declare function vimFiles(): Promise<Readonly<Record<string, string>>>;
/** Throws for a token that has none. */
export declare function vimPattern(token: { readonly name: string; readonly PATTERN?: unknown }): string;
