/** Naming a measurement, writing its value back, lengths in the other system, and moving stock: the plan stays what it is. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applied } from "../../grammar/format";
import { type Action, actionsAt } from "../../server/features/actions";
import { entriesOf, valuesIn } from "../../server/features/expressions-in";
import type { Reader } from "../../server/plan";
import { type Evaluated, evaluate, inUnits, sheetOf } from "../../server/service";
import { anyText, SOME } from "../property/plans";
import { afterTaking, ofKind, taken } from "./acting";
import { PLAN } from "./plans";

const named = (marked: string) => ofKind(marked, "refactor.extract");
const inline = (marked: string) => ofKind(marked, "refactor.inline");
const units = (marked: string) => ofKind(marked, "refactor.rewrite");
const whyNot = (action: Action | undefined) => action?.refused;

describe("naming a measurement", () => {
  test("a typed length, above the notes to its line", () => {
    const list = named('plan x\n\n# Four of them.\npart leg 4 of 2x4, length 2‸8"\n');
    expect(list.titles).toEqual(['Name this measurement: leg-length = 28"']);
    expect(afterTaking(list, "Name")).toBe(
      'plan x\n\nmeasure leg-length = 28"\n# Four of them.\npart leg 4 of 2x4, length leg-length\n',
    );
  });

  test("under the measures there are, with a name that is free", () => {
    const list = named('measure leg-length = 3"\n  at least 2"\npart leg 4 of 2x4, length 2‸8"\n');
    expect(afterTaking(list, "Name")).toBe(
      'measure leg-length = 3"\n  at least 2"\nmeasure leg-length-2 = 28"\npart leg 4 of 2x4, length leg-length-2\n',
    );
  });

  test("a selected sum, with or without its parentheses", () => {
    const line = (sum: string) => `measure gap = ${sum}\npart leg 4 of 2x4, length gap\n`;
    const wanted =
      'measure gap = size / 6\nmeasure size = 48" - 7 * width of 1x4\npart leg 4 of 2x4, length gap\n';
    expect(afterTaking(named(line('(⟦48" - 7 * width of 1x4⟧) / 6')), "Name")).toBe(
      wanted.replace("size", "gap-size").replace("measure size", "measure gap-size"),
    );
    expect(afterTaking(named(line('⟦(48" - 7 * width of 1x4)⟧ / 6')), "Name")).toContain(
      "measure gap = gap-size / 6\n",
    );
    expect(named(line('(48" - ⟦7 * width of⟧ 1x4) / 6')).titles).toEqual([]);
  });

  test("everywhere it is for the same", () => {
    const list = named(
      'part leg 4 of 2x4, length 2‸8"\npart rail 2 of 2x4, length 28"\npart end 2 of 1x4, length 2\' 4", width 28"\n',
    );
    expect(list.titles).toEqual([
      'Name this measurement: leg-length = 28"',
      'Name this measurement everywhere (3 places): leg-length = 28"',
    ]);
    expect(afterTaking(list, "everywhere")).toBe(
      'measure leg-length = 28"\npart leg 4 of 2x4, length leg-length\npart rail 2 of 2x4, length leg-length\npart end 2 of 1x4, length leg-length, width 28"\n',
    );
  });

  test("is not offered for what is a name, a board, a screw, or a measure itself", () => {
    for (const marked of [
      'measure rim = 3‸0"\n',
      'measure rim = 30"\npart leg 4 of 2x4, length r‸im\n',
      'part leg 4 of 2‸x4, length 28"\n',
      'fasten a into b, 2 #8 x 1-1‸/4" at each end\n',
      "plan x\n  language ‸1\n",
      "step Saw\n  takes 4‸0 min\n",
      "# 2‸8 is a note\n",
      "part leg 4 of 2x4, length 0‸\n",
    ])
      expect(named(marked).titles, marked).toEqual([]);
  });

  test("tells where the new name stands", () => {
    const list = named('part leg 4 of 2x4, length 2‸8"\n');
    const change = list.actions[0]!.change()!;
    expect(afterTaking(list, "Name").slice(change.named).startsWith("leg-length\n")).toBe(true);
  });

  test("in French", () => {
    const list = ofKind('part leg 4 of 2x4, length 2‸8"\n', "refactor.extract", { language: "fr" });
    expect(list.titles).toEqual(['Donner un nom à cette mesure\u00a0: leg-length = 28"']);
  });
});

describe("writing a measure's value in place of its name", () => {
  test("from its line or from a use, and in parentheses only where they are needed", () => {
    const text =
      'measure a = 3" - 1"\nmeasure b = a\npart leg 4 of 2x4, length 2 * a\npart end 2 of 1x4, length (a) * 2\n';
    const wanted =
      'measure b = 3" - 1"\npart leg 4 of 2x4, length 2 * (3" - 1")\npart end 2 of 1x4, length (3" - 1") * 2\n';
    expect(afterTaking(inline(text.replace("measure a", "measure ‸a")), "Write")).toBe(wanted);
    expect(afterTaking(inline(text.replace("2 * a", "2 * ‸a")), "Write")).toBe(wanted);
  });

  test("leaves the notes where they are", () => {
    const list = inline('# How high.\nmeasure r‸im = 30"\n\npart leg 4 of 2x4, length rim\n');
    expect(afterTaking(list, "Write")).toBe('# How high.\n\npart leg 4 of 2x4, length 30"\n');
  });

  test("is refused with the reason where something would be lost", () => {
    const why = (marked: string) => whyNot(inline(marked).actions[0]);
    expect([
      why('measure r‸im = 30", at least 24"\npart leg 4 of 2x4, length rim\n'),
      why("measure r‸im\npart leg 4 of 2x4, length rim\n"),
      why('measure r‸im = 30"\npart leg 4 of 2x4, length 3"\n'),
      why('measure r‸im = rim + 1"\npart leg 4 of 2x4, length rim\n'),
      why('measure r‸im = 30"\npart leg 4 of 2x4, length rim\nprat x\n'),
      why('measure r‸im = 30"\npart leg 4 of 2x4, length rim\naccept off-the-tape on rim because so\n'),
    ]).toMatchInlineSnapshot(`
      [
        "“rim” says how much it may be at least or at most, and that would be lost.",
        "“rim” has no value yet.",
        "Nothing uses “rim”.",
        "The value of “rim” leads back to itself.",
        "Some of the text could not be read: mend that first.",
        "An accept line is about “rim”.",
      ]
    `);
    const brought = { files: { "yard.sawbuck": 'measure rim = 30"\n' } };
    const list = ofKind("bring yard.sawbuck\npart leg 4 of 2x4, length r‸im\n", "refactor.inline", brought);
    expect(list.actions[0]?.refused).toBe("“rim” is made in yard.sawbuck, which other plans may use too.");
    const used = { files: { "yard.sawbuck": "part end 1 of 2x4, length rim\n" } };
    const both = ofKind(
      'bring yard.sawbuck\nmeasure r‸im = 30"\npart leg 4 of 2x4, length rim\n',
      "refactor.inline",
      used,
    );
    expect(both.actions[0]?.refused).toBe("“rim” is used in yard.sawbuck too.");
  });
});

describe("lengths in the other system", () => {
  const title = (length: string) => units(`part leg 4 of 2x4, length ‸${length}\n`).titles;
  test("are exact where they can be, else rounded and so called", () => {
    // An inch is 25.4 mm by definition (international yard and pound agreement, 1959).
    expect(title('3/4"')).toEqual(['Write 3/4" as 19.05mm']);
    expect(title("19.05mm")).toEqual(['Write 19.05mm as 3/4"']);
    expect(title("18mm")).toEqual(['Write 18mm as 11/16" (rounded)']);
    expect(title("6' 11-1/2\"")).toEqual(["Write 6' 11-1/2\" as 2120.9mm"]);
    expect(title('0.131"')).toEqual(['Write 0.131" as 3.3274mm']);
    expect(title("3.3274mm")).toEqual(['Write 3.3274mm as 0.131"']);
    expect(title('1/3"')).toEqual(['Write 1/3" as 8mm (rounded)']);
    expect(title("1.22m")).toEqual(['Write 1.22m as 48-1/16" (rounded)']);
    expect(title("36in")).toEqual(["Write 36in as 914.4mm"]);
    expect(title("0.1mm")).toEqual([]);
  });

  test("of a selection, all at once", () => {
    const list = units('part leg 4 of 2x4, ⟦length 28", width 2"⟧\n');
    expect(list.titles).toEqual(["Write the 2 lengths selected in millimetres"]);
    expect(afterTaking(list, "Write")).toBe("part leg 4 of 2x4, length 711.2mm, width 50.8mm\n");
    expect(units("part leg 4 of 2x4, ⟦length 18mm, width 25.4mm⟧\n").titles).toEqual([
      "Write the 2 lengths selected in inches (rounded)",
    ]);
  });

  test("of the whole plan, with its units, and but for screws and plywood", () => {
    const list = units(
      'plan ‸x\n  units inches to 1/16"\nsheet ply, plywood 1/2", sold 48" x 96" $38\npart leg 4 of 2x4, length 28"\npart end 4 of 2x4, length 1/3"\nfasten leg into end, 2 #8 x 2" in all\n',
    );
    expect(afterTaking(list, "Write the whole plan in millimetres")).toBe(
      'plan x\n  units millimetres\nsheet ply, plywood 1/2", sold 1219.2mm x 2438.4mm $38\npart leg 4 of 2x4, length 711.2mm\npart end 4 of 2x4, length 1/3"\nfasten leg into end, 2 #8 x 2" in all\n',
    );
    expect(afterTaking(units('plan ‸x\npart leg 4 of 2x4, length 1"\n'), "whole plan")).toBe(
      "plan x\n  units millimetres\npart leg 4 of 2x4, length 25.4mm\n",
    );
  });

  test("to inches only where all of them are on the tape", () => {
    const metric = (length: string) => `plan ‸x\n  units mm\npart leg 4 of 45x45, length ${length}\n`;
    expect(afterTaking(units(metric("50.8mm")), "whole plan in inches")).toBe(
      'plan x\n  units inches\npart leg 4 of 45x45, length 2"\n',
    );
    expect(whyNot(units(metric("18mm")).actions.at(-1))).toBe(
      "18mm is not a fraction of an inch that a tape shows.",
    );
  });
});

describe("moving to the shop file", () => {
  const move = (marked: string, files = {}, wanted = {}) =>
    ofKind(marked, "refactor.move", { files, wanted });
  test("with the notes above it, to the end", () => {
    const list = move(
      "plan x\nshop shop.sawbuck\n\n# From the yard.\nstock 2‸x4\n  sold 8' $4\n\npart leg 4 of 2x4, length 28\"\n",
      { "shop.sawbuck": "stock 1x4, sold 8' $3" },
    );
    expect(list.titles).toEqual(["Move stock 2x4 to shop.sawbuck"]);
    expect(taken(list, list.actions[0]!)).toEqual({
      [PLAN]: 'plan x\nshop shop.sawbuck\n\npart leg 4 of 2x4, length 28"\n',
      "shop.sawbuck": "stock 1x4, sold 8' $3\n\n# From the yard.\nstock 2x4\n  sold 8' $4\n",
    });
  });

  test("to a new one where the plan names none", () => {
    const list = move('plan x\n  outdoors\ntoo‸ls\n  kerf 2mm\npart leg 4 of 2x4, length 28"\n');
    expect(list.titles).toEqual(["Move tools to a new shop file, shop.sawbuck"]);
    expect(taken(list, list.actions[0]!)).toEqual({
      [PLAN]: 'plan x\n  outdoors\nshop shop.sawbuck\npart leg 4 of 2x4, length 28"\n',
      "shop.sawbuck": "tools\n  kerf 2mm\n",
    });
    expect(move("plan x\nto‸ols\n", { "shop.sawbuck": "" }).titles).toEqual([
      "Move tools to a new shop file, shop-2.sawbuck",
    ]);
  });

  test("is refused with the reason", () => {
    const shop = "plan x\nshop shop.sawbuck\n";
    const why = (marked: string, files = {}, wanted = {}) => whyNot(move(marked, files, wanted).actions[0]);
    expect([
      why(`${shop}stock 2‸x4, sold 8' $4\n`, { "shop.sawbuck": "stock 2x4, sold 8' $3\n" }),
      why(`${shop}too‸ls\n`, { "shop.sawbuck": "tools\n" }),
      why(`${shop}measure long = 8'\nstock po‸st of 2x4, end trim long\n`, { "shop.sawbuck": "" }),
      why(`${shop}stock 2‸x4, sold 8' $4\n`),
      why("plan x\nstock 2‸x4, sold 8' $4\n", {}, { makesFiles: false }),
    ]).toMatchInlineSnapshot(`
      [
        "There is a “2x4” in shop.sawbuck already.",
        "shop.sawbuck has its tools already.",
        "It uses “long”, which is made in this plan.",
        "shop.sawbuck could not be read.",
        "The plan names no shop file, and this editor makes none.",
      ]
    `);
  });

  test("is not offered inside of a shop file", () => {
    expect(move("stock 2‸x4, sold 8' $4\n").titles).toEqual([]);
  });
});

const FOLDER = join(__dirname, "../../samples");
const onDisk: Reader = (path) => {
  try {
    return { file: path, text: readFileSync(join(FOLDER, path), "utf8") };
  } catch {
    return { file: path, refused: "there is no such file" };
  }
};

/**
 * The sheet without where things stand in the text, and without the words in which a length is said to follow; without
 * problems too where lengths are shown otherwise, since some are about the marks of the tape.
 */
