/** Texts that try to get out of where they are put, and sheets made of them. */
import fc from "fast-check";
import type { SheetData } from "../../server/sheet/data";

export const RUNS = Number(process.env.FC_RUNS ?? 1000);
/** Milliseconds that so many runs may take on a busy machine. */
export const PATIENCE = 60_000 + 200 * RUNS;

const ATTEMPTS = [
  "<script>alert(1)</script>",
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  "</style></title></svg></text>",
  "<!-- --> ]]> <![CDATA[ <?xml ?>",
  "&lt;b&gt; &amp;amp; &#60; &#x3c &copy",
  "javascript:alert(1)",
  "\u0000<\u0008b>\u001b[31mred\u009b0m",
  "\u202eevil\u2066 \ufeff \ufffe \u{1ffff}",
  "\ud800 \udc00",
  "a\r\nb\rc\u2028d\u0085e\tf",
  "`$x` {{x}} $(x) %s \\u003c",
  '=HYPERLINK("javascript:alert(1)")',
  "\t=1+1",
  ' "+1+1',
  "-1+1",
  "@SUM(A1)",
  'a;=1;,"=1',
  "",
  " ",
  "x".repeat(120),
  "木工 e\u0301 👷",
];

export const nasty: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(...ATTEMPTS),
  fc.string({ unit: "binary", maxLength: 20 }),
  fc.string({ unit: "grapheme", maxLength: 20 }),
  fc.tuple(fc.constantFrom(...ATTEMPTS), fc.string({ maxLength: 5 })).map(([a, b]) => b + a + b),
);

/** Fields that hold one of a few words and never a text of the plan. */
const WORDS = new Set([
  "format",
  "class",
  "hand",
  "kind",
  "why",
  "system",
  "on",
  "from",
  "which",
  "of",
  "have",
]);

/** The sheet with each of its texts replaced; `path` names it, list places as `*`. */
export function withTexts(data: SheetData, replace: (text: string, path: string) => string): SheetData {
  const walk = (value: unknown, path: string, key: string): unknown => {
    if (typeof value === "string") {
      const isWord = WORDS.has(key) && !(key === "why" && path.startsWith("notChecked"));
      return isWord ? value : replace(value, path);
    }
    if (Array.isArray(value)) return value.map((item) => walk(item, `${path}.*`, key));
    if (typeof value !== "object" || value === null) return value;
    const entries = Object.entries(value).map(([name, inner]) => {
      return [name, walk(inner, path === "" ? name : `${path}.${name}`, name)] as const;
    });
    return Object.fromEntries(entries);
  };
  return walk(data, "", "") as SheetData;
}

/** The sheet with at most two of each thing: all its fields, quicker to draw. A place in space keeps its three numbers. */
export function brief(data: SheetData): SheetData {
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value))
      return value.every((one) => typeof one === "number") ? value : value.slice(0, 2).map(walk);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, walk(inner)]));
  };
  return walk(data) as SheetData;
}

/** The sheet with every text taken in turn from a pool of nasty ones. */
export function nastySheets(data: SheetData): fc.Arbitrary<SheetData> {
  return fc.array(nasty, { minLength: 1, maxLength: 24 }).map((pool) => {
    let n = 0;
    return withTexts(data, () => pool[n++ % pool.length]!);
  });
}
