/** Finds plan files: those named, and all `*.sawbuck` below the folders named. */
import { readdirSync, statSync } from "node:fs";
import { join, normalize } from "node:path";

export interface Found {
  readonly files: readonly string[];
  /** What could not be read, in words. */
  readonly refused: readonly string[];
}

/** Folders that hold no plans of one's own. */
const PASSED_OVER = new Set(["node_modules", "dist"]);

export function findPlans(names: readonly string[]): Found {
  const files: string[] = [];
  const refused: string[] = [];
  for (const name of names) {
    const kind = kindOf(name);
    if (kind === "folder") files.push(...below(name, refused));
    else if (kind === "file") files.push(normalize(name));
    else refused.push(`${name}: ${kind}`);
  }
  return { files: [...new Set(files)], refused };
}

function kindOf(name: string): string {
  try {
    const stat = statSync(name);
    if (stat.isDirectory()) return "folder";
    return stat.isFile() ? "file" : "it is not an ordinary file";
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EACCES"
      ? "it may not be read"
      : "there is no such file";
  }
}

function below(folder: string, refused: string[]): string[] {
  try {
    const entries = readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
    return entries.flatMap((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory())
        return entry.name.startsWith(".") || PASSED_OVER.has(entry.name) ? [] : below(path, refused);
      return entry.isFile() && entry.name.endsWith(".sawbuck") ? [path] : [];
    });
  } catch {
    refused.push(`${folder}: it may not be read`);
    return [];
  }
}
