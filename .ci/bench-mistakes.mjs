// npm run bench:mistakes: changes the samples in one place at a time, and prints how many of the mistakes are found.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { esbuildPageScripts } from "./page-scripts.mjs";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
await build({
  entryPoints: ["test/bench/mistakes/mistakes.ts"],
  bundle: true,
  plugins: [esbuildPageScripts],
  platform: "node",
  format: "esm",
  target: "node20",
  external: ["manifold-3d"],
  outfile: "dist/bench-mistakes.mjs",
});
const { status } = spawnSync(process.execPath, ["dist/bench-mistakes.mjs", ...process.argv.slice(2)], {
  stdio: "inherit",
});
process.exit(status ?? 1);
