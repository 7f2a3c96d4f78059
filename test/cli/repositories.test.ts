/** What a repository of plans uses of this one: the hooks of pre-commit, the workflow, and what README.md says of them. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { COMMANDS, usageOf } from "../../server/cli/usage";

const ROOT = join(__dirname, "../..");
const { load } = createRequire(__filename)("js-yaml") as { load: (text: string) => unknown };
const read = (name: string): string => readFileSync(join(ROOT, name), "utf8");

interface Hook {
  readonly id: string;
  readonly entry: string;
  readonly language: string;
  readonly files: string;
}
interface Step {
  readonly name?: string;
  readonly run?: string;
}
interface Workflow {
  readonly on: {
    readonly workflow_call: { readonly inputs: Readonly<Record<string, { required?: boolean }>> };
  };
  readonly jobs: { readonly check: { readonly steps: readonly Step[] } };
}

const hooks = load(read(".pre-commit-hooks.yaml")) as Hook[];
const workflow = load(read(".github/workflows/check-plans.yml")) as Workflow;
const [config, caller] = [...read("README.md").matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, text]) =>
  load(text!),
) as [
  { repos: { rev: string; hooks: { id: string }[] }[] },
  { jobs: { plans: { uses: string; with: Record<string, unknown> } } },
];
const version = (JSON.parse(read("package.json")) as { version: string }).version;

/** Each command line's command, and its options. */
const isOffered = (line: string): void => {
  const [, name, rest] = /(?:sawbuck|cli\.js) ([a-z]+)(.*)$/m.exec(line)!;
  const command = COMMANDS.find((one) => one.name === name);
  expect(command, line).toBeDefined();
  for (const [, option] of rest!.matchAll(/(--[a-z]+)/g)) expect(usageOf([command!])).toContain(option);
};

describe("the hooks", () => {
  test("run commands that there are, on plan files", () => {
    for (const { entry, language, files } of hooks) {
      isOffered(entry);
      expect(language).toBe("node");
      expect(new RegExp(files).test("plans/a.sawbuck")).toBe(true);
      expect(new RegExp(files).test("plans/a.sawbuck.md")).toBe(false);
    }
  });

  test("are those that README.md names, at the version there is", () => {
    expect(config.repos[0]!.rev).toBe(`v${version}`);
    expect(config.repos[0]!.hooks.map(({ id }) => id)).toEqual(hooks.map(({ id }) => id));
  });

  test("are installed by packing a fresh clone, and run from the package alone", { timeout: 240_000 }, () => {
    const clone = mkdtempSync(join(tmpdir(), "sawbuck-clone-"));
    try {
      const listed = spawnSync("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"], {
        cwd: ROOT,
        encoding: "utf8",
      });
      for (const name of listed.stdout.split("\0").filter((n) => n && !/^test\/|\.png$/.test(n))) {
        mkdirSync(join(clone, dirname(name)), { recursive: true });
        cpSync(join(ROOT, name), join(clone, name));
      }
      symlinkSync(join(ROOT, "node_modules"), join(clone, "node_modules"));
      // pre-commit takes all of what this prints for the name of the package.
      const packed = spawnSync("npm", ["pack"], { cwd: clone, encoding: "utf8" });
      expect([packed.stdout, packed.status]).toEqual([`sawbuck-${version}.tgz\n`, 0]);
      spawnSync("tar", ["xzf", `sawbuck-${version}.tgz`], { cwd: clone });
      writeFileSync(join(clone, "a plan.sawbuck"), 'prat  leg 4 of 2x4, length 9"\n');
      const bin = (JSON.parse(read("package.json")) as { bin: { sawbuck: string } }).bin.sawbuck;
      const run = (entry: string) => {
        const words = entry.split(" ").slice(1);
        return spawnSync(process.execPath, [join(clone, "package", bin), ...words, "a plan.sawbuck"], {
          cwd: clone,
          encoding: "utf8",
        });
      };
      expect(run(hooks[0]!.entry)).toMatchObject({
        status: 1,
        stdout: expect.stringContaining("[unknown-entry]"),
      });
      expect(run(hooks[1]!.entry)).toMatchObject({ status: 0, stderr: "" });
    } finally {
      rmSync(clone, { recursive: true, force: true });
    }
  });
});

describe("the workflow", () => {
  const runs = workflow.jobs.check.steps.flatMap(({ run }) => run ?? []);

  test("runs commands and options that there are, and npm scripts", () => {
    const commands = runs.filter((run) => run.includes("cli.js"));
    expect(commands.map((run) => /cli\.js ([a-z]+ --\S+( \w+)?)/.exec(run)![1])).toEqual([
      "check --format github",
      "format --check",
      "check --format sarif",
    ]);
    commands.forEach(isOffered);
    expect(runs[0]).toBe("npm ci && npm run build");
  });

  test("puts nothing that its caller says into a command but by its environment", () => {
    expect(runs.filter((run) => run.includes("${{"))).toEqual([]);
  });

  test("is called by README.md with inputs that it has, all that it must have among them", () => {
    const { uses, with: given } = caller.jobs.plans;
    expect(uses).toBe(`OWNER/sawbuck/.github/workflows/check-plans.yml@v${version}`);
    const { inputs } = workflow.on.workflow_call;
    expect(Object.keys(given).filter((name) => !(name in inputs))).toEqual([]);
    const needed = Object.keys(inputs).filter((name) => inputs[name]!.required);
    expect(needed.filter((name) => !(name in given))).toEqual([]);
  });

  test("checks a folder, with a shop file and without", () => {
    const folder = mkdtempSync(join(tmpdir(), "sawbuck-workflow-"));
    try {
      mkdirSync(join(folder, ".sawbuck-program/dist"), { recursive: true });
      cpSync(join(ROOT, "dist/cli.js"), join(folder, ".sawbuck-program/dist/cli.js"));
      writeFileSync(join(folder, "my shop.sawbuck"), "stock 2x4, sold 8' $4\n");
      writeFileSync(join(folder, "a.sawbuck"), 'part leg 4 of 2x4, length 9"\n');
      const step = (run: string, SHOP: string) =>
        spawnSync("bash", ["-e", "-c", run], {
          cwd: folder,
          encoding: "utf8",
          env: { ...process.env, PLANS: ".", SHOP },
        });
      for (const run of runs.slice(1))
        for (const shop of ["", "my shop.sawbuck"]) {
          const { stderr, status } = step(run, shop);
          expect([run, stderr, status]).toEqual([run, "", 0]);
        }
      expect(JSON.parse(readFileSync(join(folder, "plans.sarif"), "utf8")).version).toBe("2.1.0");
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
