/** What is written on drawings, on pictures made of letters, and what they say of themselves to who cannot see them. */
import type { Side } from "../piece-drawing";

const SEEN: Readonly<Record<Side, string>> = {
  turned: "seen from the left, the front and above",
  front: "seen from the front",
  left: "seen from the left",
  right: "seen from the right",
  above: "seen from above",
  back: "seen from the back",
};

export const ENGLISH_DRAWINGS = {
  thePlan: "the plan",
  /** A part of which there are left and right pieces. */
  handed: (part: string, hand: "left" | "right") => `${part} ${hand}`,
  scale: (scale: number) => `1 : ${scale}`,
  seen: SEEN,
  apart: "drawn apart",
  overAll: (width: string, depth: string, height: string) =>
    `Over all: width ${width}, depth ${depth}, height ${height}`,
  /** What a mark stands for. */
  marked: (mark: string, name: string, count: number) =>
    `${mark} ${name}${count > 1 ? `, ${count} pieces` : ""}`,
  between: "; ",
  unseen: (marks: string) => `not seen from here: ${marks}`,
  nothing: "nothing to show",
  noPieces: "there is nothing to draw: no piece is placed. A `place` line says where a piece stands.",
  noAssembly: (assembly: string, there: readonly string[]) =>
    `no assembly “${assembly}” is placed in this plan. ${there.length > 0 ? `There is ${there.join(", ")}.` : "It places no assembly at all."}`,

  /** A length between the long points of slanted ends, and between the short ones. */
  longPoints: (length: string) => `long points ${length}`,
  shortPoints: (length: string) => `short points ${length}`,

  keep: (length: string) => `${length}, keep`,
  size: (length: string, width: string) => `${length} x ${width}`,
  inARow: (label: string, count: number) => `${label}, ${count} in a row`,
  /** A piece of a board, and where its end is marked. */
  piece: (label: string, length: string, mark: string) => `${label} ${length}, mark at ${mark}`,
  restToKeep: (name: string, length: string) => `${name}: ${length}, keep`,
  /** Before its length. */
  rest: (name: string) => `${name}:`,
  /** A board or sheet with what is cut from it. */
  holds: (label: string, cuts: readonly string[]) => `${label}: ${cuts.join("; ")}`,
  tooSmall: (label: string) => `${label} (too small to number)`,
  marks: "Marks: ",
};

export type DrawingWords = typeof ENGLISH_DRAWINGS;
