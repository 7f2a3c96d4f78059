/** What is told when the pointer rests on something: what it is, what it comes to, and where that comes from. */
import type { Entry, Span } from "../../grammar/tree";
import type { Language } from "../checks";
import type { Declared } from "../plan";
import { type Joint, kindWord } from "../worked";
import { type Spot, type Standing, standingAt } from "./at";
import type { Checked } from "./checked";
import { describeBox, describeFill } from "./hover-box";
import { describeCoat, describeFinish, describeLinings, describeRoll } from "./hover-finish";
import { describeLoad, placeHolds } from "./hover-holding";
import { describeMaterial, describePart } from "./hover-part";
import { type HoverPicture, pictureAt } from "./hover-picture";
import { describeAssembly, describePlace } from "./hover-place";
import { describeStep } from "./hover-step";
import { describeTerm, teachTerm, termAround, termBeside } from "./hover-term";
import {
  describeExpression,
  describeFunction,
  describeLiteral,
  describeMeasure,
  describeProperty,
  describeScrew,
} from "./hover-values";
import {
  describeCode,
  describeEntryWord,
  describeMust,
  describeOpening,
  describeUnchecked,
  describeWord,
} from "./hover-words";
import { describeFastener, describeJoint, describeRing } from "./hover-work";
import { escaped, paragraphs, strong } from "./markdown";
import { declaredAs } from "./values";

export interface Hover {
  readonly markdown: string;
  readonly range: Span;
  /** What a drawing beside the words shows. */
  readonly picture?: HoverPicture;
}

/** What to tell about an offset of the plan's own file; undefined where there is nothing to tell. */
export function hoverAt(plan: Checked, offset: number, language: Language = "en"): Hover | undefined {
  const main = plan.worked.loaded.files[0];
  if (!main) return undefined;
  const standing = standingAt(main.tree, offset);
  const { spot } = standing;
  const { text } = main.tree;
  if (spot.is === "path") return undefined;
  if (spot.is === "words to people")
    return bareTerm(plan, offset, standing, "people", language) ?? titleOfStep(plan, standing);
  const told = spot.is === "nothing" ? undefined : tell(plan, standing, spot);
  if (spot.is === "nothing") return bareTerm(plan, offset, standing, "plan", language);
  const range = { start: spot.span.start, end: spot.span.end };
  const beside = termBeside(text, offset, standing);
  const term = beside && (told?.length ?? 0) <= AT_A_GLANCE ? beside : undefined;
  const markdown = paragraphs(
    told,
    told && term && spot.is === "declared" ? "---" : undefined,
    term && (told && spot.is !== "declared" ? teachTerm(term, language) : describeTerm(term, language)),
  );
  if (markdown === "") return undefined;
  const picture = pictureAt(plan, offset, standing, term, language);
  return { markdown, range, ...(picture && { picture }) };
}

/** Letters of Markdown below which a word of the trade has room. */
const AT_A_GLANCE = 900;

/** A word of the trade where the plan's own things have nothing to tell. */
function bareTerm(
  plan: Checked,
  offset: number,
  standing: Standing,
  among: "plan" | "people",
  language: Language,
): Hover | undefined {
  const found = termAround(plan.text, offset, among);
  if (!found) return undefined;
  const { start, end, term } = found;
  const picture = pictureAt(plan, offset, standing, term, language);
  return { markdown: describeTerm(term, language), range: { start, end }, ...(picture && { picture }) };
}

/** A step's title tells what the step comes to. */
function titleOfStep(plan: Checked, { entry, spot }: Standing): Hover | undefined {
  if (entry?.kind !== "step" || spot.is !== "words to people" || spot.span.start !== entry.title.start)
    return undefined;
  const markdown = describeStep(entry, plan.worked);
  const { start, end } = entry.title;
  return markdown ? { markdown, range: { start, end } } : undefined;
}

