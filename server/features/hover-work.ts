/** What a hover says of fasteners, joints and rings. */
import type { JointSide } from "../../grammar/tree";
import { problemText } from "../checks";
import { markLengths } from "../checks/set-out-words";
import { ifKnown } from "../plan";
import type { Ring as Closing } from "../solid/ring";
import { LENGTH, lengthText, moneyText, quantityText, roughly } from "../units";
import {
  type Fastener,
  type Joint,
  type Path,
  type Ring,
  type SetOut,
  setOutOf,
  type Worked,
} from "../worked";
import type { Checked } from "./checked";
import { jointHolds } from "./hover-holding";
import { COMMON } from "./hover-texts/common";
import type { Voice } from "./hover-texts/voice";
import { WORK } from "./hover-texts/work";
import { escaped, list, paragraphs, strong } from "./markdown";
import { bothTexts, exactText, fineTexts, whyNot } from "./values";

export function describeFastener(fastener: Fastener, worked: Worked, voice: Voice): string {
  const { language, display } = voice;
  const says = WORK[language];
  const common = COMMON[language];
  const { size, pack } = fastener;
  const used = worked.joints.filter((j) => j.fastener === fastener);
  const kind = [says.kind(fastener), size?.gauge !== undefined ? size.text : ""].filter(Boolean).join(", ");
  const price = pack && (pack.price ? common.forPrice(escaped(moneyText(pack.price))) : common.withoutPrice);
  return paragraphs(
    says.fastener(strong(fastener.name), escaped(kind)),
    size
      ? says.size(
          escaped(bothTexts(size.length, display)),
          escaped(fineTexts(size.diameter, display)),
          escaped(common.screwSize(size)),
        )
      : says.noSize,
    list([
      pack && price ? says.pack(pack.count, price) : undefined,
      fastener.onHand > 0 ? says.onHand(fastener.onHand) : undefined,
      ...used
        .slice(0, MOST_PATHS)
        .map((j) => says.usedIn(escaped(common.joint(j)), countText(j, worked.settings, voice))),
      used.length > MOST_PATHS ? says.moreJoints(used.length - MOST_PATHS) : undefined,
      used.length === 0 ? says.unused : undefined,
    ]),
  );
}

/** The most ways through a joint that are told. */
const MOST_PATHS = 8;

export function describeJoint(joint: Joint, worked: Worked, voice: Voice): string {
  const { language, display } = voice;
  const says = WORK[language];
  const common = COMMON[language];
  const { size, angle, paths } = joint;
  const title = escaped(common.joint(joint));
  if (joint.entry.kind === "glue") return paragraphs(says.glued(title), says.glueUnchecked);
  const name = joint.fastener ? ` (${escaped(joint.fastener.name)})` : "";
  return paragraphs(
    says.fastened(title),
    size
      ? says.screw(
          `${escaped(size.text)}${name}`,
          escaped(bothTexts(size.length, display)),
          escaped(fineTexts(size.diameter, display)),
          angle.approx > 0 ? says.slant(escaped(quantityText(angle, display))) : "",
          escaped(common.screwSize(size)),
        )
      : says.noScrew,
    list([
      ...paths.slice(0, MOST_PATHS).map((p) => pathText(p, voice)),
      paths.length > MOST_PATHS ? says.morePaths(paths.length - MOST_PATHS) : undefined,
      joint.pattern ? says.howMany(countText(joint, worked.settings, voice)) : undefined,
      ...setOutLines(joint, worked, voice),
      joint.pilot && says.pilot(escaped(fineTexts(joint.pilot, display))),
      joint.clearance && says.clearance(escaped(fineTexts(joint.clearance, display))),
      facesText(joint, voice),
    ]),
    jointHolds(joint, worked, voice),
  );
}

function countText(joint: Joint, { make }: Worked["settings"], voice: Voice): string {
  const { language, display } = voice;
  const says = WORK[language];
  const count = ifKnown(joint.count);
  const how = escaped(COMMON[language].setOut(joint, display));
  if (count === undefined) return says.countNot(how, whyNot(joint.count, voice));
  if (joint.pattern.endsWith("in all") && make === 1) return how;
  return says.count(how, count, make);
}

