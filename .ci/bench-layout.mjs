// npm run bench:layout [-- --seed N] [-- --plans N] [-- --details]: how good layouts are, and how soon. Nothing here fails on a slow machine.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
await build({
  entryPoints: ["test/bench/layout/layout.ts"],
  bundle: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  outfile: "dist/bench-layout.js",
});
const { status } = spawnSync(process.execPath, ["dist/bench-layout.js", ...process.argv.slice(2)], {
  stdio: "inherit",
});
process.exit(status ?? 1);
