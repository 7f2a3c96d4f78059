import { defineConfig } from "vitest/config";
import { vitePageScripts } from "../.ci/page-scripts.mjs";

export default defineConfig({
  plugins: [vitePageScripts],
  root: new URL("..", import.meta.url).pathname,
  test: { include: ["test/**/*.test.ts"], testTimeout: 900_000, hookTimeout: 60_000, pool: "threads" },
});
