/** How the plans of the message tests are written, and shown in an inch plan and in a metric one. */
import type { Problem } from "../../server/checks";
import type { Reader } from "../../server/plan";
import { type Evaluated, evaluate } from "../../server/service";
import { layoutsOf } from "../laid-out";
import { run, told } from "./plans";

/** A plan's text. `UNITS` stands for its units clause; a plan without one is given a plan line of its own. */
export type Case =
  | string
  | {
      readonly text: string;
      /** Other files, by name. */
      readonly files?: Readonly<Record<string, string>>;
      /** The reader's own shop file, by its name among the files. */
      readonly shop?: string;
      /** What the snapshot shows in place of a text too long or too odd to show. */
      readonly shown?: string;
      /** With the layouts that so much counted work finds. */
      readonly effort?: number;
      /** Read just as it is, since what comes before it matters: not shown in both units. */
      readonly bare?: true;
    };

export type System = "inches" | "millimetres";

const UNITS: Readonly<Record<System, string>> = {
  inches: 'units inches to 1/16"',
  millimetres: "units millimetres to 1 mm",
};

export function textIn(c: Case, system: System): string {
  const text = typeof c === "string" ? c : c.text;
  if (typeof c !== "string" && c.bare) return text;
  if (text.includes("UNITS")) return text.replace("UNITS", UNITS[system]);
  return `plan Yard thing\n  ${UNITS[system]}\n${text}`;
}

export const readerOf = (c: Case): Reader => {
  const files = typeof c === "string" ? {} : (c.files ?? {});
  return (path) => {
    const text = Object.hasOwn(files, path) ? files[path] : undefined;
    return text === undefined ? { file: path, refused: "there is no such file" } : { file: path, text };
  };
};

/** The plan of a case, worked out. */
export function planOf(c: Case, system: System): Evaluated {
  const [text, read] = [textIn(c, system), readerOf(c)];
  const first = run(text, read, typeof c !== "string" && c.shop !== undefined ? { shop: c.shop } : {});
  const effort = typeof c === "string" ? undefined : c.effort;
  return effort === undefined
    ? first
    : evaluate(first.file, text, read, { layouts: layoutsOf(first, effort) });
}

/** The text with the problems found in it, as the snapshot holds them. */
export function shownCase(c: Case, plan: Evaluated): string {
  const text = typeof c === "string" ? c : (c.shown ?? c.text);
  const effort = typeof c === "string" || c.effort === undefined ? [] : [`| (laid out with ${c.effort})`];
  const shop = typeof c === "string" || c.shop === undefined ? undefined : c.files?.[c.shop];
  const own =
    shop === undefined
      ? []
      : ["| (in the reader's own shop)", ...shop.split("\n").map((line) => `|   ${line}`)];
  const quoted = text.split("\n").map((line) => `| ${line}`);
  const problems = plan.problems.map((p: Problem) => `${p.code} ${told(p, plan)}`);
  return [...quoted, ...own, ...effort, ...(problems.length > 0 ? problems : ["no problem"])].join("\n");
}

/** A text repeated until it is at least that long. */
export const manyOf = (text: string, length: number): string => text.repeat(Math.ceil(length / text.length));
