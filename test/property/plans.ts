/** Plans made at random: bytes, grammar-made plans, and samples with something changed. For property tests. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { ENTRY_FORMS } from "../../grammar/forms";

/** How many cases. */
export const RUNS = Number(process.env.FC_RUNS ?? 1_000);
/** Of properties whose cases take long, or that hold one part of a plan alone. */
export const FEWER = Number(process.env.FC_RUNS ?? 500);
/** Of those that hold one feature of an editor alone. */
export const SOME = Number(process.env.FC_RUNS ?? 300);

const ROOT = join(__dirname, "../..");
export const SAMPLES = readdirSync(join(ROOT, "samples"))
  .filter((f) => f.endsWith(".sawbuck"))
  .map((f) => readFileSync(join(ROOT, "samples", f), "utf8"));

const name = fc.constantFrom("leg", "side", "end", "rail", "rim", "gap", "step", "top", "box", "legs", "x");
const whole = fc.integer({ min: 0, max: 60 });
const fraction = fc
  .tuple(whole, fc.constantFrom("1/2", "3/4", "5/8", "1/16", "7/64"))
  .map(([n, f]) => `${n}-${f}"`);
const length = fc.oneof(
  whole.map((n) => `${n}"`),
  fraction,
  whole.map((n) => `${n}'`),
  fc.integer({ min: 0, max: 3000 }).map((n) => `${n}mm`),
  fc.constantFrom(`6' 11-1/2"`, "½″", "1.22m", "0"),
);
const section = fc.constantFrom("1x4", "2x4", "2x2", "1x6", "5/4x6", "18x95", "2x5", "4x4");
const angle = fc.integer({ min: 0, max: 95 }).map((n) => `${n}°`);
const expression: fc.Arbitrary<string> = fc.letrec<{ e: string }>((tie) => ({
  e: fc.oneof(
    { maxDepth: 3, withCrossShrink: true },
    length,
    name,
    fc
      .tuple(fc.constantFrom("thickness", "width", "length", "count"), fc.oneof(name, section))
      .map(([p, t]) => `${p} of ${t}`),
    fc.tuple(tie("e"), fc.constantFrom("+", "-", "*", "/"), tie("e")).map(([a, o, b]) => `${a} ${o} ${b}`),
    tie("e").map((e) => `(${e})`),
    fc
      .tuple(fc.constantFrom("min", "max", "diagonal"), tie("e"), tie("e"))
      .map(([f, a, b]) => `${f}(${a}, ${b})`),
    whole.map(String),
  ),
})).e;
const ends = fc
  .tuple(fc.constantFrom("ends", "left end", "right end"), fc.constantFrom("mitered", "beveled"), angle)
  .map((t) => t.join(" "));
const part = fc
  .tuple(
    name,
    fc.option(fc.integer({ min: 0, max: 30 })),
    section,
    expression,
    fc.array(
      fc.oneof(
        ends,
        fc.constantFrom(
          "in pairs",
          'cut to fit plus 1/2"',
          'width 1"',
          "long point to long point",
          "long points on opposite edges",
        ),
        length,
      ),
      { maxLength: 3 },
    ),
  )
  .map(([n, count, s, e, rest]) => [`part ${n} ${count ?? ""} of ${s}, length ${e}`, ...rest].join(", "));
const measure = fc
  .tuple(name, expression, fc.option(expression))
  .map(([n, e, b]) => `measure ${n} = ${e}${b ? `, at most ${b}` : ""}`);
const fasten = fc
  .tuple(
    name,
    fc.constantFrom("", " face", " edge", " end"),
    name,
    fc.integer({ min: 1, max: 4 }),
    fc.constantFrom('#8 x 1-1/4"', '#8 x 3"', "5 x 60mm", "deck-mid"),
    fc.constantFrom(" at each end", " at each crossing", " along it", " in all", ""),
  )
  .map(([a, f, b, n, s, w]) => `fasten ${a}${f} into ${b}${f}, ${n} ${s}${w}`);
const form = fc
  .constantFrom(...ENTRY_FORMS)
  .chain((e) =>
    fc
      .subarray([...e.clauses], { maxLength: Math.min(4, e.clauses.length) })
      .map((list) => `${e.example}\n${list.map((c) => `  ${c.example}\n`).join("")}`),
  );
const ring = fc
  .tuple(name, fc.array(name, { minLength: 1, maxLength: 5 }))
  .map(([n, list]) => `ring ${n} = ${list.join(" and ")}`);
const lies = fc.constantFrom("upright", "across, flat", "across, on edge", "front to back, flat");
const stands = fc.oneof(
  fc.tuple(whole, whole).map(([x, y]) => `on floor, ${x}" from left, ${y}" from front`),
  name.map((n) => `on ${n}, flush with left of ${n}, flush with front of ${n}`),
  fc.tuple(name, whole).map(([n, x]) => `right of ${n}, ${x}" from front, on floor`),
  fc.constant('on floor, at each corner of 40" x 20"'),
);
const repeats = fc.constantFrom(
  "",
  "",
  ", 3 across, tight",
  ', 2 high, 1" apart',
  ', as many as fit, 2" apart',
);
/** A part and a line that places it, perhaps one that joins it to another. */
const placed = fc
  .tuple(name, section, whole, lies, stands, repeats, fc.option(fasten))
  .map(([n, s, long, how, where, again, joint]) =>
    [
      `part ${n} of ${s}, length ${long + 1}"`,
      `place ${n} ${how}, ${where}${again}`,
      ...(joint ? [joint] : []),
    ].join("\n"),
  );

