/** The measuring-up slip, as an editor fills it in. */
import { describe, expect, test } from "vitest";
import type { ApplyWorkspaceEditParams } from "vscode-languageserver/node";
import { type Editor, editor, uriOf } from "./editor";

const PLAN = "/yard/stand.sawbuck";
const YARD = "/yard/yard.sawbuck";
const STAND = `plan Stand
  language 1
  units inches to 1/8"
  space 40" wide, 60" high
bring yard.sawbuck
measure tall = 28", at least 20", at most 36"
part leg of 2x4, length tall
part rail of 1x4, length overall width of legs
place leg upright, wide face front, on floor, at each corner of wide x 16"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
`;

let e: Editor;
async function start(): Promise<void> {
  e = await editor({
    disk: new Map([[YARD, 'measure wide = 30"\n']]),
    folder: "/yard",
    capabilities: { workspace: { workspaceEdit: { documentChanges: true } } },
  });
  await e.open(PLAN, STAND);
}

interface Slip {
  readonly title: string;
  readonly version: number;
  readonly rows: readonly { readonly what: string; readonly label: string; readonly wrong?: string }[];
  readonly parts: readonly { readonly name: string; readonly html: string }[];
}
const slip = (measured: object = {}, language = "en"): Promise<Slip | null> =>
  e.connection.sendRequest("sawbuck/slip", { uri: uriOf(PLAN), language, measured });
const write = (measured: object): Promise<unknown> =>
  e.connection.sendRequest("sawbuck/slipWrite", { uri: uriOf(PLAN), language: "en", measured });

const told = (answer: Slip | null, name: string): string =>
  (answer?.parts.find((part) => part.name === name)?.html ?? "")
    .replace(/<[^>]+>/g, " ")
    .replace(/\s+/g, " ")
    .trim();
const lines = (answer: Slip | null): string[] =>
  [
    ...(answer?.parts.find(({ name }) => name === "drawings")?.html ?? "").matchAll(
      /"dimension"[^>]*>([^<]+)</g,
    ),
  ].map((m) => m[1]!);

describe("the slip", () => {
  test("has a row for what is measured, and lines to fill in", async () => {
    await start();
    const empty = await slip();
    expect(empty?.title).toBe("Measuring up: Stand");
    expect(empty?.rows).toMatchSnapshot();
    expect(lines(empty).sort()).toEqual(["3 ________", "4 ________"]);
    expect(told(empty, "outcome")).toMatchInlineSnapshot(
      `"What comes of it Nothing is filled in yet. Fill a row in, and this tells what becomes of the plan. The plan itself stays as it is until you write the measures into it. Problems none that it can name"`,
    );
  });

  test("tells what comes of what is typed, in the words of the reader, and changes nothing", async () => {
    await start();
    const filled = await slip({ tall: "24 1/2", wide: "715 mm" });
    expect(told(filled, "pieces")).toMatchInlineSnapshot(
      `"Pieces Changed leg, 4 pieces of 2x4, 24-1/2" length: 28" → 24-1/2" Changed rail, 1 piece of 1x4, 28-1/8" length: 30" → 28-1/8""`,
    );
    expect(lines(filled).sort()).toEqual(['3 24-1/2"', "4 715 mm"]);
    const low = await slip({ tall: "12" }, "fr");
    expect(told(low, "outcome")).toMatchInlineSnapshot(
      `"Ce qui en résulte Problèmes aucun qu’il sache nommer → 1 erreur"`,
    );
    expect(told(low, "problems")).toMatch(/Nouveau/);
    expect(e.textOf(PLAN)).toBe(STAND);
  });

  test("says which row it cannot read, and goes on with the others", async () => {
    await start();
    const { rows, ...rest } = (await slip({ tall: "part x", wide: "28" }))!;
    expect(rows.map(({ what, wrong }) => [what, wrong])).toEqual([
      ["width of space", undefined],
      ["height of space", undefined],
      ["tall", '“part x” is no measure such as 28-1/2" or 724 mm'],
      ["wide", undefined],
    ]);
    expect(told({ rows, ...rest }, "pieces")).toContain("28");
    // What is no text, and rows there are none of, are not heard.
    expect(told(await slip({ tall: 3, toString: "9", nothing: "1" }), "outcome")).toContain(
      "Nothing is filled in yet",
    );
  });

  test("of a text that changed meanwhile, or is not open, is none", async () => {
    await start();
    const asked = slip();
    await e.replace(PLAN, STAND.replace("28", "29"));
    expect(await asked).toBeNull();
    await e.close(PLAN);
    expect(await slip()).toBeNull();
  });
});

describe("written into the plan", () => {
  const applied = (): ApplyWorkspaceEditParams[] => {
    const all: ApplyWorkspaceEditParams[] = [];
    e.connection.onRequest("workspace/applyEdit", (params: ApplyWorkspaceEditParams) => {
      all.push(params);
      return { applied: true };
    });
    return all;
  };

  test("it is one change of all files concerned, of this version alone", async () => {
    await start();
    const all = applied();
    expect(await write({ tall: "24 1/2", wide: "28", "width of space": "36" })).toEqual({ written: 3 });
    expect(all).toMatchSnapshot();
  });

  test("nothing is written of rows that cannot be read, or where the editor refuses", async () => {
    await start();
    const all = applied();
    expect(await write({ tall: "part x" })).toEqual({ written: 0 });
    expect(all).toEqual([]);
    e.connection.onRequest("workspace/applyEdit", () => ({ applied: false }));
    expect(await write({ tall: "24" })).toEqual({ written: 0 });
  });
});