/** How many crossings, and the marks of the screws on each piece that is screwed through. */
function setOutLines(joint: Joint, { space }: Worked, voice: Voice): string[] {
  const screws = joint.placed?.screws ?? [];
  if (screws.length === 0) return [];
  const says = WORK[voice.language];
  const crossings = new Set(screws.map((s) => s.crossing)).size;
  const sets = setOutOf(joint, space);
  const marks = sets.slice(0, MOST_SETS).map((set) => {
    const { part, pieces } = set;
    const { id } = space.pieces[pieces[0]!]!;
    const which = pieces.length > 1 ? says.someOf(pieces.length, part) : COMMON[voice.language].piece(id);
    return says.marks(escaped(says.marksOn(which, gridTexts(set, voice))));
  });
  return [
    says.placed(screws.length, crossings),
    ...marks,
    ...(sets.length > MOST_SETS ? [says.moreSets(sets.length - MOST_SETS)] : []),
  ];
}

/** Sets of marks that a hover tells; the sheet tells all. */
const MOST_SETS = 4;

const gridTexts = ({ grids }: SetOut, { language, display }: Voice): string[] =>
  grids.map(({ on, along, across }) => {
    const { grid, from } = WORK[language];
    return grid(on, from(along, markLengths(along, display)), from(across, markLengths(across, display)));
  });

function pathText(path: Path, voice: Voice): string {
  const { language, display } = voice;
  const says = WORK[language];
  const driven = ifKnown(path.driven);
  if (!driven)
    return COMMON[language].lacks(escaped(says.pathNot(path.first, path.into)), whyNot(path.driven, voice));
  const layers = path.layers.map((l) => says.layer(l.part, l.face, exactText(l.depth, display)));
  const length = (mm: number) => lengthText(roughly(LENGTH, mm), display);
  const over = driven.tip.woodOverTip;
  const tip =
    over < 0 ? says.proud(length(-over)) : over === 0 ? says.noneOverTip : says.overTip(length(over));
  const percent = Math.round(driven.share * 100);
  return escaped(says.path(says.layers(layers), length(driven.bite), path.into, percent, tip));
}

function facesText(joint: Joint, { language }: Voice): string | undefined {
  const unsaid = (sides: readonly JointSide[]) => sides.flatMap((s) => (s.face ? [] : [s.thing.name.text]));
  const names = [...unsaid(joint.entry.first), ...unsaid(joint.entry.through), ...unsaid(joint.entry.into)];
  if (names.length === 0) return undefined;
  const { assumed, each } = COMMON[language];
  return assumed(WORK[language].wideFace(escaped(each([...new Set(names)]))));
}

export function describeRing(ring: Ring, { worked, problems }: Checked, voice: Voice): string {
  const { language, display } = voice;
  const says = WORK[language];
  const open = problems.find((p) => p.code === "ring-open" && p.about.includes(ring.name));
  const closing = ifKnown(ring.closing);
  const members = ring.members.map((m) => (m.count > 1 ? `${m.count} ${m.part}` : m.part)).join(", ");
  const state = open
    ? escaped(problemText(open.code, open, worked.settings.display, language))
    : closing?.kind === "ring"
      ? says.closing(
          closing.closes,
          escaped(exactText(roughly(LENGTH, closing.opening), display)),
          escaped(degrees(closing.misfitDegrees + 360)),
        )
      : ring.closing.state === "known"
        ? says.noWayRound
        : says.closesNot(whyNot(ring.closing, voice));
  return paragraphs(
    says.ring(strong(ring.name), ring.sides.length, escaped(members)),
    state,
    list([says.lies(ring.lies), ...(closing?.kind === "ring" ? cornerLines(ring, closing, voice) : [])]),
  );
}

function cornerLines(ring: Ring, closing: Closing, { language }: Voice): string[] {
  const says = WORK[language];
  const alike = new Map<string, number>();
  for (const { between, turn } of closing.corners) {
    const [a, b] = between;
    const key = says.corner(ring.sides[a]!, ring.sides[b]!, degrees(turn));
    alike.set(key, (alike.get(key) ?? 0) + 1);
  }
  return [...alike].slice(0, MOST_PATHS).map(([text, n]) => says.corners(n, escaped(text)));
}

const degrees = (n: number): string => `${n.toFixed(2).replace(/\.?0+$/, "")}°`;