const named = name.filter((n) => n !== "x");
const day = fc.constantFrom("2026-05-09", "2025-11-30", "2024-02-29");
/** That it was built: what came out otherwise of things that the plan may have, in words, and what wear was found. */
export const builtLine: fc.Arbitrary<string> = fc
  .tuple(
    day,
    fc.constantFrom("", " by Ms Okoro's group", " by us, # all"),
    fc.array(
      fc.oneof(
        fc
          .tuple(named, fc.oneof(length, angle), fc.constantFrom("", " because the wall leans"))
          .map(([n, l, why]) => `measured ${n} = ${l}${why}`),
        fc.tuple(named, length).map(([n, l]) => `measured length of ${n} = ${l}`),
        fc.tuple(section, section).map(([a, b]) => `used ${a} instead of ${b}`),
        fc.constant('changed Two more screws, "long" ones'),
        day.map((d) => `wear ${d} One leg is soft`),
      ),
      { maxLength: 4 },
    ),
  )
  .map(([date, by, clauses]) => [`built ${date}${by}`, ...clauses.map((c) => `  ${c}`)].join("\n"));

/** Four legs and a rail on them, which whatever comes later may lean on. */
const frame = fc
  .tuple(whole, whole, fc.integer({ min: 1, max: 4 }), fc.constantFrom('#8 x 1-5/8"', '#8 x 3"'))
  .map(([high, wide, n, screw]) =>
    [
      `part leg of 2x4, length ${high + 1}"`,
      "part rail of 1x4, length overall width of legs",
      `place leg upright, wide face front, on floor, at each corner of ${wide + 8}" x 20"`,
      "place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs",
      `fasten rail into leg, ${n} ${screw} at each crossing`,
      "",
    ].join("\n"),
  );

/** A plan put together by the grammar, part of which means something, and in which things stand. */
export const madePlan: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(true, false).chain((framed) => (framed ? frame : fc.constant(""))),
    fc.array(
      fc.oneof(
        part,
        part,
        measure,
        fasten,
        form,
        ring,
        placed,
        builtLine,
        fc.constant("# a note"),
        fc.constant(""),
      ),
      { maxLength: 25 },
    ),
  )
  .map(([first, lines]) => `${first}${lines.join("\n")}\n`);

/** A sample with a stretch cut out, doubled, or overwritten. */
export const brokenSample: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(...SAMPLES),
    fc.nat(),
    fc.nat(40),
    fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom("", ",", "(", '"', "\n", "\r\n  ", "2x4", "-", "ring a = b", "\u0000", "°"),
    ),
  )
  .map(([text, at, length, insert]) => {
    const from = at % (text.length + 1);
    return text.slice(0, from) + insert + text.slice(from + length);
  });

const PROPERTIES = ["thickness", "width", "length", "count", "inside width", "overall depth", "top", "left"];

/** A sample, or the example of every form, some of whose values are asked of other things, or of themselves. */
export const crossedPlan: fc.Arbitrary<string> = fc
  .tuple(
    fc.oneof(
      fc.constantFrom(...SAMPLES),
      fc.array(form, { minLength: 1, maxLength: 12 }).map((f) => f.join("\n")),
    ),
    fc.array(fc.tuple(fc.nat(), fc.constantFrom(...PROPERTIES), fc.nat()), { minLength: 1, maxLength: 6 }),
  )
  .map(([text, changes]) => {
    const names = [...text.matchAll(/^(?:[a-z]+) ([a-z][a-z0-9-]*|\d+x\d+)/gm)].map((m) => m[1]!);
    return changes.reduce((plan, [which, property, of]) => {
      const values = [...plan.matchAll(/(?<![#\w-])\d+(?:-\d+\/\d+|\/\d+)?(?:"|mm|°)?(?![\w/-])/g)];
      const value = values[which % values.length];
      if (!value || names.length === 0) return plan;
      const asked = `${property} of ${names[of % names.length]}`;
      return plan.slice(0, value.index) + asked + plan.slice(value.index + value[0].length);
    }, text);
  });

/** Bytes read as UTF-8, whatever they are. */
const anyBytes: fc.Arbitrary<string> = fc
  .uint8Array({ maxLength: 400 })
  .map((bytes) => new TextDecoder("utf-8").decode(bytes));

export const anyText: fc.Arbitrary<string> = fc.oneof(
  anyBytes,
  fc.string({ unit: "binary", maxLength: 300 }),
  madePlan,
  brokenSample,
  crossedPlan,
);
