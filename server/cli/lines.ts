/**
 * `sawbuck lines`: what a plan comes to, one fact a line, for `git diff` to compare. Git hands a version of a plan over as
 * a file in a folder for such things, far from what the plan names: that is then read where the plan stands today.
 */
import { basename, normalize, resolve, sep } from "node:path";
import process from "node:process";
import { linesOf } from "../exchange";
import { diskReader, readPlan } from "../lsp/disk";
import { plansKnown, repositoryAt } from "../lsp/git";
import { evaluate } from "../service";
import { type Command, FINE, refuse, refuseAsked } from "./command";
import { readOptions, shopIn } from "./options";

export const LINES: Command = {
  name: "lines",
  usage: `  sawbuck lines FILE [--shop FILE]
      Prints what a plan comes to, one fact a line and no prices, for git to compare.
`,
  run: lines,
};

function lines(words: readonly string[]): number {
  const asked = readOptions("lines", { valued: ["shop"] }, words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, LINES);
  const [name, second] = asked.files;
  if (name === undefined || second !== undefined) return refuseAsked("“lines” takes one plan file.", LINES);
  const file = normalize(name);
  const read = readPlan(file);
  if ("refused" in read) return refuse(`${file}: ${read.refused}`);
  process.stdout.write(linesOf(evaluate(placeOf(file), read.text, diskReader, shopIn(asked))));
  return FINE;
}

/** Where a file that lies outside the folder worked in belongs: to the one plan of that name in its repository. */
function placeOf(file: string): string {
  if (resolve(file).startsWith(process.cwd() + sep)) return file;
  const repository = repositoryAt(".");
  if ("refused" in repository) return file;
  // Older versions of git write the name behind letters of their own.
  const named = new Set([basename(file), basename(file).replace(/^[A-Za-z0-9]{6}_/, "")]);
  const [place, second] = plansKnown(repository.root).filter((path) => named.has(basename(path)));
  return place !== undefined && second === undefined ? normalize(place) : file;
}
