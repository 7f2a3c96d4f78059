export declare function newestIn(changes: string): {
  readonly version: string | undefined;
  readonly day: string | undefined;
};
type Texts = Readonly<Record<"package.json" | "package-lock.json" | "README.md", string>>;
export declare function renamed(texts: Texts, from: string, to: string): Texts;
