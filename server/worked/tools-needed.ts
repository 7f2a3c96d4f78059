/** The tools a plan takes, in the order they are taken up: what each is for, how far it must reach, and a way round it. */
import { isAmong, SAW_WORDS, type Tool, type ToolKey, tools } from "../trade";
import type { Quantity } from "../units";
import { operationsOf } from "./operations";
import type { Settings } from "./settings";
import { SHOP_ENGLISH, type ShopWords } from "./shop-words";
import { reachOf, type ToolSetting } from "./tool-reach";
import { usesOf } from "./tool-uses";
import type { Worked } from "./work";

export type { ToolSetting } from "./tool-reach";

export interface ToolNeed {
  readonly tool: ToolKey;
  /** "a saw that turns for miters". */
  readonly name: string;
  /** Each thing it is taken up for: "miters of cap-side and cap-end, 45°", "side into leg". */
  readonly for: readonly string[];
  /** How far it must reach. */
  readonly settings: readonly ToolSetting[];
  /** Whether the plan's tools say that it is at hand; a reach they fall short of is "no". */
  readonly have: "yes" | "no" | "unsaid";
  /** How to do without, in whole sentences; empty when it is at hand, and where no way is sound. */
  readonly instead: string;
}

export function toolsNeeded(worked: Worked, words: ShopWords = SHOP_ENGLISH): readonly ToolNeed[] {
  const does = operationsOf(worked);
  return tools.flatMap((row): ToolNeed[] => {
    const { value: tool } = row;
    const uses = usesOf(tool.key, does, worked, words);
    if (uses.length === 0) return [];
    const settings = reachOf(tool.key, does);
    const have = haveOf(tool, settings, worked.settings);
    const { name, instead } = words.tool(row);
    return [
      {
        tool: tool.key,
        name,
        for: uses,
        settings,
        have,
        instead: have === "yes" ? "" : instead,
      },
    ];
  });
}

/** Only what the tools line says is judged: what it leaves out is unsaid, and an angle beyond the saw's is a "no". */
function haveOf(tool: Tool, settings: readonly ToolSetting[], plan: Settings): ToolNeed["have"] {
  const { tools: at } = plan;
  if (!at) return "unsaid";
  const named = isAmong(at.has, tool.words);
  const turns = reaches(settings, "miter", at.miters);
  const tilts = reaches(settings, "bevel", at.bevels);
  switch (tool.key) {
    case "crosscut":
      return named || at.miters || at.bevels || plan.kerf.from === "tools" ? "yes" : "unsaid";
    case "miter":
      return turns ?? (named ? "yes" : "unsaid");
    case "bevel":
      return tilts ?? (named ? "yes" : "unsaid");
    case "compound":
      if (turns === "no" || tilts === "no") return "no";
      return named || (turns && tilts) ? "yes" : "unsaid";
    case "rip":
      return at.rips === undefined ? (named ? "yes" : "unsaid") : at.rips ? "yes" : "no";
    case "sheet":
      return named || at.rips ? "yes" : "unsaid";
    case "chisel":
      return named && (isAmong(at.has, ["router"]) || anySaw(at.has)) ? "yes" : "unsaid";
    default:
      return named ? "yes" : "unsaid";
  }
}

const anySaw = (has: readonly string[]): boolean => isAmong(has, Object.values(SAW_WORDS).flat());

/** Whether a saw goes as far as is needed; undefined where the plan gives no limit. */
function reaches(
  settings: readonly ToolSetting[],
  what: "miter" | "bevel",
  most: Quantity | undefined,
): "yes" | "no" | undefined {
  const needs = settings.find((s) => s.what === what)?.value;
  if (!needs || !most) return undefined;
  return needs.approx <= most.approx + ROUNDED ? "yes" : "no";
}

/** Degrees that arithmetic alone may add. */
const ROUNDED = 1e-9;
