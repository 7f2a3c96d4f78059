/** One balloon: the mark in a ring, and the leader from the ring to a dot on the piece. */
import { INNER, type Item, line, type Point, THIN, TYPE, text } from "../display";
import { along, heading, reach } from "./plane";
import type { Spot } from "./spots";

/** Of the ring, in mm of paper. */
export const RADIUS = 3.4;

/** `half` is half the ring's width, at least its radius: long marks draw it out sideways. */
export function balloon(words: string, at: Point, half: number, { at: end, piece }: Spot): readonly Item[] {
  const start = rim(at, end, half);
  const about = { piece };
  return [
    { ...line("leader", THIN, start, end), ...about },
    { ...disc("leader", end, DOT), fill: "ink", ...about },
    { ...ring(at, half), ...about },
    text("balloon", at[0], at[1] + 0.36 * TYPE, words, { anchor: "middle", bold: true, ...about }),
  ];
}

/** Where the leader leaves the ring, which is a circle drawn out sideways. */
function rim(at: Point, end: Point, half: number): Point {
  const straight = half - RADIUS;
  const centre: Point = [at[0] + Math.max(-straight, Math.min(straight, end[0] - at[0])), at[1]];
  return reach(centre, end) > RADIUS ? along(centre, heading(centre, end), RADIUS) : at;
}

function ring([x, y]: Point, half: number): Item {
  const straight = half - RADIUS;
  const points = Array.from({ length: CORNERS }, (_, i): Point => {
    const turn = ((i + 0.5) * 2 * Math.PI) / CORNERS;
    const aside = Math.cos(turn) > 0 ? straight : -straight;
    return [x + aside + RADIUS * Math.cos(turn), y + RADIUS * Math.sin(turn)];
  });
  return { kind: "path", layer: "balloon", strokes: [points], closed: true, weight: INNER, fill: "paper" };
}

function disc(layer: "leader", [x, y]: Point, radius: number) {
  const points = Array.from({ length: 12 }, (_, i): Point => {
    const turn = (i * Math.PI) / 6;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
  return { kind: "path", layer, strokes: [points], closed: true, weight: 0 } as const;
}

/** mm of paper. */
const DOT = 0.55;
/** Of the ring as a path. */
const CORNERS = 40;
