/** What is told when the pointer rests on something: what it is, what it comes to, and where that comes from. */
import type { Entry, Span } from "../../grammar/tree";
import type { Language } from "../checks";
import { type Declared, toldName } from "../plan";
import type { Joint } from "../worked";
import { type Spot, type Standing, standingAt } from "./at";
import type { Checked } from "./checked";
import { describeBox, describeFill } from "./hover-box";
import { describeBuilt } from "./hover-built";
import { describeCoat, describeFinish, describeLinings, describeRoll } from "./hover-finish";
import { describeLoad, placeHolds } from "./hover-holding";
import { describeMaterial, describePart } from "./hover-part";
import { type HoverPicture, pictureAt } from "./hover-picture";
import { describeAssembly, describePlace } from "./hover-place";
import { describeStep } from "./hover-step";
import { describeTerm, teachTerm, termAround, termBeside } from "./hover-term";
import { type Voice, voiceIn } from "./hover-texts/voice";
import { WORDS } from "./hover-texts/words";
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
  const { whole } = plan.worked.loaded;
  const standing = standingAt(whole, offset);
  const { spot } = standing;
  const { text } = whole;
  if (spot.is === "path") return undefined;
  if (spot.is === "words to people")
    return bareTerm(plan, offset, standing, "people", language) ?? titleOfStep(plan, standing, language);
  if (spot.is === "nothing") return bareTerm(plan, offset, standing, "plan", language);
  const tellIn = (tongue: Language) => tell(plan, standing, spot, voiceIn(tongue, plan.worked));
  const told = tellIn(language);
  const range = { start: spot.span.start, end: spot.span.end };
  const beside = termBeside(text, offset, standing);
  // By how long it is in English, so that the same is taught in every language.
  const long = beside && ((language === "en" ? told : tellIn("en"))?.length ?? 0);
  const term = long !== undefined && long <= AT_A_GLANCE ? beside : undefined;
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
function titleOfStep(plan: Checked, { entry, spot }: Standing, language: Language): Hover | undefined {
  if (entry?.kind !== "step" || spot.is !== "words to people" || spot.span.start !== entry.title.start)
    return undefined;
  const markdown = describeStep(entry, plan.worked, voiceIn(language, plan.worked));
  const { start, end } = entry.title;
  return markdown ? { markdown, range: { start, end } } : undefined;
}

function tell(
  plan: Checked,
  { entry, clause }: Standing,
  spot: Exclude<Spot, { is: "nothing" | "words to people" | "path" }>,
  voice: Voice,
): string | undefined {
  const { worked } = plan;
  const { language } = voice;
  const file = plan.file;
  switch (spot.is) {
    case "entry word":
      return entry && tellEntry(plan, entry, spot.span.text, voice);
    case "declared":
      return tellDeclared(plan, worked.scope.declared.get(spot.span.text), spot.span.text, voice);
    case "use":
      return paragraphs(
        entry?.kind === "place" && entry.subject.name.start === spot.span.start
          ? describePlace(entry, worked, voice)
          : undefined,
        tellUse(plan, spot.span.text, spot.use.also, voice),
      );
    case "code":
      return describeCode(spot.span.text, language);
    case "screw": {
      const joint = entry && jointOf(plan, entry);
      return joint ? describeJoint(joint, worked, voice) : describeScrew(spot.span, voice);
    }
    case "literal":
      return spot.span.form === "section"
        ? tellUse(plan, spot.span.text, "sections", voice)
        : describeLiteral(spot.span, voice);
    case "property":
      return describeProperty(spot.property, file, worked, voice);
    case "expression":
      return describeExpression(spot.expression, file, worked, voice);
    case "function":
      return describeFunction(spot.span.text, language);
    case "opening":
      return describeOpening(spot.form, language);
    case "word":
      if (entry?.kind === "built" && spot.span.start === entry.date.start)
        return describeBuilt(entry, worked, voice);
      return describeWord(spot.span.text, clause?.kind, voice);
  }
}

