/** What is offered at a place, which of it is taken without choosing, and mending many at once. */
import { describe, expect, test } from "vitest";
import { applied } from "../../grammar/format";
import { actionsAt } from "../../server/features/actions";
import { SPELLING } from "../../server/features/actions-all";
import { evaluate } from "../../server/service";
import { nothing } from "../checks/plans";
import { afterTaking, offered, ofKind } from "./acting";
import { fixture, PLAN, worked } from "./plans";

const preferred = (marked: string): string[] =>
  offered(marked, { wanted: { invoked: false } })
    .actions.filter((a) => a.preferred)
    .map((a) => a.title);

describe("a quick fix", () => {
  test("has the cure's own sentence and mends the text", () => {
    const list = offered('part leg 4 of 2x4, len‸ght 28"\n');
    expect(list.titles[0]).toBe("Write “length”");
    expect(afterTaking(list, "Write “length”")).toBe('part leg 4 of 2x4, length 28"\n');
  });

  test("is offered where the problem is touched, also just behind it, and nowhere else", () => {
    const titles = (marked: string) => ofKind(marked, "quickfix").titles;
    expect(titles('part leg 4 of 2x4, ‸lenght 28"\n')).toEqual(["Write “length”"]);
    expect(titles('part leg 4 of 2x4, lenght‸ 28"\n')).toEqual(["Write “length”"]);
    expect(titles('part leg 4 of 2x4, ⟦lenght 28"⟧\n')).toEqual(["Write “length”"]);
    expect(titles('part leg 4‸ of 2x4, lenght 28"\n')).toEqual([]);
  });

  test("is one and not two where two problems ask for the same", () => {
    const list = ofKind(
      'measure rim = ri‸m-hight\nmeasure rim-height = 4"\npart leg 4 of 2x4, length rim\n',
      "quickfix",
    );
    expect(list.titles).toEqual(["Write “rim-height”"]);
  });

  test("of another file is offered at the line that leads there, and changes that file", () => {
    const shop = "stock post of 2x4, slod 8' $4\n";
    const list = ofKind(`plan x\nshop s‸hop.sawbuck\npart leg 4 of post, length 9"\n`, "quickfix", {
      files: { "shop.sawbuck": shop },
    });
    const [edit] = list.actions.find((a) => a.title.startsWith("Write"))?.change()?.edits ?? [];
    expect(edit?.file).toBe("shop.sawbuck");
  });

  test("says its sentence in French", () => {
    const list = offered('part leg 4 of 2x4, len‸ght 28"\n', { language: "fr" });
    expect(list.titles[0]).toBe("Écrivez «\u00a0length\u00a0»");
  });
});

describe("what is preferred", () => {
  test("the one near name", () => {
    expect(preferred('measure rim-height = 30"\npart leg 4 of 2x4, length rim-h‸ight\n')).toEqual([
      "Write “rim-height”",
    ]);
  });

  test("none of several near names", () => {
    const text = 'measure rim-a = 3"\nmeasure rim-b = 4"\npart leg 4 of 2x4, length rim‸-c\n';
    expect(offered(text).titles.filter((t) => t.startsWith("Write “rim"))).toHaveLength(2);
    expect(preferred(text)).toEqual([]);
  });

  test("no screw, though one that fits the joint is offered", () => {
    const text =
      'part leg 4 of 2x4, length 28"\npart slat 2 of 1x4, length 20"\nfasten slat face into leg face, 2 scr‸ews\n';
    expect(offered(text).titles).toContain('Write “#8 x 2"”, which fits this joint');
    expect(preferred(text)).toEqual([]);
  });

  test("neither inches nor millimetres where either may be meant", () => {
    expect(preferred("part leg 4 of 2x4, length 2‸8\n")).toEqual([]);
  });

  test("never taking out a line that nothing uses", () => {
    const text = 'measure ri‸m = 30"\npart leg 4 of 2x4, length 28"\n';
    expect(offered(text).titles).toContain("Take its line out");
    expect(preferred(text)).toEqual([]);
  });
});

