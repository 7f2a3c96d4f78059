/**
 * The words of the language. Keywords are contextual: every word is first a Word, then given its keyword's type, which
 * still counts as a Word, so that a part may be called `step` or `end`.
 */
import { type CustomPatternMatcherFunc, createToken, type IToken, Lexer, type TokenType } from "chevrotain";

/** One character of every group by which the lexer chooses its patterns: for those that may begin with anything. */
const ANY_START = Array.from({ length: 0x10000 }, (_, code) => code).filter(
  (code) => code < 256 || (code - 256) % 255 === 0 || code === 0xffff,
);

const GLYPH = "[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]";
const FRACTION = "\\d+[/⁄]\\d+";
/** `12`, `1.25`, `3/4`, `83-1/2`, `83 1/2`, `83½`, `½` */
const AMOUNT = `(?:\\d+(?:-| )${FRACTION}|${FRACTION}|\\d+ ?${GLYPH}|${GLYPH}|\\d+\\.\\d+|\\d+)`;
const INCH_MARK = '["″“”]';
const FOOT_MARK = "['′’‘]";
const NOT_MORE = "(?![A-Za-z0-9²³/])";
const LENGTH = [
  `${AMOUNT}${FOOT_MARK}(?:[ -]?${AMOUNT}${INCH_MARK})?`,
  `${AMOUNT}${INCH_MARK}`,
  // `in` is a word too (`1 in 10`), so it may have no blank before it.
  `${AMOUNT}(?: ?(?:ft|mm|cm|m)|in)${NOT_MORE}`,
].join("|");
const UNIT =
  "lb/cuft|lbs|lb|oz|kg/m3|kg/m³|kg/m2|kg|g|sqft|sqin|m2|m²|cuft|cuyd|mL|ml|L|l|m3|m³|gal|qt|psf|psi|pcf|kPa|kpa|Pa|min|hours|hour|h|days|day|weeks|week";

export const Word = createToken({
  name: "Word",
  pattern: /[A-Za-zÀ-ÖØ-öø-ÿ_](?:-?[A-Za-z0-9À-ÖØ-öø-ÿ_])*-?/,
});
export const Literal = createToken({ name: "Literal", pattern: Lexer.NA });
const literal = (name: string, pattern: RegExp): TokenType =>
  createToken({
    name,
    pattern,
    categories: [Literal],
    start_chars_hint: [..."0123456789#$€£½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞"],
  });

