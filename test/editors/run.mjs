// Runs the built language server in editors other than the one the extension is for.
//
//   node test/editors/run.mjs [--only PART-OF-A-NAME]
//
// Needs dist/ (npm run build) and the editors. Every other *.mjs of this folder that exports `scenarios` takes part: each has a
// `name` and a `run`, which throws when it fails, or gives "not offered".
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";

const { values: options } = parseArgs({ options: { only: { type: "string", default: "" } } });
const here = fileURLToPath(new URL(".", import.meta.url));

process.exitCode = await main();

async function main() {
  const counts = { held: 0, failed: 0, "not offered": 0 };
  for (const { name, run } of (await all()).filter((one) => one.name.includes(options.only))) {
    const outcome = await outcomeOf(name, run);
    counts[outcome]++;
  }
  if (counts["not offered"] > 0) console.log(`${counts["not offered"]} not offered`);
  console.log(`${counts.held} passed, ${counts.failed} failed`);
  return counts.failed === 0 && counts.held > 0 ? 0 : 1;
}

async function all() {
  const files = readdirSync(here).filter((file) => file.endsWith(".mjs") && file !== "run.mjs");
  const modules = await Promise.all(files.sort().map((file) => import(`./${file}`)));
  return modules.flatMap(({ scenarios = [] }) => scenarios);
}

async function outcomeOf(name, run) {
  try {
    const outcome = (await run()) === "not offered" ? "not offered" : "held";
    console.log(`${outcome.padEnd(11)}  ${name}`);
    return outcome;
  } catch (error) {
    console.log(`${"failed".padEnd(11)}  ${name}`);
    console.log(
      String(error.stack ?? error)
        .split("\n")
        .slice(0, 30)
        .map((line) => `        ${line.slice(0, 300)}`)
        .join("\n"),
    );
    return "failed";
  }
}
