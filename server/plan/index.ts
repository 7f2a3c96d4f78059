/** What the text means: names, entries, expressions not yet worked out. */
export * from "./bundle";
export * from "./enclosed";
export * from "./load";
export * from "./names";
export * from "./occurrences";
export * from "./says";
export * from "./value";
