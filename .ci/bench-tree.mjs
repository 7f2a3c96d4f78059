// npm run bench:tree [-- --plans N] [-- --jobs N]: how long `sawbuck check` takes over a folder of plans. Nothing here fails on a slow machine.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { build } from "esbuild";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const { values } = parseArgs({ options: { plans: { type: "string" }, jobs: { type: "string" } } });
const plans = Number(values.plans ?? 1000);
const { status: built } = spawnSync(process.execPath, [".ci/build.mjs", "cli"], { stdio: "inherit" });
if (built !== 0) process.exit(built ?? 1);
await build({
  entryPoints: ["test/bench/tree/plans.ts"],
  bundle: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  outfile: "dist/bench-tree.js",
});
const { SHOP, treePlan } = await import("../dist/bench-tree.js");

const folder = mkdtempSync(join(tmpdir(), "sawbuck-tree-"));
try {
  writeFileSync(join(folder, "yard.sawbuck"), SHOP);
  for (let i = 0; i < plans; i++)
    writeFileSync(join(folder, `plan-${String(i).padStart(5, "0")}.sawbuck`), treePlan(i));
  const jobs = values.jobs ? ["--jobs", values.jobs] : [];
  const before = performance.now();
  const { status, stdout } = spawnSync(process.execPath, ["dist/cli.js", "check", folder, ...jobs], {
    encoding: "utf8",
    maxBuffer: 2 ** 30,
  });
  const seconds = (performance.now() - before) / 1000;
  const checked = stdout.split("\n").filter((line) => line.startsWith(folder)).length;
  const cores = `${availableParallelism()} cores${values.jobs ? `, --jobs ${values.jobs}` : ""}`;
  console.log(`what                      budget              measured`);
  console.log(
    `${plans} plans of 200 lines  30 s on two cores   ${seconds.toFixed(1)} s on ${cores}; ${checked - 1} plans told of, exit ${status}`,
  );
} finally {
  rmSync(folder, { recursive: true });
}
