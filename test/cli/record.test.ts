/** The record of all commands: nothing that can be asked is left out, and all of it runs. Needs dist/cli.js. */
import { describe, expect, test } from "vitest";
import { RUNS, recorded } from "../../.ci/record-commands.mjs";
import { version } from "../../package.json";
import { COMMANDS } from "../../server/cli/usage";
import { tables } from "../../server/sheet/csv";

const runsOf = (name: string) => RUNS.map(({ words }) => words).filter(([command]) => command === name);

describe.each(COMMANDS.map((command) => [command.name, command] as const))("%s", (name, { usage }) => {
  test("is run with each of its options", () => {
    expect(runsOf(name)).not.toEqual([]);
    const options = new Set(usage.match(/--[a-z]+/g));
    const used = runsOf(name).flat();
    expect([...options].filter((option) => !used.includes(option))).toEqual([]);
  });

  test("is run with each choice of an option", () => {
    const choices = [...usage.matchAll(/(--[a-z]+) ([A-Za-z0-9]+(?:\|[A-Za-z0-9]+)+)/g)]
      .filter(([, , among]) => among !== among!.toUpperCase())
      .flatMap(([, option, among]) => among!.split("|").map((choice) => `${option} ${choice}`));
    const asked = runsOf(name).map((words) => `${words.join(" ")} `);
    expect(choices.filter((choice) => !asked.some((words) => words.includes(`${choice} `)))).toEqual([]);
  });
});

test("every table is printed", () => {
  const asked = RUNS.map(({ words }) => words.join(" "));
  expect(tables.filter((table) => !asked.some((words) => words.includes(`--table ${table} `)))).toEqual([]);
});

// All of them take minutes: `npm run record` makes those.
test("runs end as they should, and stand in the record with what they print: the first of each command", async () => {
  const first = RUNS.filter((run) => RUNS.find(({ words }) => words[0] === run.words[0]) === run);
  const { text, wrong } = await recorded(12, first);
  expect(wrong).toEqual([]);
  expect(text).not.toMatch(/\n\s+at .*:\d+:\d+|fault of Sawbuck/);
  const told = text.split("\n\n$ ");
  expect(told.length).toBe(first.length);
  expect(told.filter((one) => !/\nends with [012]\n*$/.test(one))).toEqual([]);
  expect(told[0]).toBe(`$ sawbuck --version\n${version}\nends with 0`);
  const served = told.find((one) => one.startsWith("sawbuck lsp"))!;
  for (const method of ["initialize", "textDocument/publishDiagnostics", "shutdown", "exit"])
    expect(served).toContain(`"method":"${method}"`);
});
