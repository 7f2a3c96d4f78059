/** What a hover says of the room that roots find in a box, one line for each thing that grows there. */
import { cite } from "../trade";
import { type Display, LENGTH, liquidText, type Quantity, sameDimension } from "../units";
import { type Box, type RootRoom, rootRoom, type Wanted } from "../worked";
import { escaped } from "./markdown";
import { exactText } from "./values";

export const rootLines = (box: Box, display: Display): string[] =>
  rootRoom({ boxes: [box] }).map((room) => escaped(lineOf(room, display)));

function lineOf(room: RootRoom, display: Display): string {
  const { crop, state, ground } = room;
  const roots = ground ? ` In open ground its roots go ${range(ground, display)} deep` : "";
  if (state === "no table") return `Grows ${crop}: no table says what it wants in a container.${roots}`;
  if (state === "open") return `Grows ${crop}: no bottom is named, so it roots in the ground.${roots}`;
  const asked = [
    room.wantsDepth ? `${range(room.wantsDepth, display)} of depth` : "",
    room.wantsVolume ? range(room.wantsVolume, display) : "",
  ].filter(Boolean);
  const wants = `Grows ${crop}, which wants ${asked.join(" and ")} in a container`;
  const source = cite((room.wantsDepth ?? room.wantsVolume)!.source);
  if (state === "no room known") return `${wants}; how much is here is not known; ${source}.${roots}`;
  const here = `${exactText(room.depth!, display)} and ${liquidText(room.volume!, display)} here`;
  return `${wants}: ${here}${state === "enough" ? "" : ", which is less"}; ${source}.${roots}`;
}

/** `4" to 6"`, `1 to 3 gal`, and one number where both are the same. */
function range({ least, most }: Wanted, display: Display): string {
  const text = (q: Quantity): string =>
    sameDimension(q.dim, LENGTH) ? exactText(q, display) : liquidText(q, display);
  return least.approx === most.approx ? text(least) : `${text(least)} to ${text(most)}`;
}
