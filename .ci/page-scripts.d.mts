import type { Plugin } from "vitest/config";

export const vitePageScripts: Plugin;
export function pageScript(file: string): string;
