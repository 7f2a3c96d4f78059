/** The drawing in the editor: in the sheet's answer, by the pieces of a line, and in hovers. */
import { afterEach, describe, expect, test } from "vitest";
import { type Editor, editor, type Setup, uriOf } from "./editor";

const PLAN = "/yard/stand.sawbuck";
const STAND = `plan Stand
  language 1
part leg of 2x4, length 20"
part rail of 1x4, length overall width of legs
part cap-side of 1x4, length 34", ends mitered 45°
part cap-end of 1x4, length 20", ends mitered 45°
ring cap = cap-side and cap-end and cap-side and cap-end
place leg upright, wide face front, on floor, at each corner of 30" x 16"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place cap flat, on legs, centered on legs
fasten rail face into leg face, 2 #8 x 1-5/8" at each crossing
`;
const lineOf = (begin: string): number => STAND.split("\n").findIndex((l) => l.startsWith(begin)) + 1;

let opened: Editor[] = [];
async function start(setup: Setup = {}): Promise<Editor> {
  const e = await editor(setup);
  opened.push(e);
  await e.open(PLAN, STAND);
  return e;
}
afterEach(() => {
  for (const e of opened) e.end();
  opened = [];
});

interface Answer {
  readonly parts: readonly { readonly name: string; readonly html: string }[];
  readonly complete: boolean;
  readonly version: number;
  readonly state: string;
}
async function sheet(e: Editor, soon = true) {
  const answer = await e.connection.sendRequest<Answer>("sawbuck/sheet", { uri: uriOf(PLAN), soon });
  return { ...answer, body: answer.parts.map(({ html }) => html).join("") };
}

describe("the sheet's answer", () => {
  test("holds the drawings, whose faces and balloons know their lines", async () => {
    const { body, complete } = await sheet(await start());
    expect(complete).toBe(true);
    expect(body.match(/<svg [^>]*class="drawing"/g)?.length).toBe(7);
    expect(body.match(/<figure class="beside"/g)?.length).toBe(2);
    expect(body).toContain(
      `<path class="face" data-piece="rail / in front of legs" data-line="${lineOf("place rail")}"`,
    );
    expect(body).toMatch(
      new RegExp(`<text class="balloon" data-piece="rail[^"]*" data-line="${lineOf("part rail")}"`),
    );
  });

  test("follows an edit, and tells an error that keeps pieces from standing", async () => {
    const e = await start();
    expect((await sheet(e)).body).toContain('Over all: 34" wide');
    const at = STAND.indexOf('length 20"') + "length ".length;
    await e.edit(PLAN, at, at + 3, '24"');
    expect((await sheet(e)).body).toContain('24-3/4"</span> high');
    const legs = e.textOf(PLAN).indexOf("legs, flush with left");
    await e.edit(PLAN, legs, legs + 4, "pegs");
    expect(await sheet(e)).toMatchObject({ state: "has errors", version: 3 });
  });

  test("gives the first drawing of many pieces before the rest, and the rest when asked again", async () => {
    const e = await start();
    const rails = Array.from(
      { length: 100 },
      (_, i) => `place rail across, on edge, in front of legs, ${i + 50}" from left, ${i}" from floor`,
    );
    await e.replace(PLAN, `${STAND}${rails.join("\n")}\n`);
    const first = await sheet(e);
    expect(first.complete).toBe(false);
    expect(first.body.match(/<svg /g)?.length).toBeGreaterThan(0);
    const whole = await sheet(e, false);
    expect(whole.complete).toBe(true);
    expect(whole.body.match(/class="drawing"/g)?.length).toBeGreaterThanOrEqual(5);
  });
});

