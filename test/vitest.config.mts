import { configDefaults, defineConfig } from "vitest/config";
import { vitePageScripts } from "../.ci/page-scripts.mjs";
import { LongestFirst } from "./longest-first.mts";
import { StillRunning } from "./still-running.mts";

const root = new URL("..", import.meta.url).pathname;

/** Tests of the client alone: each has a stand-in of its own for the editor. */
const STAND_INS = "test/e2e/client-*.test.ts";

export default defineConfig({
  plugins: [vitePageScripts],
  root,
  // As in the bundle: see .ci/build.mjs.
  resolve: { alias: { pdfkit: `${root}node_modules/pdfkit/js/pdfkit.browser.mjs` } },
  // Nothing here is timed, so that every core may be busy.
  test: {
    testTimeout: 900_000,
    hookTimeout: 60_000,
    pool: "threads",
    maxWorkers: "100%",
    setupFiles: ["test/fast-check.ts"],
    reporters: ["default", new StillRunning()],
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        extends: true,
        // Read and compiled once for each thread: anew for each file it is half the time of all tests.
        test: {
          name: "all",
          include: ["test/**/*.test.ts"],
          exclude: [...configDefaults.exclude, STAND_INS],
          isolate: false,
        },
      },
      { extends: true, test: { name: "stand-ins", include: [STAND_INS] } },
    ],
  },
});
