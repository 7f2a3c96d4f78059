// npm run bench: builds what is measured, then prints each figure beside its budget. Nothing here fails on a slow machine.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { esbuildPageScripts } from "./page-scripts.mjs";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
// Packing builds too.
const script = existsSync("dist/sawbuck.vsix") ? "build" : "package";
const { status: built } = spawnSync("npm", ["run", "--silent", script], { stdio: "inherit" });
if (built !== 0) process.exit(built ?? 1);
await build({
  entryPoints: ["test/bench/bench.ts"],
  bundle: true,
  plugins: [esbuildPageScripts],
  platform: "node",
  format: "cjs",
  target: "node20",
  outfile: "dist/bench.js",
});
const { status } = spawnSync(process.execPath, ["--expose-gc", "--max-semi-space-size=64", "dist/bench.js"], {
  stdio: "inherit",
});
process.exit(status ?? 1);