function sheetSaid(plan: Evaluated, shownElse = false): string {
  const drop = new Set(["place", "rule", "facts", ...(shownElse ? ["problems", "accepted"] : [])]);
  return JSON.stringify(sheetOf(inUnits(plan, "millimetres")), (key, value) =>
    drop.has(key) ? undefined : value,
  );
}

/** A third of them: each is a whole plan to compare. */
const EVERY = 3;

describe.each(readdirSync(FOLDER).filter((f) => f.endsWith(".sawbuck")))("in %s", (name) => {
  const text = readFileSync(join(FOLDER, name), "utf8");
  const plan = evaluate(name, text, onDisk);
  const offeredFor = (only: string): Action[] => {
    const starts = entriesOf(plan.worked.loaded.files[0]!.tree)
      .flatMap(valuesIn)
      .map((v) => v.expression.start);
    const list = [...new Set(starts)].flatMap((start) =>
      actionsAt(plan, {
        range: { start, end: start },
        only: [only],
        invoked: true,
        read: onDisk,
        makesFiles: true,
      }),
    );
    return list.filter((a, i) => list.findIndex((b) => b.title === a.title) === i);
  };

  test.each(["refactor.extract", "refactor.inline"])("%s leaves the sheet as it is", (kind) => {
    const was = sheetSaid(plan);
    for (const [i, action] of offeredFor(kind).entries()) {
      const change = action.change();
      if (!change || i % EVERY !== 0) continue;
      expect(sheetSaid(evaluate(name, applied(text, change.edits), onDisk)), action.title).toBe(was);
    }
  });

  test("exact lengths in the other system leave the sheet as it is", () => {
    const exact = offeredFor("refactor.rewrite").filter((a) => !a.title.includes("rounded"));
    for (const [i, action] of exact.entries()) {
      const change = action.change();
      const whole = action.id.startsWith("units plan");
      if (!change || (i % EVERY !== 0 && !whole)) continue;
      const now = evaluate(name, applied(text, change.edits), onDisk);
      expect(sheetSaid(now, whole), action.title).toBe(sheetSaid(plan, whole));
    }
  });
});

test("whatever the text is, what is offered changes places inside of it", () => {
  fc.assert(
    fc.property(anyText, fc.nat(), fc.nat(40), (text, at, length) => {
      const plan = evaluate(PLAN, text, onDisk);
      const start = at % (text.length + 1);
      const range = { start, end: Math.min(text.length, start + length) };
      const list = actionsAt(plan, { range, only: undefined, invoked: true, read: onDisk, makesFiles: true });
      expect(new Set(list.map((a) => a.id)).size).toBe(list.length);
      for (const action of list) {
        if (action.refused !== undefined) expect(action.refused).not.toBe("");
        for (const edit of action.change()?.edits ?? []) {
          expect(edit.start).toBeLessThanOrEqual(edit.end);
          if (edit.file === PLAN) expect(edit.end).toBeLessThanOrEqual(text.length);
        }
      }
    }),
    { numRuns: Math.ceil(SOME / 5) },
  );
});
