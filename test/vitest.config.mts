import { defineConfig } from "vitest/config";
import { vitePageScripts } from "../.ci/page-scripts.mjs";
import { LongestFirst } from "./longest-first";

const root = new URL("..", import.meta.url).pathname;

export default defineConfig({
  plugins: [vitePageScripts],
  root,
  // As in the bundle: see .ci/build.mjs.
  resolve: { alias: { pdfkit: `${root}node_modules/pdfkit/js/pdfkit.browser.mjs` } },
  // Nothing here is timed, so that every core may be busy.
  test: {
    include: ["test/**/*.test.ts"],
    testTimeout: 900_000,
    hookTimeout: 60_000,
    pool: "threads",
    // Read and compiled once for each thread: anew for each file it is half the time of all tests.
    isolate: false,
    maxWorkers: "100%",
    sequence: { sequencer: LongestFirst },
  },
});
