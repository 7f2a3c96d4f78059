/** What to look after once it is built: called up by where it stands, what it is made of, and what it holds. */
import { HAIRLINE } from "../solid/contact";
import { type CareTag, careFor, finishKind } from "../trade";
import { isHung, isTall } from "./anchoring";
import { Calls, namesBehind } from "./calls";
import { type Operations, operationsOf } from "./operations";
import { SHOP_ENGLISH, type ShopWords } from "./shop-words";
import { isGreen } from "./weight";
import type { Worked } from "./work";

/** A piece of care, with the names of what calls it up; none where it is the plan as a whole. */
export interface CalledCare {
  readonly key: string;
  readonly text: string;
  readonly source: string;
  readonly about: readonly string[];
}

/** The care a plan calls up, in the order of its table; nothing for one that calls none up. */
export function careOf(worked: Worked, words: ShopWords = SHOP_ENGLISH): readonly CalledCare[] {
  const calls = new Calls<CareTag>();
  const does = operationsOf(worked);
  joints(does, worked, calls);
  if (worked.settings.place === "outdoors") outdoors(does, worked, calls);
  boxes(does, worked, calls);
  calls.when(HINGED.test(ownWords(worked)), "hinged");
  calls.when(isTall(worked) || worked.settings.anchoredTo !== "", "tall");
  calls.when(isHung(worked), "hung");
  calls.when(worked.settings.nearChildren, "children");
  calls.by(
    "salvage",
    does.salvage.map((m) => m.name),
  );
  return careFor(calls.called.keys()).map((row) => ({
    key: row.key,
    text: words.care(row),
    source: words.cite(row.source),
    about: namesBehind(calls.called, row.value.when),
  }));
}

/** What swings: told by its own name only, since a hinge is no part of the language. */
const HINGED = /\b(gate|door|lid|hatch|hinge|hinges|hinged)\b/i;

/** The title, the names of what is made, notes and steps. */
const ownWords = ({ settings, parts, rings, loaded }: Worked): string =>
  [
    settings.title,
    ...parts.keys(),
    ...rings.map((r) => r.name),
    ...loaded.files[0]!.tree.entries.flatMap((e) =>
      e.kind === "note" || e.kind === "step" ? [e.title.text] : [],
    ),
  ].join("\n");

function joints({ screwed, bolted, woods }: Operations, { settings }: Worked, calls: Calls<CareTag>): void {
  calls.when(bolted.length > 0, "bolts");
  if (screwed.length === 0) return;
  calls.when(settings.place === "outdoors", "screws-in-drying-wood");
  calls.by(
    "screws-in-drying-wood",
    woods.filter(isGreen).map((m) => m.name),
  );
}

function outdoors({ coats, woods, boards, panels }: Operations, worked: Worked, calls: Calls<CareTag>): void {
  for (const { with: name, parts, coats: many } of coats) {
    const kind = finishKind(name);
    const rough = parts.some((p) => worked.parts.get(p)?.material?.conditions.includes("rough"));
    // How long one coat lasts on rough wood is printed nowhere.
    const stain = !rough ? "stain-smooth" : (many ?? 0) >= 2 ? "stain-rough" : "finish";
    calls.by(kind === "stain" ? stain : kind === "oil" ? "oil" : "finish", [name]);
  }
  calls.when(coats.length === 0 && boards.length + panels.length > 0, "bare");
  calls.by(
    "treated-cuts",
    woods.filter((m) => m.conditions.includes("treated")).map((m) => m.name),
  );
  const feet = worked.space.pieces.filter((p) => p.bounds.least[2] <= HAIRLINE);
  calls.by(
    "feet",
    feet.map((p) => p.part),
  );
}

function boxes(
  { liners }: Operations,
  { boxes: all, linings, settings }: Worked,
  calls: Calls<CareTag>,
): void {
  for (const box of all) {
    const name = [box.name];
    const water = box.fill?.name === "water";
    if (box.drains === "gaps" || box.drains === "holes") calls.by("drains", name);
    if (box.drains === "nothing" && !water) calls.by("no-drain", name);
    if (box.grows.length > 0) calls.by("grows", name);
    if (box.fill && settings.place === "outdoors") calls.by(water ? "frost-water" : "frost", name);
  }
  calls.by(
    "liner",
    liners.map((l) => l.with),
  );
  const opened = linings.filter(({ opening: { how } }) => how === "over gaps" || how === "over holes");
  calls.by(
    "liner-open",
    opened.map((l) => l.entry.with.text),
  );
}
