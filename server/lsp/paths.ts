/** Paths as plans write them: with `/`, seen from the file that names another. */
import { isFullPath, pathFromRoot } from "./addresses";

/** How a file names another: in full where it was named so before, else seen from its own folder, with `./` where that was written. */
export function pathBetween(from: string, to: string, before: string): string {
  const whole = pathFromRoot(to);
  if (isFullPath(before)) return whole;
  const [here, there] = [partsOf(pathFromRoot(from)).slice(0, -1), partsOf(whole)];
  const same = here.findIndex((part, i) => part !== there[i]);
  const shared = same < 0 ? here.length : same;
  // On another drive nothing leads there but the whole of it.
  if (shared === 0 && here.length > 0) return whole;
  const path = [...here.slice(shared).map(() => ".."), ...there.slice(shared)].join("/");
  return before.startsWith("./") && !path.startsWith("..") ? `./${path}` : path;
}

const partsOf = (file: string): string[] => file.split(/[\\/]/);
