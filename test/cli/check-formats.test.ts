/** `sawbuck check` for programs: SARIF by its schema, commands of a GitHub workflow. Needs dist/cli.js. */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Ajv from "ajv";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { CHECKS } from "../../server/checks";
// As the package @microsoft/jest-sarif 1.0.0-beta.0 (MIT) ships it: the schema of OASIS SARIF 2.1.0, unchanged.
import SCHEMA from "../published/sarif-2.1.0-rtm.5.json";
import { runCli } from "./run";

// It is of draft 4; of what it uses, only the two names at its head mean something else to later ones.
const { $schema: _, id: __, ...DEFINED } = SCHEMA;

const ROOT = join(__dirname, "../..");
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-formats-"));
  cpSync(join(ROOT, "samples"), join(folder, "samples"), { recursive: true });
  mkdirSync(join(folder, "empty"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const check = (format: string, ...names: string[]) =>
  runCli(["check", "--format", format, "--jobs", "2", ...names], { cwd: folder });

interface Region {
  readonly startLine: number;
  readonly startColumn: number;
  readonly endLine: number;
  readonly endColumn: number;
}
interface Location {
  readonly physicalLocation: { readonly artifactLocation: { readonly uri: string }; readonly region: Region };
}
interface Result {
  readonly ruleId: string;
  readonly ruleIndex: number;
  readonly level: string;
  readonly message: { readonly text: string };
  readonly locations: readonly Location[];
  readonly partialFingerprints: Readonly<Record<string, string>>;
  readonly suppressions?: readonly { readonly kind: string; readonly justification: string }[];
  readonly fixes?: readonly {
    readonly artifactChanges: readonly {
      readonly artifactLocation: { readonly uri: string };
      readonly replacements: readonly {
        readonly deletedRegion: Region;
        readonly insertedContent?: { readonly text: string };
      }[];
    }[];
  }[];
  readonly properties: { readonly class: string };
}
interface Run {
  readonly tool: { readonly driver: { readonly rules: readonly { readonly id: string }[] } };
  readonly results: readonly Result[];
  readonly invocations: readonly {
    readonly executionSuccessful: boolean;
    readonly toolExecutionNotifications: readonly {
      readonly level: string;
      readonly message: { text: string };
    }[];
  }[];
}

/** The one run, after the whole was held to the schema. */
function runIn(text: string): Run {
  const log = JSON.parse(text);
  expect(JSON.stringify(log, null, 2)).toBe(text.trimEnd());
  const validate = new Ajv({ strict: false, validateFormats: false, unicodeRegExp: false }).compile(DEFINED);
  validate(log);
  expect(validate.errors ?? []).toEqual([]);
  expect(log.runs).toHaveLength(1);
  return log.runs[0];
}

const lineAt = (uri: string, line: number): string =>
  readFileSync(join(folder, decodeURIComponent(uri)), "utf8").split("\n")[line - 1]!;

describe("SARIF", () => {
  test("of all samples and mistakes is what its schema says, with every problem in its place", () => {
    const { stdout, stderr, status } = check("sarif", "samples");
    expect([stderr, status]).toEqual(["", 1]);
    const run = runIn(stdout);
    expect(run.tool.driver.rules.map(({ id }) => id)).toEqual(CHECKS.map(({ code }) => code));
    const { plans } = JSON.parse(check("json", "samples").stdout);
    const told = plans.flatMap(({ problems, accepted }: { problems: unknown[]; accepted: unknown[] }) => [
      ...problems,
      ...accepted,
    ]);
    expect(run.results.map((r) => [r.ruleId, r.locations[0]!.physicalLocation.region.startLine])).toEqual(
      told.map((p: { code: string; place: { line: number } }) => [p.code, p.place.line]),
    );
    for (const { ruleId, ruleIndex, level, properties } of run.results) {
      expect(run.tool.driver.rules[ruleIndex]!.id).toBe(ruleId);
      expect(level).toBe(
        { error: "error", hazard: "error", warning: "warning", hint: "note" }[properties.class],
      );
    }
    const prints = run.results.map((r) => r.partialFingerprints["sawbuckProblem/v1"]);
    expect(new Set(prints).size).toBe(run.results.length);
    expect(stdout).not.toContain(folder);
    expect(stdout).not.toContain(ROOT);
    expect(run.invocations[0]!.executionSuccessful).toBe(true);
    expect(run.invocations[0]!.toolExecutionNotifications.length).toBe(
      plans.reduce((n: number, p: { notChecked: unknown[] }) => n + p.notChecked.length, 0),
    );
  });

  test("tells what is accepted as suppressed, with the reason", () => {
    const [result] = runIn(check("sarif", "samples/cold-frame.sawbuck").stdout).results;
    expect(result).toMatchSnapshot();
  });

  test("has cures that mend the text they are for", () => {
    writeFileSync(join(folder, "bad.sawbuck"), '# über 🪚\nprat leg 4 of 2x4, length 9"\n');
    const [result] = runIn(check("sarif", "bad.sawbuck").stdout).results;
    expect(result).toMatchSnapshot();
    const [change] = result!.fixes![0]!.artifactChanges;
    const [{ deletedRegion, insertedContent }] = change!.replacements as [
      { deletedRegion: Region; insertedContent: { text: string } },
    ];
    const line = lineAt(change!.artifactLocation.uri, deletedRegion.startLine);
    expect(
      line.slice(0, deletedRegion.startColumn - 1) +
        insertedContent.text +
        line.slice(deletedRegion.endColumn - 1),
    ).toBe('part leg 4 of 2x4, length 9"');
  });

  test("keeps a problem's fingerprint where lines above it come and go", () => {
    const of = (text: string) => {
      writeFileSync(join(folder, "moved.sawbuck"), text);
      return runIn(check("sarif", "moved.sawbuck").stdout).results[0]!;
    };
    const [before, after] = [of("prat a of 2x4\nnote one\n"), of("# more\n\nprat a of 2x4\nnote one\n")];
    expect(after.locations).not.toEqual(before.locations);
    expect(after.partialFingerprints).toEqual(before.partialFingerprints);
  });

  test("names strange files by their addresses", () => {
    const names = ["a b%20#c?.sawbuck", "été.sawbuck", "two\nlines.sawbuck", "x:y, z.sawbuck"];
    mkdirSync(join(folder, "strange"));
    for (const name of names) writeFileSync(join(folder, "strange", name), "prat a of 2x4\n");
    const { results } = runIn(check("sarif", "strange").stdout);
    const uris = results.map((r) => r.locations[0]!.physicalLocation.artifactLocation.uri);
    for (const uri of uris) expect(uri).toMatch(/^strange\/[\w.~!*'()%-]+$/);
    expect(uris.map((uri) => decodeURIComponent(uri).slice("strange/".length)).sort()).toEqual(names.sort());
    expect(check("github", "strange").stdout).toMatchSnapshot();
  });

  test("tells what was not read, also by its whole path, and that the run did not succeed", () => {
    const { stdout, status } = check("sarif", join(folder, "nowhere.sawbuck"), "empty");
    expect(status).toBe(2);
    expect(stdout).not.toContain(folder);
    expect(runIn(stdout).invocations).toEqual([
      {
        executionSuccessful: false,
        toolExecutionNotifications: [
          { level: "error", message: { text: "nowhere.sawbuck: there is no such file" } },
        ],
      },
    ]);
    const none = check("sarif", "empty");
    expect([none.status, runIn(none.stdout).results]).toEqual([2, []]);
  });
});

describe("commands of a GitHub workflow", () => {
  test("tell every problem, what is accepted, and at the end how many", () => {
    const { stdout, status } = check(
      "github",
      "samples/cold-frame.sawbuck",
      "samples/mistakes/screw-pokes-through.sawbuck",
      "samples/mistakes/never-used.sawbuck",
      "samples/mistakes/will-rot.sawbuck",
    );
    expect(status).toBe(1);
    expect(stdout).toMatchSnapshot();
  });

  test("tell what was not read", () => {
    expect(check("github", "nowhere,100%.sawbuck")).toMatchSnapshot();
    expect(check("github", "empty")).toMatchSnapshot();
  });
});