describe("which kinds are asked for", () => {
  const text = 'part leg 4 of 2x4, len‸ght 28"\n';
  const kinds = (only: string[] | undefined, invoked = true) => [
    ...new Set(offered(text, { wanted: { only, invoked } }).actions.map((a) => a.kind)),
  ];
  test("all, some, those below one, none", () => {
    expect(kinds(undefined)).toEqual(["quickfix", "source.fixAll.sawbuck"]);
    expect(kinds([""])).toEqual(["quickfix", "source.fixAll.sawbuck"]);
    expect(kinds(["quickfix"])).toEqual(["quickfix"]);
    expect(kinds(["source"])).toEqual(["source.fixAll.sawbuck"]);
    expect(kinds(["source.fixAll"])).toEqual(["source.fixAll.sawbuck"]);
    expect(kinds(["source.fixAll.other"])).toEqual([]);
    expect(kinds(["source.fix"])).toEqual([]);
    expect(kinds(["refactor"])).toEqual([]);
    expect(kinds([])).toEqual([]);
  });

  test("where the cursor only goes by, nothing but what mends", () => {
    expect(kinds(undefined, false)).toEqual(["quickfix"]);
    const plain = 'part leg 4 of 2x4, length 2‸8"\n';
    expect(offered(plain, { wanted: { invoked: false } }).titles).toEqual([]);
    expect(offered(plain).titles.length).toBeGreaterThan(0);
    // On saving, the editor asks of itself, and for that alone.
    expect(kinds(["source.fixAll"], false)).toEqual(["source.fixAll.sawbuck"]);
  });
});

describe("mending all", () => {
  const text =
    'prat leg 4 of 2x4, length 28"\nprat sl‸at 4 of 1x4, length 20"\npart end 2 of 1x4, lenght 9"\n';
  test("of a kind", () => {
    const list = offered(text.replace("‸", "").replace("prat leg", "pr‸at leg"));
    expect(list.titles).toContain(
      "Mend all 2 of this kind, each by its first cure: A line opens with a word that means nothing",
    );
    expect(afterTaking(list, "Mend all 2")).toBe(text.replace("‸", "").replaceAll("prat", "part"));
  });

  test("that is misspelt", () => {
    const list = ofKind(text, "source");
    expect(list.titles).toEqual(["Mend the 3 things that are misspelt"]);
    expect(afterTaking(list, "Mend")).toBe(
      text.replace("‸", "").replaceAll("prat", "part").replace("lenght", "length"),
    );
    expect(ofKind(text, "source", { language: "fr" }).titles).toEqual([
      "Corriger les 3 choses qui sont mal écrites",
    ]);
  });

  test("leaves what could mean two things", () => {
    const left = (line: string) => ofKind(`‸${line}\n`, "source").titles;
    expect(left("part leg 4 of 2x4, length 1,500mm")).toEqual([]);
    expect(left("part leg 4 of 2x4, length 1,5mm")).toHaveLength(1);
    expect(left('part leg 4 of 2x4, length 28 "')).toEqual([]);
    expect(left("part leg 4 of 4x7, length 15")).toEqual([]);
    // A second thing of one name would be another mistake.
    expect(left('part Leg 4 of 2x4, length 9"\npart leg 4 of 2x4, length 9"')).toEqual([]);
  });

  test("of a kind says of how many, where one has no cure", () => {
    const some = "part leg 4 of 2x4, length rim-h‸ight\npart end 2 of 2x4, length tall\n";
    const list = `measure rim-height = 30"\n${some}part rail 2 of 2x4, length rim-hight\n`;
    expect(offered(list).titles).toContain(
      "Mend 2 of 3 of this kind, each by its first cure: A name that nothing declares",
    );
    expect(offered(list, { language: "fr" }).titles.find((t) => t.startsWith("Corriger 2"))).toMatch(
      /^Corriger 2 des 3 problèmes de ce genre, chacun par son premier remède\u00a0: /,
    );
  });

  test("leaves a misspelt name and a figure to the one who wrote them", () => {
    const source = (text: string) => ofKind(text, "source").titles;
    const name = 'measure rim-height = 30"\npart leg 4 of 2x4, length rim-h‸ight\n';
    expect(source(name)).toEqual([]);
    expect(offered(name).titles).toContain("Write “rim-height”");
    const figure = 'part leg 4 of 2x4, length 9"\nplace leg upright, ‸6 at each corner of 30" x 12"\n';
    expect(offered(figure).titles).toContain("Leave out “6”");
    expect(source(figure)).toEqual([]);
  });

  test("takes the first of two that change one place", () => {
    const list = ofKind('part leg 4 of 2x4 lenght 28", lenght 20"\n‸', "source");
    const now = afterTaking(list, "Mend");
    expect(evaluate(PLAN, now, nothing).problems.length).toBeLessThan(list.plan.problems.length + 1);
  });

  /** Each spoils a word or a mark of a sound plan in a way that is only spelling. */
  const SPOILT: readonly (readonly [RegExp, string])[] = [
    [/^part /gm, "prat "],
    [/, length /g, ", lenght "],
    [/^place /gm, "Place "],
    [/^measure /gm, "mesure "],
    [/ = /g, " "],
    [/^fasten /gm, "fasen "],
  ];
  test.each(["inches", "finished", "placed", "carried", "metric"])(
    "of a sound plan that was misspelt gives that plan back: %s",
    (name) => {
      const sound = fixture(name);
      for (const [good, bad] of SPOILT) {
        const spoilt = sound.replace(good, bad);
        if (spoilt === sound) continue;
        const plan = evaluate(PLAN, spoilt, nothing);
        const range = { start: 0, end: 0 };
        const [all] = actionsAt(plan, {
          range,
          only: ["source"],
          invoked: true,
          read: nothing,
          makesFiles: false,
        });
        const now = applied(spoilt, all?.change()?.edits ?? []);
        const grave = (t: string) =>
          worked(t)
            .problems.filter((p) => p.class === "error" || p.class === "hazard")
            .map((p) => p.code);
        expect(grave(now), bad).toEqual(grave(sound));
      }
    },
  );

  test("by spelling claims only what the checks say", () => {
    expect([...SPELLING.keys()]).toEqual([
      "bad-name",
      "bad-number",
      "indented-alone",
      "not-understood",
      "stray-character",
      "unknown-entry",
    ]);
  });
});

