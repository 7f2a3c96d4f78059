/** Colours, for any text: what an editor relies on, and that no name and no value is forgotten. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { parse } from "../../grammar/parser";
import type { Entry } from "../../grammar/tree";
import { type Token, tokensOf } from "../../server/features/tokens";
import { lookUp, type Reader, usesOf } from "../../server/plan";
import { type Evaluated, evaluate } from "../../server/service";
import { anyText, SAMPLES, SOME } from "./plans";

const shop = SAMPLES.find((s) => s.startsWith("# What the yard"))!;
const reader: Reader = (path) =>
  path.includes("shop") ? { file: path, text: shop } : { file: path, refused: "there is no such file" };
const evaluated = (text: string): Evaluated => evaluate("plan.sawbuck", text, reader);

const seen = (t: Token): string => `${t.start}..${t.end} ${t.type} ${t.modifiers.join(" ")}`;

test("tokens are in order, apart from each other, inside the text, and each on one line", () => {
  fc.assert(
    fc.property(anyText, (text) => {
      let last = 0;
      for (const { start, end } of tokensOf(evaluated(text))) {
        if (!(last <= start && start < end && end <= text.length))
          throw new Error(`${last} ${start}..${end}`);
        if (/[\r\n]/.test(text.slice(start, end))) throw new Error(`${start}..${end} is over lines`);
        last = end;
      }
    }),
    { numRuns: SOME },
  );
});

test("a stretch has the tokens of the whole that reach into it", () => {
  fc.assert(
    fc.property(anyText, fc.nat(), fc.nat(), (text, a, b) => {
      const [start, end] = [a % (text.length + 1), b % (text.length + 1)].sort((x, y) => x - y) as [
        number,
        number,
      ];
      const plan = evaluated(text);
      const cut = tokensOf(plan).filter((t) => t.end > start && t.start < end);
      expect(tokensOf(plan, { start, end }).map(seen)).toEqual(cut.map(seen));
    }),
    { numRuns: SOME },
  );
});

test("every name that is used and declared has one token, of the kind that declares it", () => {
  const types: Readonly<Record<string, string>> = {
    measure: "variable",
    part: "class",
    ring: "enum",
    box: "struct",
    assembly: "namespace",
  };
  let used = 0;
  fc.assert(
    fc.property(anyText, (text) => {
      const plan = evaluated(text);
      const tokens = new Map(tokensOf(plan).map((t) => [t.start, t]));
      for (const { name } of plan.worked.loaded.files[0]!.tree.entries.flatMap((e: Entry) => usesOf(e))) {
        const declared = lookUp(plan.worked.scope, name.text.replace("×", "x"));
        if (!declared) continue;
        used++;
        const token = tokens.get(name.start);
        if (token?.end !== name.end || token.type !== (types[declared.kind] ?? "enumMember"))
          throw new Error(`${name.text} is ${declared.kind} and ${token && seen(token)}`);
      }
    }),
    { numRuns: SOME },
  );
  expect(used).toBeGreaterThan(SOME);
});

test("every value that was read has one token", () => {
  const literals = (node: object): { start: number; end: number }[] => [
    ...("kind" in node && node.kind === "literal" ? [node as unknown as { start: number; end: number }] : []),
    ...Object.values(node).flatMap((v) => (typeof v === "object" && v !== null ? literals(v) : [])),
  ];
  fc.assert(
    fc.property(anyText, (text) => {
      const tokens = new Map(tokensOf(evaluated(text)).map((t) => [t.start, t]));
      for (const { start, end } of literals(parse(text).entries)) {
        const token = tokens.get(start);
        if (token?.type !== "number" || token.end !== end) throw new Error(`${text.slice(start, end)}`);
      }
    }),
    { numRuns: SOME },
  );
});

test("colours are the same whatever was coloured before", () => {
  fc.assert(
    fc.property(anyText, fc.nat(), fc.string({ maxLength: 3 }), (text, at, typed) => {
      const cut = at % (text.length + 1);
      const next = text.slice(0, cut) + typed + text.slice(cut);
      const after = tokensOf(evaluated(next)).map(seen);
      tokensOf(evaluated(text));
      expect(tokensOf(evaluated(next)).map(seen)).toEqual(after);
    }),
    { numRuns: SOME },
  );
});