function tell(
  plan: Checked,
  { entry, clause }: Standing,
  spot: Exclude<Spot, { is: "nothing" | "words to people" | "path" }>,
): string | undefined {
  const { worked } = plan;
  const { display } = worked.settings;
  const file = plan.file;
  switch (spot.is) {
    case "entry word":
      return entry && tellEntry(plan, entry, spot.span.text);
    case "declared":
      return tellDeclared(plan, worked.scope.declared.get(spot.span.text), spot.span.text);
    case "use":
      return paragraphs(
        entry?.kind === "place" && entry.subject.name.start === spot.span.start
          ? describePlace(entry, worked)
          : undefined,
        tellUse(plan, spot.span.text, spot.use.also),
      );
    case "code":
      return describeCode(spot.span.text);
    case "screw": {
      const joint = entry && jointOf(plan, entry);
      return joint ? describeJoint(joint, worked) : describeScrew(spot.span, display);
    }
    case "literal":
      return spot.span.form === "section"
        ? tellUse(plan, spot.span.text, "sections")
        : describeLiteral(spot.span, display);
    case "property":
      return describeProperty(spot.property, file, worked);
    case "expression":
      return describeExpression(spot.expression, file, worked);
    case "function":
      return describeFunction(spot.span.text);
    case "opening":
      return describeOpening(spot.form);
    case "word":
      return describeWord(spot.span.text, clause?.kind, worked);
  }
}

function tellEntry(plan: Checked, entry: Entry, word: string): string | undefined {
  const { worked } = plan;
  const joint = jointOf(plan, entry);
  const coat = worked.coats.find((c) => c.entry === entry);
  const linings = worked.linings.filter((l) => l.entry === entry);
  return paragraphs(
    joint && describeJoint(joint, worked),
    coat && describeCoat(coat, worked),
    describeLinings(linings, worked),
    entry.kind === "must" ? describeMust(entry, worked) : undefined,
    entry.kind === "place" ? describePlace(entry, worked) : undefined,
    entry.kind === "place" ? placeHolds(entry, worked) : undefined,
    entry.kind === "load" ? describeLoad(entry, worked) : undefined,
    entry.kind === "step" ? describeStep(entry, worked) : undefined,
    describeEntryWord(word),
    joint ? undefined : describeUnchecked(entry, worked),
  );
}

const jointOf = ({ worked }: Checked, entry: Entry): Joint | undefined =>
  worked.joints.find((j) => j.entry === entry);

function tellUse(plan: Checked, name: string, also: string): string | undefined {
  const { worked } = plan;
  const declared = declaredAs(worked, name);
  if (declared) {
    const told = tellDeclared(plan, declared, declared.name);
    return declared.name === name.replace("×", "x")
      ? told
      : paragraphs(`${strong(name)}: every ${escaped(declared.name)}`, told);
  }
  if (also === "floor" && name === "floor") return `${strong(name)}: the floor that it all stands on`;
  const finish = also === "finishes" ? worked.finishes.find((f) => f.name === name) : undefined;
  if (finish) return describeFinish(finish, worked);
  const roll = also === "liners" ? worked.rolls.find((r) => r.name === name) : undefined;
  if (roll) return describeRoll(roll, worked);
  if (also === "fills") return describeFill(name, undefined, worked);
  const material = worked.materials.find((m) => m.name === name.replace("×", "x"));
  return material && describeMaterial(material, worked);
}

function tellDeclared(plan: Checked, declared: Declared | undefined, name: string): string | undefined {
  if (!declared) return undefined;
  const where = declared.at.file === plan.file ? "" : `Declared in ${escaped(declared.at.file)}`;
  return paragraphs(tellKind(plan, declared, name), where);
}

function tellKind(plan: Checked, declared: Declared, name: string): string | undefined {
  const { worked } = plan;
  switch (declared.kind) {
    case "measure": {
      const measure = worked.measures.get(name);
      return measure && describeMeasure(measure, worked);
    }
    case "part": {
      const part = worked.parts.get(name);
      return part && describePart(part, worked);
    }
    case "stock":
    case "sheet": {
      const material = worked.materials.find((m) => m.name === name);
      return material
        ? describeMaterial(material, worked)
        : `${strong(name)}, ${kindWord(declared.kind)}: not worked out, since a mistake stands in the way or nothing uses it`;
    }
    case "fastener": {
      const fastener = worked.fasteners.find((f) => f.name === name);
      return fastener && describeFastener(fastener, worked);
    }
    case "ring": {
      const ring = worked.rings.find((r) => r.name === name);
      return ring && describeRing(ring, plan);
    }
    case "box": {
      const box = worked.boxes.find((b) => b.name === name);
      return box && describeBox(box, worked);
    }
    case "fill":
      return describeFill(name, declared, worked);
    case "roll": {
      const roll = worked.rolls.find((r) => r.declared === declared);
      return roll && describeRoll(roll, worked);
    }
    case "finish": {
      const finish = worked.finishes.find((f) => f.declared === declared);
      return finish && describeFinish(finish, worked);
    }
    case "assembly":
      return describeAssembly(declared, worked);
  }
}
