// Tools by what is done with them: what each is for, a sound way round where one is missing, and the words that mean it.
import { COMMON_PRACTICE, type Row } from "./row";

export type ToolKey =
  | "eyes"
  | "ears"
  | "dust"
  | "pincers"
  | "sawhorses"
  | "tape"
  | "pencil"
  | "square"
  | "crosscut"
  | "miter"
  | "bevel"
  | "compound"
  | "rip"
  | "sheet"
  | "chisel"
  | "clamps"
  | "drill"
  | "driver"
  | "hammer"
  | "wrench"
  | "level"
  | "brush"
  | "rags"
  | "knife"
  | "stapler";

/** A tool as a builder names it, without a maker's name. */
export interface Tool {
  readonly key: ToolKey;
  readonly name: string;
  /** What is done with it: goes on "for …". */
  readonly use: string;
  /** How to do without it: whole sentences; empty where there is no sound way. */
  readonly instead: string;
  /** Names that mean it where a plan says what is at hand; with or without hyphens, one or many. */
  readonly words: readonly string[];
}

/** Whether one of these names, as a plan has them after `has`, means one of those words: "hand-saws" means "handsaw". */
export function isAmong(names: readonly string[], words: readonly string[]): boolean {
  const wanted = new Set(words.map(plain));
  return names.some((name) => wanted.has(plain(name)));
}

const plain = (name: string): string => name.toLowerCase().replaceAll("-", "").replace(/s$/, "");

/** Saws, by how they are driven and held. */
export const SAW_WORDS = {
  hand: ["handsaw", "hand-saw", "back-saw", "tenon-saw", "pull-saw", "panel-saw", "bow-saw", "coping-saw"],
  miter: ["miter-saw", "mitre-saw", "chop-saw", "sliding-miter-saw", "sliding-mitre-saw"],
  compound: ["compound-saw", "compound-miter-saw", "compound-mitre-saw"],
  box: ["miter-box", "mitre-box"],
  circular: ["circular-saw", "track-saw", "plunge-saw", "hand-circular-saw"],
  table: ["table-saw", "bench-saw", "site-saw"],
  other: ["saw", "jigsaw", "jig-saw", "band-saw", "radial-saw", "radial-arm-saw", "reciprocating-saw"],
} as const;

const { hand, miter, compound, box, circular, table, other } = SAW_WORDS;

