/** How a joint is named and how its screws are set out, in French. */
import type { JointSetting, JointWords } from "../../worked";
import { de } from "./elision";
import { et } from "./type";

const FACES = { face: "face", edge: "chant", end: "bout" } as const;

function pattern({ each, where, crossings }: JointSetting): string {
  const n = each ?? "?";
  switch (where) {
    case "nowhere":
      return "";
    case "along it, spaced":
      return "tout du long";
    case "in all":
      return `${n} en tout`;
    case "each end":
      return `${n} à chaque bout`;
    case "along each":
      return `${n} le long de chaque pièce`;
    case "crossings":
      return `${n} à chacun des ${crossings ?? "?"} croisements`;
    case "each crossing":
      return `${n} à chaque croisement`;
    case "unsaid":
      return `${n}`;
  }
}

export const JOINT: JointWords = {
  side: (name, face) => (face ? `${FACES[face]} ${de(name)}` : name),
  sides: et,
  title: (kind, first, through, into) =>
    `${first}${through === "" ? "" : ` à travers ${through}`} ${kind === "glue" ? "sur" : "dans"} ${into}`,
  pattern,
};
