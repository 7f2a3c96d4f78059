/** Exact lengths and other values with dimensions; reading and writing them. */
export * from "./dimension";
export * from "./quantity";
export type { Rational } from "./rational";
export * as fraction from "./rational";
export * from "./read";
export * from "./table";
export * from "./write";
