/** `sawbuck check`: every problem of every plan, and what was not looked at. */
import { once } from "node:events";
import process from "node:process";
import { githubWriter } from "./check-formats/github";
import { jsonWriter } from "./check-formats/json";
import { sarifWriter } from "./check-formats/sarif";
import { textWriter } from "./check-formats/text";
import type { Writer } from "./check-formats/writer";
import { checkedAll } from "./check-threads";
import { type Command, FINE, FOUND, REFUSED, refuseAsked, standsInTheWay } from "./command";
import { findPlans } from "./find";
import { effortIn, type Read, readOptions, shopIn, type Wrong } from "./options";

export const CHECK: Command = {
  name: "check",
  usage: `  sawbuck check FILES|FOLDERS [--shop FILE] [--format text|json|sarif|github] [--jobs N]
      Finds the mistakes it can name. Exit 0 when there are no errors and no hazards,
      1 when there are, 2 when something cannot be read.
`,
  run: check,
};

const WRITERS = {
  text: textWriter,
  json: jsonWriter,
  sarif: sarifWriter,
  github: githubWriter,
} as const satisfies Record<string, () => Writer>;
const TAKES = { valued: ["shop", "effort", "jobs"], choices: { format: Object.keys(WRITERS) } };

async function check(words: readonly string[]): Promise<number> {
  const asked = readOptions("check", TAKES, words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, CHECK);
  const effort = asked.options.effort === undefined ? undefined : effortIn(asked);
  if (typeof effort === "object") return refuseAsked(effort.wrong, CHECK);
  const jobs = jobsIn(asked);
  if (typeof jobs === "object") return refuseAsked(jobs.wrong, CHECK);
  if (asked.files.length === 0) return refuseAsked("“check” wants files or folders.", CHECK);
  const { files, refused } = findPlans(asked.files);
  const format = (asked.options.format ?? "text") as keyof typeof WRITERS;
  const writer = WRITERS[format]();
  const unread = [...refused];
  await written(writer.begin());
  for await (const plan of checkedAll(
    files,
    { shop: shopIn(asked), effort, details: format === "sarif" },
    jobs,
  )) {
    if ("refused" in plan) {
      unread.push(`${plan.file}: ${plan.refused}`);
      continue;
    }
    // What is found stands also where nobody reads to the end.
    if (plan.report.problems.some(standsInTheWay)) process.exitCode = FOUND;
    await written(writer.plan(plan.report, plan.details));
  }
  if (files.length === 0 && refused.length === 0) unread.push("no *.sawbuck file was found there");
  await written(writer.end(unread));
  for (const line of unread) process.stderr.write(`sawbuck: ${line}\n`);
  if (unread.length > 0) return REFUSED;
  return process.exitCode === FOUND ? FOUND : FINE;
}

/** Waits until it is on its way, so that a slow reader holds the work up and memory stays small. */
async function written(text: string): Promise<void> {
  if (!process.stdout.write(text)) await once(process.stdout, "drain");
}

/** On how many cores; undefined where it is not said. */
function jobsIn({ options: { jobs } }: Read): number | undefined | Wrong {
  if (jobs === undefined || /^[1-9]\d{0,2}$/.test(jobs)) return jobs === undefined ? undefined : Number(jobs);
  return { wrong: `--jobs is a whole number from 1 to 999; “${jobs}” is none.` };
}
