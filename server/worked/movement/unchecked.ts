/** What is not looked at of boards that swell and shrink. */
import { say } from "../../plan";
import type { Unchecked } from "../fault";
import type { MovementWork } from "./year";

export function movementUnchecked({ rows, unknown }: MovementWork): Unchecked[] {
  const found = unknown.map(
    ({ parts, at, wood }): Unchecked => ({
      what: say("gaps in the wet", { name: parts[0]! }),
      why: wood === undefined ? say("unsaid place") : say("no shrinkage", { wood }),
      at,
    }),
  );
  const first = rows.find((row) => row.swelling > 0);
  if (first) found.push({ what: say("boards cup"), why: say("only widths"), at: first.at });
  return found;
}
