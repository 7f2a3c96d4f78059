/** What can be read off a sample plan's text without working it out. */

/** The files of the folder `samples`, which cannot be listed everywhere. */
export const SHIPPED: readonly string[] = [
  "cold-frame.sawbuck",
  "hillside-shop.sawbuck",
  "post-stand.sawbuck",
  "potting-bench.sawbuck",
  "reading-shelf.sawbuck",
  "salad-trough.sawbuck",
  "school-gate.sawbuck",
  "slope-planter.sawbuck",
  "tree-seat.sawbuck",
  "yard-measures.sawbuck",
];

/** The title after `plan`, or undefined for a file that is not a plan. */
export function titleOf(text: string): string | undefined {
  return /^plan[ \t]+(\S.*?)[ \t]*$/m.exec(text)?.[1];
}

/** The files beside the plan that it cannot do without: its shop file and what it brings in. */
export function filesNeeded(text: string): readonly string[] {
  const names = [...text.matchAll(/^(?:shop|bring)[ \t]+(\S.*?)[ \t]*$/gm)].map((found) => found[1]!);
  return [...new Set(names)];
}

/** A name that is not taken: `trough.sawbuck`, `trough-2.sawbuck`, `trough-3.sawbuck` … */
export function freeName(name: string, taken: ReadonlySet<string>): string {
  const dot = name.lastIndexOf(".");
  let free = name;
  for (let count = 2; taken.has(free); count++) free = `${name.slice(0, dot)}-${count}${name.slice(dot)}`;
  return free;
}
