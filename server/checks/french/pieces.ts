/** Identities of pieces in French: the words of the line that places a piece and of its place in a row; names stay. */

import { de } from "./elision";

/** `leg / avant gauche`, `side / devant legs / 1`, `exemplaire 2 / cap / sur legs / 3`. */
export const frenchPiece = (id: string): string => id.split(" / ").map(part).join(" / ");

/** One part of an identity; a name of the plan, or a number, is none of these. */
function part(words: string): string {
  for (const [shape, french] of SHAPES) {
    const found = shape.exec(words);
    if (found) return french(...(found.slice(1) as [string, string]));
  }
  return words;
}

type Said = (first: string, second: string) => string;

const RELATIONS: Readonly<Record<string, string>> = {
  on: "sur",
  under: "sous",
  above: "au-dessus de",
  below: "au-dessous de",
  "left of": "à gauche de",
  "right of": "à droite de",
  "in front of": "devant",
  behind: "derrière",
};

/** A relation that ends with `de` loses its e before some names. */
const beside = (relation: string, to: string): string =>
  relation.endsWith(" de") ? `${relation.slice(0, -" de".length)} ${de(to)}` : `${relation} ${to}`;

const SIDES: Readonly<Record<string, string>> = {
  left: "gauche",
  right: "droite",
  front: "avant",
  back: "arrière",
  bottom: "bas",
  top: "haut",
};

const WAYS: Readonly<Record<string, string>> = {
  "left to right": "de gauche à droite",
  "front to back": "d’avant en arrière",
  "up and down": "de haut en bas",
};

const SIDE = Object.keys(SIDES).join("|");
const sides = (words: string): string =>
  words
    .split(" ")
    .map((word) => SIDES[word] ?? word)
    .join(" ");

/** What a line names: its sides stand behind the name, before the number of a second line of the same words. */
function thing(words: string): string {
  if (/^floor(?: \d+)?$/.test(words)) return words.replace("floor", "le sol");
  const [, where = "", name = words] = new RegExp(`^((?:(?:${SIDE}) )+)(\\S+(?: \\d+)?)$`).exec(words) ?? [];
  if (where === "") return name;
  const [own, ...number] = name.split(" ");
  return [own, sides(where.trim()), ...number].join(" ");
}

const SHAPES: readonly (readonly [shape: RegExp, french: Said])[] = [
  [/^copy (\d+)$/, (n) => `exemplaire ${n}`],
  [/^spare$/, () => "rechange"],
  [/^mirrored$/, () => "en miroir"],
  [
    /^mirrored (.+)$/,
    (ways) =>
      `en miroir ${ways
        .split(/ and (?!down)/)
        .map((way) => WAYS[way] ?? way)
        .join(" et ")}`,
  ],
  [/^(front|back) (left|right)$/, (y, x) => sides(`${y} ${x}`)],
  [/^between (.+) and (.+)$/, (a, b) => `entre ${thing(a)} et ${thing(b)}`],
  [
    new RegExp(`^((?:${SIDE})(?: (?:${SIDE}))*) to ((?:${SIDE})(?: (?:${SIDE}))*)$`),
    (from, to) => `de ${sides(from)} à ${sides(to)}`,
  ],
  [new RegExp(`^near (${SIDE}) of (.+)$`), (side, of) => `près du côté ${sides(side)} ${de(thing(of))}`],
  [/^centered on (.+)$/, (on) => `centré sur ${thing(on)}`],
  [/^from (\S+)$/, (datum) => (datum === "floor" ? "depuis le sol" : `depuis le côté ${sides(datum)}`)],
  [
    new RegExp(`^(${Object.keys(RELATIONS).join("|")}) (.+)$`),
    (relation, to) => beside(RELATIONS[relation]!, thing(to)),
  ],
];
