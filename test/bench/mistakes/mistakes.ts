/**
 * npm run bench:mistakes: how many mistakes that matter the checks find. Every sample is changed in one place at a time;
 * a change is caught when a new problem points at the changed entry or at one that depends on it, and harmless only when
 * an independent judge finds that the plan can still be built. Prints a table per kind and every miss, and with --harmless
 * what was judged so. Seeded.
 */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import type { Entry } from "../../../grammar/tree";
import { judge, type Problem, problemText } from "../../../server/checks";
import { load, usesOf } from "../../../server/plan";
import { type Worked, work } from "../../../server/worked";
import { random } from "../../published/random";
import { type Kind, type Mutant, mutantsOf, namesOf } from "./mutants";
import { broken, joinedIn, ready } from "./oracle";

const SAMPLES = resolve("samples");
const SEED = 20261125;

interface Read {
  readonly worked: Worked;
  readonly problems: readonly Problem[];
}

function read(file: string, text: string): Read {
  const worked = work(
    load(file, text, (path, from) => {
      const other = resolve(dirname(from), path);
      return { file: other, text: readFileSync(other, "utf8") };
    }),
  );
  return { worked, problems: judge(worked).problems.filter((p) => p.class !== "hint") };
}

/** Entries that lean on these names, and what they declare or place in turn. */
function dependents(entries: readonly Entry[], names: readonly string[]): Set<string> {
  const all = new Set(names);
  for (let before = -1; before !== all.size; ) {
    before = all.size;
    for (const entry of entries) {
      const leans = usesOf(entry).some(
        (u) => all.has(u.name.text) || all.has(u.name.text.replace(/e?s$/, "")),
      );
      if (leans) for (const name of namesOf(entry)) all.add(name.replace(/e?s$/, ""));
    }
  }
  return all;
}

function isCaught(mutant: Mutant, before: Read, after: Read): boolean {
  const known = new Set(before.problems.map((p) => p.code + p.says));
  const fresh = after.problems.filter(
    (p) => !known.has(p.code + p.says) || after.problems.length > before.problems.length,
  );
  const main = after.worked.loaded.files[0]!;
  const depend = dependents(main.tree.entries, mutant.names);
  const concerns = (at: { readonly file: string; readonly start: number; readonly end: number }): boolean => {
    if (at.file !== main.file) return false;
    if (mutant.at && at.start >= mutant.at.start && at.end <= mutant.at.end) return true;
    const entry = main.tree.entries.find((e) => at.start >= e.start && at.end <= e.end);
    if (!entry) return false;
    return (
      namesOf(entry).some((n) => depend.has(n) || depend.has(n.replace(/e?s$/, ""))) ||
      usesOf(entry).some(
        (u) => mutant.names.includes(u.name.text.replace(/e?s$/, "")) || depend.has(u.name.text),
      )
    );
  };
  return fresh.some(
    (p) => concerns(p.at) || p.related.some((r) => concerns(r.at)) || p.about.some((n) => depend.has(n)),
  );
}

const KINDS: readonly Kind[] = [
  "length",
  "angle",
  "relation",
  "count",
  "stock",
  "screw",
  "dropped",
  "doubled",
];

await ready();
const tally = new Map(KINDS.map((k) => [k, { made: 0, caught: 0, harmless: 0, missed: 0 }]));
const misses: string[] = [];
let onOriginals = 0;
for (const name of readdirSync(SAMPLES)
  .filter((n) => n.endsWith(".sawbuck"))
  .sort()) {
  const file = resolve(SAMPLES, name);
  const text = readFileSync(file, "utf8");
  const before = read(file, text);
  if (before.worked.pieces.all.length === 0) continue;
  onOriginals += before.problems.length;
  for (const p of before.problems)
    console.log(
      `on the original ${name}: ${p.code} ${problemText(p.code, p, before.worked.settings.display)}`,
    );
  const joined = joinedIn(before.worked);
  for (const mutant of mutantsOf(text, random(SEED))) {
    const row = tally.get(mutant.kind)!;
    row.made++;
    const after = read(file, mutant.text);
    if (isCaught(mutant, before, after)) {
      row.caught++;
      continue;
    }
    const why = broken(after.worked, joined);
    if (why === undefined) {
      row.harmless++;
      if (process.argv.includes("--harmless"))
        console.log(`harmless: ${name}:${mutant.line} ${mutant.kind}: ${mutant.what}`);
    } else {
      row.missed++;
      misses.push(`${name}:${mutant.line} ${mutant.kind}: ${mutant.what} — ${why}`);
    }
  }
}
console.log("| kind | mutants | caught | harmless | missed | caught of those not harmless |");
console.log("| --- | --- | --- | --- | --- | --- |");
const line = (kind: string, t: { made: number; caught: number; harmless: number; missed: number }): void =>
  console.log(
    `| ${kind} | ${t.made} | ${t.caught} | ${t.harmless} | ${t.missed} | ${((100 * t.caught) / Math.max(1, t.caught + t.missed)).toFixed(1)}% |`,
  );
for (const [kind, t] of tally) line(kind, t);
const sum = (key: "made" | "caught" | "harmless" | "missed"): number =>
  [...tally.values()].reduce((s, t) => s + t[key], 0);
line("all", { made: sum("made"), caught: sum("caught"), harmless: sum("harmless"), missed: sum("missed") });
console.log(`problems on the originals: ${onOriginals}`);
for (const miss of misses) console.log(`missed: ${miss}`);