describe("the pieces of a line", () => {
  const pieces = async (e: Editor, begin: string) =>
    (
      await e.connection.sendRequest<{ pieces: string[] }>("sawbuck/piecesAt", {
        uri: uriOf(PLAN),
        line: lineOf(begin),
      })
    ).pieces;

  test("are those that it places, cuts, joins or goes round with; none for other lines", async () => {
    const e = await start();
    const legs = ["leg / front left", "leg / front right", "leg / back left", "leg / back right"];
    expect(await pieces(e, "part leg")).toEqual(legs);
    expect(await pieces(e, "place leg")).toEqual(legs);
    expect(await pieces(e, "ring cap")).toEqual([1, 2, 3, 4].map((n) => `cap / on legs / ${n}`));
    expect(await pieces(e, "part cap-end")).toEqual([2, 4].map((n) => `cap / on legs / ${n}`));
    expect(await pieces(e, "fasten rail")).toEqual([
      "leg / front left",
      "leg / front right",
      "rail / in front of legs",
    ]);
    expect(await pieces(e, "plan Stand")).toEqual([]);
    expect(await e.connection.sendRequest("sawbuck/piecesAt", {})).toEqual({ pieces: [] });
  });
});

describe("a hover", () => {
  const told = async (e: Editor, begin: string, word: string): Promise<string> => {
    const at = STAND.indexOf(`\n${begin}`) + 1;
    const position = e.positionOf(PLAN, STAND.indexOf(word, at) + 1);
    const { contents } = await e.connection.sendRequest<{ contents: { value: string } }>(
      "textDocument/hover",
      { textDocument: { uri: uriOf(PLAN) }, position },
    );
    return contents.value;
  };

  test.each([
    ["place leg", "place"],
    ["place rail", "rail"],
    ["ring cap", "cap"],
  ])("over %s, at %s, ends with a small drawing, its pieces pointed out", async (begin, word) => {
    const markdown = await told(await start({ initializationOptions: { pictures: true } }), begin, word);
    const image = /\n\n!\[[\w -]+\]\(data:image\/svg\+xml;base64,([A-Za-z0-9+/=]+)\|width=\d+,height=\d+\)$/;
    const svg = Buffer.from(image.exec(markdown)?.[1] ?? "", "base64").toString();
    expect(svg).toMatch(/^<svg .*#ffe48a.*<\/svg>$/);
    expect(markdown.length).toBeLessThan(30_000);
  });

  test("over a part's own line ends with the piece as it is cut, and over a word of the trade with what it means", async () => {
    const e = await start({ initializationOptions: { pictures: true } });
    const svgOf = async (begin: string, word: string): Promise<string> => {
      const image = /base64,([A-Za-z0-9+/=]+)\|/.exec(await told(e, begin, word));
      return Buffer.from(image?.[1] ?? "", "base64").toString();
    };
    const piece = await svgOf("part cap-side", "cap-side");
    expect(piece).toContain('>long points 34"<');
    expect(piece).toContain('>short points 27"<');
    expect(piece).toContain('>3-1/2"<');
    expect(await svgOf("part cap-side", "mitered")).toContain(">seen from above<");
    expect(await svgOf("fasten rail", "crossing")).toContain(">crossing<");
  });

  test("speaks French to an editor that does", async () => {
    const e = await start({ initializationOptions: { pictures: true }, locale: "fr" });
    const markdown = await told(e, "part cap-side", "mitered");
    expect(markdown).toMatch(/^\*\*onglet\*\*\u00a0: Un onglet est/);
    const svg = Buffer.from(/base64,([A-Za-z0-9+/=]+)\|/.exec(markdown)![1]!, "base64").toString();
    expect(svg).toContain(">vu d’en haut<");
  });

  test("has none over other words, and none for an editor that did not ask for pictures", async () => {
    const asked = await start({ initializationOptions: { pictures: true } });
    expect(await told(asked, "fasten rail", "fasten")).not.toContain("data:image");
    expect(await told(await start(), "part leg", "leg")).not.toContain("data:image");
  });

  test("over a joint tells its screws, crossings and marks", async () => {
    const markdown = await told(await start(), "fasten rail", "fasten");
    expect(markdown).toContain("Placed: 4 screws at 2 crossings");
    expect(markdown).toContain('from each end: 1-3/4"; from either edge: 7/8" and 2-5/8"');
  });
});
