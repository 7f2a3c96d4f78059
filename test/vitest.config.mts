import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  test: { include: ["test/**/*.test.ts"], testTimeout: 900_000, hookTimeout: 60_000, pool: "threads" },
});