function tellEntry(plan: Checked, entry: Entry, word: string, voice: Voice): string | undefined {
  const { worked } = plan;
  const joint = jointOf(plan, entry);
  const coat = worked.coats.find((c) => c.entry === entry);
  const linings = worked.linings.filter((l) => l.entry === entry);
  return paragraphs(
    joint && describeJoint(joint, worked, voice),
    coat && describeCoat(coat, worked, voice),
    describeLinings(linings, worked, voice),
    entry.kind === "must" ? describeMust(entry, worked, voice) : undefined,
    entry.kind === "place" ? describePlace(entry, worked, voice) : undefined,
    entry.kind === "place" ? placeHolds(entry, worked, voice) : undefined,
    entry.kind === "load" ? describeLoad(entry, worked, voice) : undefined,
    entry.kind === "step" ? describeStep(entry, worked, voice) : undefined,
    entry.kind === "built" ? describeBuilt(entry, worked, voice) : undefined,
    describeEntryWord(word, voice.language),
    joint ? undefined : describeUnchecked(entry, worked, voice.language),
  );
}

const jointOf = ({ worked }: Checked, entry: Entry): Joint | undefined =>
  worked.joints.find((j) => j.entry === entry);

function tellUse(plan: Checked, name: string, also: string, voice: Voice): string | undefined {
  const { worked } = plan;
  const says = WORDS[voice.language];
  const declared = declaredAs(worked, name);
  if (declared) {
    const told = tellDeclared(plan, declared, declared.name, voice);
    return declared.name === name.replace("×", "x")
      ? told
      : paragraphs(says.every(strong(name), escaped(declared.name)), told);
  }
  if (also === "floor" && name === "floor") return says.floor(strong(name));
  const finish = also === "finishes" ? worked.finishes.find((f) => f.name === name) : undefined;
  if (finish) return describeFinish(finish, worked, voice);
  const roll = also === "liners" ? worked.rolls.find((r) => r.name === name) : undefined;
  if (roll) return describeRoll(roll, worked, voice);
  if (also === "fills") return describeFill(name, undefined, worked, voice);
  const material = worked.materials.find((m) => m.name === name.replace("×", "x"));
  return material && describeMaterial(material, voice);
}

function tellDeclared(
  plan: Checked,
  declared: Declared | undefined,
  name: string,
  voice: Voice,
): string | undefined {
  if (!declared) return undefined;
  const { file } = declared.at;
  const where = file === plan.file ? "" : WORDS[voice.language].declaredIn(escaped(toldName(file)));
  return paragraphs(tellKind(plan, declared, name, voice), where);
}

function tellKind(plan: Checked, declared: Declared, name: string, voice: Voice): string | undefined {
  const { worked } = plan;
  switch (declared.kind) {
    case "measure": {
      const measure = worked.measures.get(name);
      return measure && describeMeasure(measure, worked, voice);
    }
    case "part": {
      const part = worked.parts.get(name);
      return part && describePart(part, worked, voice);
    }
    case "stock":
    case "sheet": {
      const material = worked.materials.find((m) => m.name === name);
      return material
        ? describeMaterial(material, voice)
        : WORDS[voice.language].notWorkedOut(strong(name), declared.kind);
    }
    case "fastener": {
      const fastener = worked.fasteners.find((f) => f.name === name);
      return fastener && describeFastener(fastener, worked, voice);
    }
    case "ring": {
      const ring = worked.rings.find((r) => r.name === name);
      return ring && describeRing(ring, plan, voice);
    }
    case "box": {
      const box = worked.boxes.find((b) => b.name === name);
      return box && describeBox(box, worked, voice);
    }
    case "fill":
      return describeFill(name, declared, worked, voice);
    case "roll": {
      const roll = worked.rolls.find((r) => r.declared === declared);
      return roll && describeRoll(roll, worked, voice);
    }
    case "finish": {
      const finish = worked.finishes.find((f) => f.declared === declared);
      return finish && describeFinish(finish, worked, voice);
    }
    case "assembly":
      return describeAssembly(declared, worked, voice);
  }
}
