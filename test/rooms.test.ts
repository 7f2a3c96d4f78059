/** The import order of the house: who may lean on whom. See DEVELOPERS.md, "Rooms". */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { describe, expect, test } from "vitest";

const ROOT = resolve(__dirname, "..");

/** Each room, and the rooms it may import from besides itself. */
const MAY: Readonly<Record<string, readonly string[]>> = {
  grammar: [],
  "server/units": [],
  "server/trade": ["server/units"],
  "server/solid": [],
  "server/cutting": [],
  "server/strength": [],
  "server/plan": ["grammar", "server/units", "server/trade"],
  "server/worked": [
    "grammar",
    "server/units",
    "server/trade",
    "server/solid",
    "server/cutting",
    "server/strength",
    "server/plan",
  ],
  "server/checks": [
    "grammar",
    "server/units",
    "server/trade",
    "server/solid",
    "server/cutting",
    "server/strength",
    "server/plan",
    "server/worked",
  ],
  "server/features": [
    "grammar",
    "server/units",
    "server/trade",
    "server/solid",
    "server/cutting",
    "server/strength",
    "server/plan",
    "server/worked",
    "server/checks",
  ],
  "server/sheet": [
    "grammar",
    "server/units",
    "server/trade",
    "server/solid",
    "server/cutting",
    "server/strength",
    "server/plan",
    "server/worked",
    "server/checks",
  ],
  server: [
    "server/cutting",
    "server/plan",
    "server/worked",
    "server/checks",
    "server/features",
    "server/sheet",
  ],
  "server/lsp": [
    "server",
    "server/cutting",
    "server/plan",
    "server/units",
    "server/checks",
    "server/features",
    "server/sheet",
  ],
  "server/cli": ["server", "server/cutting", "server/sheet", "server/lsp"],
  client: [],
};

/** The files of the room `server` that stand in it alone. */
const DOORS = new Set(["service", "exchange", "slips"]);

/** Single ways between rooms that are closed to each other: a script that runs in two pages. */
const ALSO: readonly { readonly from: string; readonly to: string }[] = [
  { from: "client/preview/", to: "server/sheet/page/" },
];

/** Outside packages, and the only rooms that may name them. */
const OUTSIDE: readonly { readonly name: RegExp; readonly rooms: readonly string[] }[] = [
  { name: /^chevrotain$/, rooms: ["grammar"] },
  { name: /^vscode-languageserver/, rooms: ["server/lsp"] },
  { name: /^vscode-jsonrpc/, rooms: ["server/lsp"] },
  { name: /^vscode-languageclient/, rooms: ["client"] },
  { name: /^vscode$/, rooms: ["client"] },
  { name: /^pdfkit/, rooms: ["server/sheet/pdf/pen.ts"] },
  {
    name: /^node:/,
    rooms: [
      "server/cli",
      "server/lsp/node.ts",
      "server/lsp/disk.ts",
      "server/lsp/git.ts",
      "server/lsp/committed.ts",
      "server/lsp/pdf.ts",
      "server/lsp/layouts/thread.ts",
      "server/lsp/layouts/in-thread.ts",
      "client/extension.ts",
    ],
  },
];

const files = ["grammar", "server", "client"].flatMap((folder) => below(join(ROOT, folder)));

function below(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? below(path) : path.endsWith(".ts") ? [path] : [];
  });
}

const named = (path: string): string => relative(ROOT, path).split(sep).join("/");

function roomOf(path: string): string {
  const parts = named(path).split("/");
  if (parts[0] !== "server") return parts[0]!;
  return parts.length > 2 ? `server/${parts[1]}` : "server";
}

function importsOf(path: string): string[] {
  const text = readFileSync(path, "utf8");
  const found = text.matchAll(
    /^(?:import|export)\b[^;"]*?from\s*"([^"]+)"|^import\s*"([^"]+)"|\bimport\(\s*"([^"]+)"/gm,
  );
  return [...found].map((m) => m[1] ?? m[2] ?? m[3]!);
}

describe("the import order", () => {
  test("there are files to look at", () => {
    expect(files.length).toBeGreaterThan(60);
    expect([...new Set(files.map(roomOf))].sort()).toEqual(Object.keys(MAY).sort());
  });

  test("no room imports from a room above it", () => {
    const wrong: string[] = [];
    for (const file of files) {
      const room = roomOf(file);
      for (const name of importsOf(file)) {
        // The version of the program is no room.
        if (!name.startsWith(".") || name.endsWith("/package.json")) continue;
        const target = roomOf(join(dirname(file), `${name}.ts`));
        const other =
          target === "server" && !DOORS.has(name.split("/").pop()!)
            ? roomOf(join(dirname(file), name, "index.ts"))
            : target;
        const to = named(join(dirname(file), name));
        const also = ALSO.some((way) => named(file).startsWith(way.from) && to.startsWith(way.to));
        if (other !== room && !also && !MAY[room]?.includes(other))
          wrong.push(`${named(file)} imports ${name} (${other})`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test("outside packages are named only where they belong", () => {
    const wrong: string[] = [];
    for (const file of files) {
      for (const name of importsOf(file)) {
        if (name.startsWith(".")) continue;
        const rule = OUTSIDE.find((o) => o.name.test(name));
        const here = rule?.rooms.some((r) => named(file) === r || roomOf(file) === r);
        if (!here) wrong.push(`${named(file)} imports ${name}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test("no file is longer than 400 lines, unless it is a table", () => {
    const tables = ["grammar/forms.ts", "test/sheet/trough.ts"];
    const long = [...files, ...below(join(ROOT, "test"))]
      .filter((f) => readFileSync(f, "utf8").split("\n").length > 401)
      .map(named)
      .filter((f) => !tables.includes(f));
    expect(long).toEqual([]);
  });

  test("every property tries a whole number of cases: with a part of one, its library never comes to an end", () => {
    const parts = below(join(ROOT, "test")).flatMap((file) =>
      [...readFileSync(file, "utf8").matchAll(/numRuns: [\w.]+ \/ .*/g)].map(
        ([said]) => `${named(file)}: ${said}`,
      ),
    );
    expect(parts).toEqual([]);
  });
});