describe("letting it stand", () => {
  const LIFTED = `plan x
  budget $1
  # Raised by the class.
stock 2x4, sold 8' $4
part leg 4 of 2x4, length 28"
`;
  test("is the last offer, under all lines of the entry, and waits for the reason", () => {
    const list = ofKind(LIFTED.replace("budget", "bud‸get"), "quickfix");
    const accept = list.actions.at(-1);
    expect(accept?.title).toBe("Let it stand: accept over-budget because …");
    expect(accept?.preferred).toBe(false);
    const change = accept?.change();
    const [edit] = change?.edits ?? [];
    expect(edit?.text).toBe("accept over-budget because \n");
    expect(change?.typing).toBe("accept over-budget because ".length);
    expect(LIFTED.slice(edit?.start)).toMatch(/^stock 2x4/);
  });

  test("names the thing where it is about one", () => {
    const list = ofKind(
      'part l‸eg 4 of 4x4, length 28"\nplace leg upright, on floor, 0 from left, 0 from front\n',
      "quickfix",
    );
    expect(list.titles.filter((t) => t.includes("accept"))).toContain(
      "Let it stand: accept cut-never-placed on leg because …",
    );
  });

  test("of a hazard says that someone could be hurt", () => {
    const list = offered(`part post 4 of 4x4, length 30"
place post upright, on floor, at each corner of 30" x 12"
part lid 1 of 1x6, length 12"
place l‸id across, flat, 40" up, 0 from left, 0 from front
`);
    const title = list.titles.find((t) => t.includes("accept hangs-in-air"));
    expect(title).toBe(
      "Someone could be hurt. Let this hazard stand, with a reason that will be printed: accept hangs-in-air on lid because …",
    );
  });

  test("is not offered for an error", () => {
    expect(offered('part leg 4 of 2x4, len‸ght 28"\n').titles.some((t) => t.includes("accept "))).toBe(false);
  });

  test("keeps the ends of lines, and makes one where the last has none", () => {
    const list = offered("plan x\r\n  budget $1\r\nstock 2x4, sold 8' $4\r\npart leg 4 of 2x4, length 28\"‸");
    const accept = offered(
      "plan x\r\n  bud‸get $1\r\nstock 2x4, sold 8' $4\r\npart leg 4 of 2x4, length 28\"",
    ).actions.find((a) => a.title.includes("accept over-budget"));
    expect(accept?.change()?.edits[0]?.text).toBe("accept over-budget because \r\n");
    expect(list.plan.problems.length).toBeGreaterThan(0);
    const end = offered('stock 2x4, sold 8\' $4\npart leg 4 of 2x4, length 28", len‸gth 30"').actions.find(
      (a) => a.title.includes("accept said-twice"),
    );
    expect(end?.change()?.edits[0]?.text).toBe("\naccept said-twice because \n");
  });
});