/** In the order they are taken up. */
export const tools: readonly Row<Tool>[] = [
  tool("eyes", "eye protection", "sawing, drilling, driving and hammering", "", [
    ...["eye-protection", "safety-glasses", "glasses", "goggles", "face-shield", "visor"],
  ]),
  tool("ears", "ear protection", "sawing by machine", "", [
    ...["ear-protection", "ear-muffs", "earmuffs", "ear-plugs", "earplugs", "hearing-protection"],
  ]),
  tool("dust", "a dust mask", "sawing and sanding", "", ["dust-mask", "mask", "respirator"]),
  tool(
    "pincers",
    "pincers",
    "pulling nails out of wood that has been used before",
    "A claw hammer pulls them too, with a scrap of wood under its head.",
    ["pincer", "claw-hammer", "nail-puller", "pry-bar", "crowbar"],
  ),
  tool(
    "sawhorses",
    "two sawhorses",
    "holding boards while they are cut",
    "Two firm stands of one height do, with the board clamped to them.",
    ["sawhorse", "saw-horse", "trestle", "workbench", "bench"],
  ),
  tool(
    "tape",
    "a tape measure",
    "marking lengths",
    "A straight stick with the plan's lengths marked on it does, if all are marked from the same one.",
    ["tape", "tape-measure", "measuring-tape", "folding-rule", "rule", "ruler"],
  ),
  tool("pencil", "a pencil", "marking cuts and holes", "A nail or a knife scratches a finer line.", [
    ...["pencil", "carpenters-pencil", "marking-knife", "marker"],
  ]),
  tool(
    "square",
    "a square",
    "marking square ends and keeping corners square",
    "A corner of a new sheet of plywood or of stiff paper is square enough to mark by; sides of 3, 4 and 5 of any one measure make a square corner.",
    [
      ...["square", "try-square", "combination-square", "framing-square", "rafter-square"],
      ...["carpenters-square", "set-square"],
    ],
  ),
  tool(
    "crosscut",
    "a saw that cuts across boards",
    "cutting boards to length",
    "The yard cuts boards to length if it has the list.",
    [...hand, ...miter, ...compound, ...circular, ...table, ...other],
  ),
  tool(
    "miter",
    "a saw that turns for miters",
    "cutting ends at a slant across the width",
    "A hand saw cuts to a line marked with an angle gauge, the board clamped; a plane or a sanding block takes it to the line.",
    [...miter, ...compound, ...box],
  ),
  tool(
    "bevel",
    "a saw that tilts for bevels",
    "cutting ends at a slant through the thickness",
    "Mark the slant on both edges and saw by hand to both lines, the board clamped.",
    [...compound],
  ),
  tool(
    "compound",
    "a saw that turns and tilts at once",
    "cutting ends at a slant both ways",
    "Mark the cut on all four sides and saw by hand to the lines, the board clamped; try it on scrap first.",
    [...compound],
  ),
  tool(
    "rip",
    "a saw that cuts along boards",
    "cutting boards narrower along their length",
    "The yard rips boards for little, or a narrower board is sold; a hand saw follows a marked line, the board clamped.",
    [...circular, ...table, "band-saw", "radial-arm-saw"],
  ),
  tool(
    "sheet",
    "a saw for sheets",
    "cutting pieces out of sheets",
    "The yard cuts sheets to size; a hand saw follows a straight board clamped along the line.",
    [...circular, ...table, "jigsaw", "jig-saw", "panel-saw"],
  ),
  tool(
    "chisel",
    "a saw with fine teeth, a chisel and a mallet",
    "notches and housings",
    "A notch at an end can be sawn out whole, both ways; a rasp trims it.",
    ["chisel", "router"],
  ),
  tool(
    "clamps",
    "clamps",
    "holding pieces while glue sets or while they are cut",
    "A cord round the joint, twisted tight with a stick, or weights on it, hold while glue sets. Nothing stands in for a clamp at the saw.",
    ["clamp", "cramp", "bar-clamp", "strap-clamp", "c-clamp", "g-clamp", "vise", "vice"],
  ),
  tool("drill", "a drill", "drilling holes", "A brace or a hand drill bores the same holes.", [
    ...["drill", "cordless-drill", "hand-drill", "brace", "drill-driver", "drill-press"],
  ]),
  tool(
    "driver",
    "a screwdriver, or a drill with a bit to fit the head",
    "driving screws",
    "", // Every other way spoils the head or the wood.
    ["driver", "screwdriver", "impact-driver", "drill-driver", "drill", "cordless-drill"],
  ),
  tool("hammer", "a hammer", "driving nails", "", ["hammer", "claw-hammer", "nailer", "nail-gun"]),
  tool("wrench", "a wrench to fit the bolts", "tightening nuts and bolts", "", [
    ...["wrench", "spanner", "socket-wrench", "ratchet", "adjustable-wrench"],
  ]),
  tool(
    "level",
    "a level",
    "setting it plumb and level",
    "A clear hose filled with water shows one height at two places, and a weight on a string shows plumb.",
    ["level", "spirit-level", "plumb-bob", "plumb-line"],
  ),
  tool("brush", "a brush", "laying on finish", "", ["brush", "paint-brush", "paintbrush", "roller"]),
  tool("rags", "rags", "wiping off what the wood does not take up", "", ["rag", "cloth"]),
  tool("knife", "a sharp knife", "cutting the liner", "Strong scissors cut it too.", [
    ...["knife", "utility-knife", "scissors", "shears"],
  ]),
  tool(
    "stapler",
    "a staple gun",
    "fixing the liner along the rim",
    "Short tacks with broad heads and a hammer hold it too.",
    ["stapler", "staple-gun", "tacker"],
  ),
];

export const toolRows: readonly Row<unknown>[] = tools;

function tool(key: ToolKey, name: string, use: string, instead: string, words: readonly string[]): Row<Tool> {
  return {
    key: `tool: ${name}`,
    value: { key, name, use, instead, words },
    unit: "",
    source: COMMON_PRACTICE,
  };
}
