/** The sheet of a plan whose pieces are placed: identities and marks, marks for the bench, diagonals, and its drawings. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { diskReader } from "../../server/lsp/disk";
import {
  drawingsOf,
  drawingText,
  type Evaluated,
  evaluate,
  sheetDocument,
  sheetOf,
  writeSheet,
} from "../../server/service";
import type { SheetData } from "../../server/sheet/data";
import type { DrawingKind, SheetDrawing } from "../../server/sheet/drawings";
import { letters } from "../../server/sheet/identity";
import { svgText } from "../../server/sheet/svg";
import { sheetText } from "../../server/sheet/text";
import { readStrictly } from "./strict-markup";

const SAMPLES = join(__dirname, "../../samples");
const OUTPUT = join(__dirname, "output");

const read = (text: string, file = "p.sawbuck"): Evaluated => evaluate(file, text, diskReader);
const sample = (name: string): Evaluated => {
  const file = join(SAMPLES, name);
  return read(readFileSync(file, "utf8"), file);
};
const rowsOf = (sheet: SheetData) => sheet.cutList.flatMap(({ rows }) => rows);

/** A stand: four legs, two rails through which screws go into them, and a mirrored pair of wedges. */
const STAND = `plan Stand
  language 1
  units inches to 1/16"
part leg of 2x4, length 20"
part rail of 1x4, length overall width of legs
place leg upright, wide face front, on floor, at each corner of 30" x 16"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
fasten rail face into leg face, 2 #8 x 1-5/8" at each crossing
`;

