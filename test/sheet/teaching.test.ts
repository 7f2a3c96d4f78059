/** The drawings that teach a word of the trade: small, labelled in both languages, no label on a line or another label. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { TERMS } from "../../server/features/glossary";
import { type Box, boxOf, type Drawing, type Item, type Point } from "../../server/sheet/display";
import { svgText } from "../../server/sheet/svg";
import { drawTeaching, TEACHING_KEYS } from "../../server/sheet/teach";

const LANGUAGES = ["en", "fr"] as const;
const drawn = (key: string, language: "en" | "fr"): Drawing => drawTeaching(key, key, language)!;

/** Whether a stroke passes through a box. */
function meets([ax, ay]: Point, [bx, by]: Point, { left, top, right, bottom }: Box): boolean {
  let [from, to] = [0, 1];
  for (const [at, by_, low, high] of [
    [ax, bx - ax, left, right],
    [ay, by - ay, top, bottom],
  ] as const) {
    if (by_ === 0) {
      if (at < low || at > high) return false;
      continue;
    }
    const [one, other] = [(low - at) / by_, (high - at) / by_];
    from = Math.max(from, Math.min(one, other));
    to = Math.min(to, Math.max(one, other));
  }
  return from < to;
}

/** Letters take less than their estimated room, which is for the widest font. */
const lettersOf = (item: Item): Box => {
  const { left, top, right, bottom } = boxOf(item);
  const air = (right - left) * 0.04;
  return { left: left + air, right: right - air, top: top + 0.3, bottom: bottom - 0.3 };
};

function collisions({ items }: Drawing): string[] {
  const texts = items.flatMap((item) => (item.kind === "text" ? [item] : []));
  return texts.flatMap((text, i) => {
    const box = lettersOf(text);
    const lines = items.some(
      (item) =>
        item.kind === "path" &&
        item.weight > 0 &&
        item.strokes.some((stroke) => {
          const points = item.closed ? [...stroke, stroke[0]!] : stroke;
          return points.slice(1).some((p, n) => meets(points[n]!, p, box));
        }),
    );
    const others = texts.slice(i + 1).some((other) => {
      const b = lettersOf(other);
      return box.left < b.right && b.left < box.right && box.top < b.bottom && b.top < box.bottom;
    });
    return [...(lines ? [`${text.text}: on a line`] : []), ...(others ? [`${text.text}: on a label`] : [])];
  });
}

describe.each(LANGUAGES)("every drawing, labels in %s,", (language) => {
  test.each(TEACHING_KEYS)("%s", (key) => {
    const drawing = drawn(key, language);
    expect(drawing.width).toBeLessThanOrEqual(86);
    expect(drawing.height).toBeLessThanOrEqual(44);
    for (const item of drawing.items) {
      const { left, top, right, bottom } = boxOf(item);
      expect([left, top, drawing.width - right, drawing.height - bottom].every((room) => room > -1e-6)).toBe(
        true,
      );
    }
    expect(collisions(drawing)).toEqual([]);
    expect(svgText(drawing).length).toBeLessThan(14_000);
  });
});

test("every drawing is of a term, and every term has one", () => {
  expect([...new Set(TERMS.map((t) => t.drawing))].sort()).toEqual([...TEACHING_KEYS].sort());
});

test("labels differ between the languages but for figures", () => {
  const labels = (key: string, language: "en" | "fr"): string[] =>
    drawn(key, language).items.flatMap((item) => (item.kind === "text" ? [item.text] : []));
  for (const key of TEACHING_KEYS) {
    expect(labels(key, "fr").length).toBe(labels(key, "en").length);
    expect(labels(key, "fr").join(" "), key).not.toMatch(/\b(?:the|here|edge|end|board|piece)\b/);
  }
});

test("there is none for a key that no term names", () => {
  expect(drawTeaching("constructor", "", "en")).toBeUndefined();
});

test("all of them on one page, to be looked at", () => {
  const folder = join(__dirname, "output");
  mkdirSync(folder, { recursive: true });
  for (const language of LANGUAGES) {
    const cells = TEACHING_KEYS.map((key) => `<p>${key}</p>${svgText(drawn(key, language))}`);
    writeFileSync(
      join(folder, `teaching-${language}.html`),
      `<!doctype html><meta charset="utf-8"><title>${language}</title><body style="columns:4;background:#445;color:#fff">${cells.join("\n")}`,
    );
  }
});