export const ScrewSize = literal(
  "ScrewSize",
  new RegExp(`#\\d+ ?[x×] ?(?:${LENGTH})|\\d+(?:\\.\\d+)? ?[x×] ?\\d+ ?mm`),
);
export const Section = literal("Section", /\d+(?:\/\d+)?[x×]\d+(?:\/\d+)?(?![A-Za-z0-9"'″′/]|\.\d)/);
export const Length = literal("Length", new RegExp(LENGTH));
export const Angle = literal("Angle", /\d+(?:\.\d+)?(?:°| ?deg(?![A-Za-z0-9]))/);
export const Measured = literal("Measured", new RegExp(`${AMOUNT} ?(?:${UNIT})${NOT_MORE}`));
export const Money = literal("Money", /[$€£] ?\d+(?:\.\d+)?/);
export const Share = literal("Share", /\d+(?:\.\d+)? ?%/);
/** `1,5 m`: a habit from elsewhere, read only to be answered. */
export const CommaNumber = createToken({
  name: "CommaNumber",
  pattern: /\d+,\d+(?: ?(?:mm|cm|m|kg|L|l|in|ft)(?![A-Za-z0-9])|["'″′])/,
});
export const Gauge = createToken({ name: "Gauge", pattern: /#\d+/ });
export const Numeral = literal("Numeral", /\d+\/\d+|\d+(?:\.\d+)?/);

const lineStart = (text: string, at: number): boolean => {
  const before = text.charCodeAt(at - 1);
  return at === 0 || before === 10 || before === 13 || (before === 0xfeff && at === 1);
};

/** Words that open an entry and call for words to people. */
export const TEXT_AFTER: ReadonlySet<string> = new Set([
  "plan",
  "step",
  "note",
  "yard",
  "shop",
  "bring",
  "enclosed",
]);

/** Words to people: from here to the end of the line, after a word that calls for them. */
const words: CustomPatternMatcherFunc = (text, at, matched) => {
  const last = matched[matched.length - 1];
  if (!last || !callsForWords(text, at, last, matched)) return null;
  const line = /[^\r\n]*/y;
  line.lastIndex = at;
  const found = line.exec(text);
  if (!found || found[0].trim() === "") return null;
  return [found[0].trimEnd()] as unknown as RegExpExecArray;
};

function callsForWords(text: string, at: number, last: IToken, matched: readonly IToken[]): boolean {
  const word = last.image;
  const anchored = word === "to" && matched[matched.length - 2]?.image === "anchored";
  const day = last.tokenType === Day;
  const changed = word === "changed";
  const called = word === "because" || word === "by" || word === "licence" || anchored || day || changed;
  const end = endOf(last);
  if (!(called || TEXT_AFTER.has(word)) || at === end || breaksBetween(text, end, at)) return false;
  if (word === "because") return true;
  if (word === "licence") return opensClause(text, matched, 1);
  if (anchored) return opensClause(text, matched, 2);
  if (day) return matched[matched.length - 2]?.image === "wear";
  if (changed) return opensClause(text, matched, 1) && inBuilt(text, matched);
  return word === "by" ? saysWho(text, matched) : lineStart(text, last.startOffset);
}

/** Whether a line ends between two offsets. */
export function breaksBetween(text: string, from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const c = text.charCodeAt(i);
    if (c === 10 || c === 13) return true;
  }
  return false;
}

/** `written by …`, `by …` behind a floor or foot limit, and behind the day something was built. */
function saysWho(text: string, matched: readonly IToken[]): boolean {
  const before = matched[matched.length - 2];
  if (before?.tokenType === Day) return matched[matched.length - 3]?.image === "built";
  if (before?.image === "written") return opensClause(text, matched, 2);
  return matched[matched.length - 4]?.image === "floor" || matched[matched.length - 4]?.image === "foot"
    ? matched[matched.length - 3]?.image === "limit"
    : false;
}

/** Whether the token `back` from the end opens a clause (stands after a comma or first on an indented line). */
function opensClause(text: string, matched: readonly IToken[], back: number): boolean {
  const token = matched[matched.length - back];
  if (!token) return false;
  const before = matched[matched.length - back - 1];
  if (!before || before.image === ",") return true;
  return breaksBetween(text, endOf(before), token.startOffset);
}

/** Whether what comes next stands in a `built` entry. */
const inBuilt = (text: string, matched: readonly IToken[]): boolean =>
  matched.findLast((token) => lineStart(text, token.startOffset))?.image === "built";

/** A day where one is due, behind `built` and `wear`; written in another order it is read to be answered. */
const day: CustomPatternMatcherFunc = (text, at, matched) => {
  const last = matched[matched.length - 1];
  if (!last || breaksBetween(text, endOf(last), at)) return null;
  const due =
    last.image === "built"
      ? lineStart(text, last.startOffset)
      : last.image === "wear" && opensClause(text, matched, 1) && inBuilt(text, matched);
  if (!due) return null;
  const written = /\d{1,4}([-./])\d{1,2}\1\d{1,4}(?![\w./-])/y;
  written.lastIndex = at;
  return written.exec(text);
};
export const Day = createToken({
  name: "Day",
  pattern: day,
  line_breaks: false,
  start_chars_hint: [..."0123456789"],
});

export const Words = createToken({
  name: "Words",
  pattern: words,
  line_breaks: false,
  start_chars_hint: ANY_START,
});

const comment: CustomPatternMatcherFunc = (text, at) => {
  if (text[at] !== "#") return null;
  const before = text[at - 1];
  const after = text[at + 1];
  const alone = before === undefined || /[\s\uFEFF]/.test(before);
  if (!alone || !(after === undefined || /\s/.test(after))) return null;
  const line = /[^\r\n]*/y;
  line.lastIndex = at;
  return line.exec(text);
};
export const Comment = createToken({
  name: "Comment",
  pattern: comment,
  line_breaks: false,
  group: "comments",
  start_chars_hint: ["#"],
});

const opensEntry = (text: string, token: IToken): boolean =>
  lineStart(text, token.startOffset) && /^[a-z]/.test(token.image);
/** What a name is due behind. */
export const NAME_DUE: ReadonlySet<string> = new Set([
  "of",
  "and",
  "into",
  "to",
  "onto",
  "with",
  "through",
  ",",
  "=",
  "(",
  "+",
  "-",
  "*",
  "/",
]);

/** The × between two sizes: a lone x, or one squeezed between a mark and a digit. */
const times: CustomPatternMatcherFunc = (text, at, matched) => {
  if (text[at] !== "x" && text[at] !== "×") return null;
  const last = matched[matched.length - 1];
  // Where a name is due, x is one: `part x 1 of 2x4`, `length of x`.
  if (text[at] === "x" && (!last || NAME_DUE.has(last.image) || opensEntry(text, last))) return null;
  const after = text[at + 1] ?? " ";
  const before = text[at - 1] ?? " ";
  const loose = !/[A-Za-z0-9_-]/.test(after);
  const squeezed = /["'″′”’)m]/.test(before) && /[\d½¼¾]/.test(after);
  return (loose && /[\s"'″′”’)m]/.test(before)) || squeezed || text[at] === "×"
    ? ([text[at]] as unknown as RegExpExecArray)
    : null;
};
export const By = createToken({
  name: "By",
  pattern: times,
  line_breaks: false,
  start_chars_hint: ["x", "×"],
  categories: [],
});

export const Comma = createToken({ name: "Comma", pattern: "," });
export const Open = createToken({ name: "Open", pattern: "(" });
export const Close = createToken({ name: "Close", pattern: ")" });
export const Plus = createToken({ name: "Plus", pattern: "+" });
export const Minus = createToken({ name: "Minus", pattern: /[-−–]/ });
export const Star = createToken({ name: "Star", pattern: "*" });
export const Slash = createToken({ name: "Slash", pattern: "/" });
export const AtMost = createToken({ name: "AtMost", pattern: /<=|≤/ });
export const AtLeast = createToken({ name: "AtLeast", pattern: />=|≥/ });
export const Less = createToken({ name: "Less", pattern: "<" });
export const More = createToken({ name: "More", pattern: ">" });
export const Equals = createToken({ name: "Equals", pattern: "=" });
const Blank = createToken({ name: "Blank", pattern: /[\s\uFEFF]+/, group: Lexer.SKIPPED, line_breaks: true });
/** A letter outside the plane is two units, and never parted: half a letter in a message is no text that a client can read. */
export const Stray = createToken({
  name: "Stray",
  pattern: /[\uD800-\uDBFF][\uDC00-\uDFFF]|[^\s]/,
  start_chars_hint: ANY_START,
});

/** The words that the rules tell apart. The words a clause opens with are found in forms.ts and need no type. */
// biome-ignore format: a list of words
export const KEYWORDS = [
  "about", "above", "across", "all", "along", "and", "anywhere", "apart", "at", "back", "bad", "behind",
  "below", "beveled", "both", "bottom", "by", "center", "coat", "coats", "crossing", "crossings", "deep",
  "down", "dry", "each", "edge", "edges", "empty", "end", "ends", "exactly", "face", "flat", "floor",
  "from", "front", "gaps", "green", "high", "holes", "in", "inches", "instead", "into", "it", "least", "left",
  "length", "less", "long", "metric", "middle", "millimetres", "mitered", "mm", "more", "most", "of", "on",
  "one", "onto", "opposite", "out", "overall", "past", "people", "per", "person", "planed", "plus", "point",
  "right", "rim", "round", "short", "spread", "square", "than", "the", "through", "to", "top", "up",
  "upright", "wide", "width", "with",
] as const;
export type Keyword = (typeof KEYWORDS)[number] | "because";

/** The token type of each keyword; every one but `because` counts as a Word too. */
export const K = Object.fromEntries(
  [...KEYWORDS, "because" as const].map((word) => [
    word,
    createToken({ name: `word ${word}`, pattern: Lexer.NA, categories: word === "because" ? [] : [Word] }),
  ]),
) as Readonly<Record<Keyword, TokenType>>;

/** In the order they are tried. */
const LEXED = [
  Words,
  Blank,
  Comment,
  Day,
  ScrewSize,
  Section,
  Angle,
  Share,
  CommaNumber,
  Length,
  Measured,
  Money,
  Gauge,
  Numeral,
  By,
  Word,
  Comma,
  Open,
  Close,
  Plus,
  Minus,
  Star,
  Slash,
  AtMost,
  AtLeast,
  Less,
  More,
  Equals,
  Stray,
];

export const VOCABULARY: TokenType[] = [...LEXED, Literal, ...Object.values(K)];

const lexer = new Lexer([...LEXED, Literal], {
  positionTracking: "onlyOffset",
  ensureOptimizations: true,
  skipValidations: true,
});

/** Splits text into tokens and comments. Every character is covered or skipped: there are no lexer errors. */
export function tokenize(text: string): { tokens: IToken[]; comments: IToken[] } {
  const { tokens, groups } = lexer.tokenize(text);
  for (const token of tokens) {
    if (token.tokenType !== Word) continue;
    if (Object.hasOwn(K, token.image)) {
      const keyword = K[token.image as Keyword];
      token.tokenType = keyword;
      token.tokenTypeIdx = keyword.tokenTypeIdx!;
    }
  }
  return { tokens, comments: groups.comments ?? [] };
}

export const endOf = (token: IToken): number => token.startOffset + token.image.length;
export const opensLine = lineStart;

/** Unit words that people write after a blank, and the form that is read. */
export const UNIT_WORDS: ReadonlyMap<string, string> = new Map([
  ["in", '"'],
  ["inch", '"'],
  ["inches", '"'],
  ["ft", "'"],
  ["foot", "'"],
  ["feet", "'"],
  ["mm", "mm"],
  ["cm", "cm"],
  ["m", "m"],
  ["millimetre", "mm"],
  ["millimetres", "mm"],
  ["millimeters", "mm"],
  ["metre", "m"],
  ["metres", "m"],
  ["meters", "m"],
  ["deg", "°"],
  ["degree", "°"],
  ["degrees", "°"],
]);
