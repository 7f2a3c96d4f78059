/** Plan files that a `shop` or a `bring` line may name: offered whole, in place of all that stands behind the word. */
import { lineStart } from "../../grammar/lines";
import type { Span } from "../../grammar/tree";
import type { Language } from "../checks";
import { type Completion, offer } from "./completion-offer";
import { COMPLETION_WORDS } from "./completion-words";

/** A path that is being typed. */
export interface PathTyped {
  readonly entry: "shop" | "bring";
  /** What of it stands before the cursor. */
  readonly typed: string;
  /** All of it. */
  readonly range: Span;
}

/** A plan file, as the line would name it. */
export interface NearFile {
  readonly path: string;
  /** A plan whose shop file it is, where that is known. */
  readonly shopOf?: string;
}

/** Undefined where no path is typed. */
export function pathAt(text: string, offset: number): PathTyped | undefined {
  if (offset < 0 || offset > text.length) return undefined;
  const line = lineStart(text, offset);
  const [all = "", entry, blanks = "", path = ""] =
    /^\uFEFF?(shop|bring)([^\S\r\n]+)(\S[^\r\n]*)?/.exec(text.slice(line, line + LONGEST)) ?? [];
  const behind = line + all.length - path.length;
  if ((entry !== "shop" && entry !== "bring") || offset <= behind - blanks.length) return undefined;
  const start = Math.min(offset, behind);
  const end = Math.max(offset, behind + path.trimEnd().length);
  return { entry, typed: text.slice(start, offset), range: { start, end: path === "" ? offset : end } };
}

/** Longest line looked at, in characters. */
const LONGEST = 2_000;

/** The likeliest first: shop files for a shop, others to be brought; then those that lie nearest. */
export function fileOffers(
  { entry, range }: PathTyped,
  files: readonly NearFile[],
  language: Language,
): Completion[] {
  const words = COMPLETION_WORDS[language];
  const rank = (file: NearFile): number => (entry === "shop" ? -shopLike(file) : shopLike(file));
  return files
    .filter(({ path }) => isWritable(path))
    .sort((a, b) => rank(a) - rank(b) || far(a) - far(b) || (a.path < b.path ? -1 : 1))
    .map(({ path, shopOf }, i) => {
      const detail = shopOf === undefined ? "" : words.shopOf(shopOf);
      const { rank: _rank, ...whole } = offer(path, "file", 0, { detail });
      return { ...whole, range, sortText: String(i).padStart(4, "0"), preselect: false };
    });
}

/** A path runs to the end of its line, without the blanks around it. */
const isWritable = (path: string): boolean => path !== "" && path.trim() === path && !/[\r\n]/.test(path);

/** How much speaks for a shop file: that another plan uses it as such, or its name. */
const shopLike = ({ path, shopOf }: NearFile): number =>
  shopOf !== undefined ? 2 : /shop[^/\\]*$/i.test(path) ? 1 : 0;

/** How many folders lie between, a way up counting more than a way down. */
const far = ({ path }: NearFile): number =>
  path.split("/").reduce((sum, part) => sum + (part === ".." ? 100 : 1), 0);
