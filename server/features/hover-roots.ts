/** What a hover says of the room that roots find in a box, one line for each thing that grows there. */
import { LENGTH, liquidText, type Quantity, sameDimension } from "../units";
import { type Box, type RootRoom, rootRoom, type Wanted } from "../worked";
import { COMMON } from "./hover-texts/common";
import { ROOTS } from "./hover-texts/roots";
import type { Voice } from "./hover-texts/voice";
import { escaped } from "./markdown";
import { exactText } from "./values";

export const rootLines = (box: Box, voice: Voice): string[] =>
  rootRoom({ boxes: [box] }).map((room) => escaped(lineOf(room, voice)));

function lineOf(room: RootRoom, voice: Voice): string {
  const { language, display } = voice;
  const says = ROOTS[language];
  const { crop, state, ground } = room;
  const roots = ground ? says.ground(range(ground, voice)) : "";
  if (state === "no table") return `${says.noTable(crop)}${roots}`;
  if (state === "open") return `${says.open(crop)}${roots}`;
  const asked = [
    room.wantsDepth ? says.depth(range(room.wantsDepth, voice)) : "",
    room.wantsVolume ? range(room.wantsVolume, voice) : "",
  ].filter(Boolean);
  const wants = says.wants(crop, asked);
  const source = says.source(COMMON[language].cite((room.wantsDepth ?? room.wantsVolume)!.source));
  if (state === "no room known") return `${wants}${says.hereUnknown}${source}${roots}`;
  const [depth, volume] = [exactText(room.depth!, display), liquidText(room.volume!, display)];
  return `${wants}${says.here(depth, volume, state === "enough")}${source}${roots}`;
}

/** `4" to 6"`, `1 to 3 gal`, and one number where both are the same. */
function range({ least, most }: Wanted, { language, display }: Voice): string {
  const text = (q: Quantity): string =>
    sameDimension(q.dim, LENGTH) ? exactText(q, display) : liquidText(q, display);
  return least.approx === most.approx ? text(least) : ROOTS[language].range(text(least), text(most));
}