describe("identity and marks", () => {
  it("names placed pieces by where they stand, and the others by number", () => {
    const rows = rowsOf(sheetOf(read(`${STAND}part wedge 2 of 2x4, length 6"\n`)));
    expect(rows.map(({ mark, part, pieces }) => [mark, part, pieces])).toEqual([
      ["A", "leg", ["leg / front left", "leg / front right", "leg / back left", "leg / back right"]],
      ["C", "wedge", ["wedge / 1", "wedge / 2"]],
      ["B", "rail", ["rail / in front of legs", "rail / behind legs"]],
    ]);
  });

  it("gives letters by the order of the parts, so that a new part at the end, or another length, changes none", () => {
    const marks = (text: string) =>
      Object.fromEntries(rowsOf(sheetOf(read(text))).map(({ part, mark }) => [part, mark]));
    const before = marks(STAND);
    expect(marks(`${STAND}part wedge 2 of 1x2, length 6"\n`)).toEqual({ ...before, wedge: "C" });
    expect(marks(STAND.replace('length 20"', 'length 50"'))).toEqual(before);
    expect([0, 25, 26, 51, 52, 701, 702].map(letters)).toEqual(["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
  });

  it("keeps left and right pieces apart, each with its own mark, as it is mirrored in place", () => {
    const sheet = sheetOf(sample("reading-shelf.sawbuck"));
    const own = rowsOf(sheet).filter(({ part }) => part === "front-upright");
    expect(own.map(({ hand, mark, count }) => [hand, mark, count])).toEqual([
      ["left", "B", 1],
      ["right", "C", 1],
    ]);
    expect(own.map(({ pieces }) => pieces[0])).toEqual(
      sheet.pieces.filter(({ part }) => part === "front-upright").map(({ id }) => id),
    );
  });

  it("puts every piece into the layouts once, by the identity of the cut list, copies too", () => {
    for (const text of [STAND, STAND.replace("  language 1", "  language 1\n  make 2")]) {
      const sheet = sheetOf(
        read(text.replace("part leg", "stock 2x4, sold 8'\nstock 1x4, sold 8'\npart leg")),
      );
      const cut = sheet.boards.flatMap(({ boards }) =>
        boards.flatMap(({ cuts }) => cuts.flatMap(({ piece }) => piece.split(", "))),
      );
      expect(cut.sort()).toEqual(
        rowsOf(sheet)
          .flatMap(({ pieces }) => pieces)
          .sort(),
      );
      expect(cut.length).toBe(text === STAND ? 6 : 12);
      const marks = sheet.boards.flatMap(({ boards }) =>
        boards.flatMap(({ cuts }) => cuts.map(({ label, mark }) => `${mark} ${label}`)),
      );
      expect(new Set(marks)).toEqual(new Set(["A leg", "B rail"]));
    }
  });
});

describe("marks for the bench", () => {
  it("count screws and crossings, and measure from ends and edges", () => {
    const [joint] = sheetOf(read(STAND)).joints;
    expect(joint).toMatchObject({ screws: 8, crossings: 4, what: '#8 x 1-5/8"', holes: "" });
    expect(joint?.setOut).toMatchObject([
      {
        mark: "B",
        part: "rail",
        screws: 4,
        pieces: ["rail / in front of legs", "rail / behind legs"],
        grids: [
          {
            along: { which: "each", words: 'from each end: 1-3/4"' },
            across: { which: "either", words: 'from either edge: 7/8" and 2-5/8"' },
          },
        ],
      },
    ]);
  });

  it("name the side where it matters, and take a square end before a slanted one", () => {
    const words = (name: string) =>
      sheetOf(sample(name)).joints.flatMap(({ setOut }) =>
        setOut.flatMap(({ part, grids }) =>
          grids.map(({ along, across }) => `${part} ${along.words}; ${across.words}`),
        ),
      );
    const gate = words("school-gate.sawbuck").filter((w) => w.startsWith("picket"));
    expect(gate.length).toBeGreaterThan(0);
    for (const w of gate) expect(w).toContain("from the bottom end");
    expect(words("salad-trough.sawbuck").join("\n")).toContain('from the bottom edge: 3/4"');
  });
});

describe("what is measured corner to corner", () => {
  it("is each four-sided ring, each box and the feet, by the solids", () => {
    const { square } = sheetOf(sample("salad-trough.sawbuck"));
    expect(square.map(({ of, name, diagonal }) => [of, name, diagonal.text])).toEqual([
      ["ring", "cap", '53-7/8"'],
      ["box", "trough", '49-5/16"'],
      ["feet", "", '49-5/16"'],
    ]);
    const text = sheetText(sheetDocument(sheetOf(sample("salad-trough.sawbuck")))).replace(/\s+/g, " ");
    expect(text).toContain('measure both diagonals: each 53-7/8" (1368 mm); equal means square.');
  });

  it("is nothing for six sides, and for feet that are not four", () => {
    const { square } = sheetOf(sample("tree-seat.sawbuck"));
    expect(square.map(({ of }) => of)).not.toContain("ring");
    expect(sheetOf(sample("school-gate.sawbuck")).square).toEqual([]);
  });
});

describe("the drawings of a sheet", () => {
  const kinds = (list: readonly SheetDrawing[]) =>
    list.filter(({ kind }) => kind !== "step").map(({ kind, of }) => `${kind} ${of}`.trim());

  it("come in order: turned, front, left, above, apart, then each assembly", () => {
    expect(kinds(drawingsOf(read(STAND)))).toEqual(["turned", "front", "left", "above", "apart"]);
    expect(kinds(drawingsOf(sample("post-stand.sawbuck"))).slice(5)).toEqual([
      "turned post",
      "turned sloping-floor",
    ]);
  });

  it("end with one for each step in which a piece is new, which is dark and bears its mark", () => {
    const evaluated = sample("salad-trough.sawbuck");
    const steps = drawingsOf(evaluated).filter(({ kind }) => kind === "step");
    expect(steps.map(({ of }) => of)).toEqual(["3", "4", "5"]);
    const dark = (n: number) =>
      new Set(
        steps[n]!.drawing.items.flatMap((i) => (i.kind === "path" && i.fill === "dark" ? [i.piece] : [])),
      );
    expect([...dark(0)].every((id) => /^(leg|end|end-ledger) \//.test(id ?? ""))).toBe(true);
    expect([...dark(2)].every((id) => id?.startsWith("cap /"))).toBe(true);
    const marks = (n: number) =>
      steps[n]!.drawing.items.flatMap((i) => (i.kind === "text" ? [i.text] : [])).sort();
    expect(marks(0)).toEqual(["A", "C", "E"]);
    expect(marks(2)).toEqual(["H", "I"]);
  });

  it("draw straight views to one scale, or smaller where one does not fit", () => {
    const [, front, left, above] = drawingsOf(sample("cold-frame.sawbuck")).map((d) => d.drawing.scale!);
    expect(above).toBeGreaterThanOrEqual(front!);
    expect(left).toBeGreaterThanOrEqual(above!);
  });

  it("show screws as crosses where their heads are seen, and none from behind", () => {
    const crosses = (kind: DrawingKind) => {
      const drawing = drawingsOf(read(STAND)).find((d) => d.kind === kind)!.drawing;
      return (
        drawing.items.flatMap((i) => (i.kind === "path" && i.layer === "screw" ? i.strokes : [])).length / 2
      );
    };
    expect(crosses("front")).toBe(4);
    expect(crosses("above")).toBe(0);
    expect(crosses("apart")).toBe(0);
  });

  it("have room for the ways along which pieces are drawn apart, also where those lead past all pieces", () => {
    const box = `part corner of 2x2, length 11"
part side of 1x6, length overall width of corners + 1-1/2"
part end of 1x6, length overall depth of corners
part ledger of 2x2, length overall width of corners - 2 * width of corner
part slat of 1x4, length overall depth of corners
place corner upright, on floor, at each corner of 30" x 12"
place end front to back, on edge, left of corners, flush with front of corners, flush with top of corners, 2 high, tight
place end front to back, on edge, right of corners, flush with front of corners, flush with top of corners, 2 high, tight
place side across, on edge, in front of corners, flush with left of ends, flush with top of corners, 2 high, tight
  mirrored front to back about corners
place ledger across, on edge, right of front left corner, flush with front of corners, 1" from floor
  mirrored front to back about corners
place slat front to back, flat, on ledgers, flush with front of corners, between left corners and right corners
  as many as fit, at most 1/2" apart
`;
    const { drawing } = drawingsOf(read(box)).find((d) => d.kind === "apart")!;
    const trails = drawing.items.flatMap((i) => (i.kind === "path" && i.layer === "trail" ? i.strokes : []));
    for (const [x, y] of trails.flat()) {
      expect(x >= 0 && x <= drawing.width).toBe(true);
      expect(y >= 0 && y <= drawing.height).toBe(true);
    }
  });

  it("say what is not seen in the order of the marks", () => {
    const { drawing } = drawingsOf(sample("potting-bench.sawbuck")).find((d) => d.kind === "front")!;
    const [, marks] = /not seen from here: ([^.]*)/.exec(drawing.title)!;
    const list = marks!.split(", ");
    expect(list).toEqual([...list].sort());
  });

  it("know the line of the plan for each face and each balloon", () => {
    const evaluated = read(STAND);
    const html = writeSheet(sheetOf(evaluated), "html", { drawings: drawingsOf(evaluated) });
    readStrictly(html);
    const face = /<path class="face" data-piece="rail \/ behind legs" data-line="(\d+)"/.exec(html);
    expect(face?.[1]).toBe(String(STAND.split("\n").findIndex((l) => l.includes("behind legs")) + 1));
    const balloon = /<text class="balloon" data-piece="leg [^"]*" data-line="(\d+)"/.exec(html);
    expect(balloon?.[1]).toBe("4");
  });

  it("are left out where nothing is placed, and the sheet says why", () => {
    const evaluated = read('part leg 4 of 2x4, length 9"\n');
    const sheet = sheetOf(evaluated);
    expect(drawingsOf(evaluated)).toEqual([]);
    expect(sheet.overall).toBeNull();
    expect(sheet.notChecked[0]).toEqual({
      what: "a drawing",
      why: "no `place` line says where a piece stands",
    });
    expect(drawingText(evaluated, "turned")).toEqual({
      refused: "there is nothing to draw: no piece is placed. A `place` line says where a piece stands.",
    });
  });

  it("are told as a display list that stays the same", async () => {
    const [turned] = drawingsOf(read(STAND));
    const lines = turned!.drawing.items.map((item) => {
      if (item.kind === "text")
        return `${item.layer} “${item.text}” at ${item.x.toFixed(1)} ${item.y.toFixed(1)}`;
      const points = item.strokes.map((s) => s.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join(", "));
      return `${item.layer} ${item.piece ?? ""} ${item.fill} ${item.weight}: ${points.slice(0, 4).join(" / ")}`;
    });
    await expect(`${turned!.drawing.title}\n${lines.join("\n")}\n`).toMatchFileSnapshot(
      "snapshots/stand.snap",
    );
  });
});

describe("the samples", () => {
  beforeAll(() => {
    mkdirSync(OUTPUT, { recursive: true });
  });
  const names = readdirSync(SAMPLES).filter((f) => f.endsWith(".sawbuck"));

  it.each(names)("%s is drawn, for a look at test/sheet/output", (name) => {
    const evaluated = sample(name);
    const drawings = drawingsOf(evaluated);
    for (const { kind, of, drawing } of drawings) {
      const file = [name.replace(".sawbuck", ""), of, kind].filter(Boolean).join("-");
      writeFileSync(join(OUTPUT, `${file}.svg`), svgText(drawing));
    }
    const html = writeSheet(sheetOf(evaluated), "html", { drawings });
    readStrictly(html);
    writeFileSync(join(OUTPUT, name.replace(".sawbuck", ".html")), html);
    expect(drawings.length > 0).toBe(evaluated.worked.pieces.all.length > 0);
  });
});

describe("a brace on the back", () => {
  it("has the back drawn too, and only then", () => {
    const kinds = (name: string) =>
      drawingsOf(sample(name))
        .filter(({ kind }) => kind !== "step")
        .map(({ kind, of }) => `${kind}${of && ` ${of}`}`);
    expect(kinds("school-gate.sawbuck")).toEqual(["turned", "front", "left", "above", "back", "apart"]);
    expect(kinds("salad-trough.sawbuck")).toEqual(["turned", "front", "left", "above", "apart"]);
  });
});
