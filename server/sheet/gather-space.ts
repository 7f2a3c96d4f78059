/** What stands where, as the sheet tells it: pieces, size over all, the marks of screws, and what is measured corner to corner. */
import { markLengths } from "../checks/set-out-words";
import { type At, ifKnown } from "../plan";
import type { Display } from "../units";
import { type MarkedFrom, type SquareCheck, setOutOf, squareChecks, undrawn, type Worked } from "../worked";
import type { Place, SheetData, SheetJoint, SheetMarks, SheetPiece, SheetSquare } from "./data";
import { holesOf, screwWords } from "./gather-work";
import type { Identities } from "./identity";
import { lineOf } from "./lines";
import { marked, ofMm, withoutNoise } from "./marks";
import type { SheetWords } from "./words";

export function overallOf({ space, settings }: Worked): SheetData["overall"] {
  if (!space.bounds) return null;
  const { least, most } = space.bounds;
  const [width, depth, height] = ([0, 1, 2] as const).map((k) =>
    marked(ofMm(most[k] - least[k]), settings.display),
  );
  return { width: width!, depth: depth!, height: height! };
}

export function pieceRows(
  worked: Worked,
  identities: Identities,
  place: (at: At) => Place,
): readonly SheetPiece[] {
  return worked.pieces.all.map((piece) => ({
    id: piece.id,
    part: piece.part,
    mark: identities.ofPlaced(piece.id)?.row.mark ?? "",
    assemblies: piece.owners
      .map(({ name }) => name)
      .filter((name) => worked.scope.declared.get(name)?.kind === "assembly"),
    from: piece.bounds.least.map(withoutNoise) as [number, number, number],
    to: piece.bounds.most.map(withoutNoise) as [number, number, number],
    place: place(lineOf(worked, piece)),
  }));
}

/** Every fasten line, with where its screws go on the pieces that are screwed through. */
export function jointRows(
  worked: Worked,
  identities: Identities,
  place: (at: At) => Place,
  words: SheetWords,
): SheetJoint[] {
  const { display } = worked.settings;
  return worked.joints.flatMap((joint): SheetJoint[] => {
    if (joint.entry.kind !== "fasten") return [];
    const { placed } = joint;
    const screws = placed?.screws ?? [];
    return [
      {
        title: words.shop.titleOf(joint),
        what: screwWords(joint),
        pattern: words.shop.joint.pattern(joint.setting),
        holes: holesOf(joint, display, words),
        crossings: placed ? new Set(screws.map((s) => s.crossing)).size : null,
        screws: ifKnown(joint.count) ?? null,
        setOut: setOutOf(joint, worked.space).map((set) => {
          const pieces = set.pieces.map((i) => worked.space.pieces[i]!.id);
          const marks = new Set(pieces.map((id) => identities.ofPlaced(id)?.row.mark ?? ""));
          return {
            part: set.part,
            mark: [...marks].filter(Boolean).join(", "),
            pieces,
            screws: set.screws,
            grids: set.grids.map(({ on, along, across }) => ({
              on,
              along: marksOf(along, display, words),
              across: marksOf(across, display, words),
            })),
          };
        }),
        place: place(joint.at),
      },
    ];
  });
}

const marksOf = (from: MarkedFrom, display: Display, { wood }: SheetWords): SheetMarks => ({
  from: from.from,
  which: from.which,
  at: from.mm.map((d) => marked(ofMm(d), display)),
  words: wood.marks(from, markLengths(from, display)),
});

export const squareRows = (worked: Worked, words: SheetWords): SheetSquare[] =>
  squareChecks(worked).map((check) => squareRow(check, worked.settings.display, words));

export function squareRow(
  { of, name, diagonal, sides, count }: SquareCheck,
  display: Display,
  { plan: { square } }: SheetWords,
): SheetSquare {
  const words = { ring: square.ring(name, count), box: square.box(name), feet: square.feet };
  return {
    of,
    name,
    diagonal: marked(ofMm(diagonal), display),
    sides: [marked(ofMm(sides[0]), display), marked(ofMm(sides[1]), display)],
    count,
    words: words[of],
  };
}

/** Why there is no drawing, or which parts are not on it. */
export function notDrawn(worked: Worked, { plan: { undrawn: words } }: SheetWords): SheetData["notChecked"] {
  const left = undrawn(worked);
  if (!left) return [];
  if ("all" in left) return [{ what: words.all, why: words[left.all] }];
  return [{ what: words.some(left.parts.join(", ")), why: words.unknownPlaces }];
}
