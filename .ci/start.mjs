// npm start [-- FILE]: builds what is missing, checks a plan, prints its cut list and layouts, and writes the sheet.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const plan = resolve(process.argv[2] ?? join(root, "samples/salad-trough.sawbuck"));
const cli = join(root, "dist/cli.js");

if (!existsSync(cli)) run([join(root, ".ci/build.mjs")]);
const sheet = join(root, "dist/sheets", `${basename(plan, ".sawbuck")}.html`);
mkdirSync(join(root, "dist/sheets"), { recursive: true });

const checked = run([cli, "check", plan]);
if (checked === 2) process.exit(2);
console.log();
run([cli, "sheet", plan]);
run([cli, "sheet", plan, "--format", "html", "--out", sheet]);
process.exit(checked);

function run(args) {
  const { status } = spawnSync(process.execPath, args, { stdio: "inherit" });
  if (status === null) process.exit(2);
  return status;
}
