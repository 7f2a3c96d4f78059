/** `npm run bench:layout`: prints how layouts on boards and sheets do beside their targets, set by set. */
import { orLibrary, triplets } from "./bins";
import { addedRow, binRows, planRows } from "./boards";
import * as panels from "./panels";
import { printTable, type Row } from "./table";

const FOLDER = `${process.cwd()}/../shared/bench`;

/** Counted work for each job on sheets. */
const PANEL_EFFORT = 2_500_000_000;

const seed = asked("--seed", 0);
const plans = asked("--plans", 200);
// Code that has run before is quicker: what is measured is not the first of its kind.
planRows(seed + plans, 10);
const rows: Row[] = [];
for (const n of [1, 2, 3, 4]) {
  const instances = orLibrary(n, FOLDER);
  if (instances) rows.push(binRows(`OR-Library binpack${n}`, "20 of 20, each under 100 ms", instances));
  else console.log(`OR-Library binpack${n} is skipped: it is not in ${FOLDER}.`);
}
for (const [items, limit, many] of [
  [60, 1, 10],
  [120, 1, 10],
  [249, 3, 6],
  [501, 10, 4],
] as const) {
  const instances = Array.from({ length: many }, (_, i) => triplets(items, seed + i));
  rows.push(binRows(`triplets of ${items} items`, `all, each under ${limit} s`, instances));
}
rows.push(...planRows(seed, plans), addedRow(seed, Math.min(plans, 40)));
if (panels.guillotineSets().length === 0)
  console.log(`gcut1 to gcut12 are skipped: they are not in ${FOLDER}.`);
else rows.push(...panels.unlimitedRows(), ...panels.binRows(PANEL_EFFORT));
rows.push(...panels.planRows(seed + 1, Math.min(plans, 60), PANEL_EFFORT));

if (process.argv.includes("--details")) for (const { details } of rows) console.log(details.join("\n"));
printTable(rows);

/** A whole number after that word. */
function asked(word: string, otherwise: number): number {
  const at = process.argv.indexOf(word);
  const n = at < 0 ? otherwise : Number(process.argv[at + 1]);
  if (!Number.isInteger(n) || n < 0) throw new Error(`${word} takes a whole number`);
  return n;
}
