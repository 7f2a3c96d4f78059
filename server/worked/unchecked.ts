/** What was not looked at, and why: never left unsaid. Causes that are mistakes are told as problems instead. */

import type { Entry } from "../../grammar/tree";
import { type At, type Cause, ifKnown, type Says, type Slots, say, type Value } from "../plan";
import { chooseNothing } from "./choose";
import type { Unchecked } from "./fault";
import { uncheckedGuarding } from "./guarding/unchecked";
import { holdingUnchecked } from "./holding";
import { currenciesOf } from "./layouts";
import { movementUnchecked } from "./movement";
import type { Placement } from "./placing";
import { rootsUnchecked } from "./roots";
import { shortageOf, whyNothing } from "./shortage";
import { unknownWaits } from "./step-finish";
import { standingUnchecked } from "./tipping/unchecked";
import { waterUnchecked } from "./water";
import { weatherUnchecked } from "./weather/unchecked";
import type { Worked } from "./work";

/** What entries mean that this version reads but does not work out. */
const LATER: Readonly<Partial<Record<Entry["kind"], { what: Says; why: Says }>>> = {
  step: { what: say("steps"), why: say("steps later") },
  glue: { what: say("glue holds"), why: say("glue later") },
};

type Partial1 = Omit<Worked, "unchecked">;

export function uncheckedOf(worked: Partial1): Unchecked[] {
  const list: Unchecked[] = [];
  const add: Add = (what, slots, value, at) => {
    if (value.state === "unknown") addCause(list, say(what, slots), value.cause, at);
    if (value.state === "outside")
      list.push({
        what: say(what, slots),
        why: say("outside table", { range: value.range }),
        ...(at && { at }),
      });
  };
  later(worked, list);
  for (const { placement, stands } of worked.pieces.lines)
    add("where it stands", { name: placement.subject.name }, stands, placeOf(placement));
  spaceAndWay(worked, list);
  for (const part of worked.parts.values()) {
    const slots = { name: part.name };
    add("how many there are", slots, part.count, part.declared.at);
    add("how long it is", slots, part.length, part.lengthAt);
    add("what it weighs", slots, part.weight, part.declared.at);
    if (part.notches.length > 0 && !worked.space.named.has(part.name)) {
      list.push({
        what: say("notches fit", slots),
        why: say("no piece placed"),
        at: part.declared.at,
      });
    }
  }
  for (const measure of worked.measures.values())
    add("what it comes to", { name: measure.name }, measure.value, measure.declared.at);
  for (const ring of worked.rings.filter((r) => r.lies === "flat")) {
    const beveled = ring.members.some(({ part }) => {
      const { leftEnd, rightEnd } = worked.parts.get(part) ?? {};
      return leftEnd?.bevel || rightEnd?.bevel;
    });
    const what = say("bevels meet", { name: ring.name });
    if (beveled) list.push({ what, why: say("only miters"), at: ring.declared.at });
  }
  for (const ring of worked.rings)
    add("whether it closes", { name: ring.name }, ring.closing, ring.declared.at);
  for (const joint of worked.joints) {
    const slots = { joint: joint.title };
    for (const { first, into, driven } of joint.paths)
      add("how far the screw goes", { first, into }, driven, joint.at);
    if (joint.entry.kind === "fasten") add("how many screws", slots, joint.count, joint.at);
    if (
      joint.entry.kind === "fasten" &&
      !joint.size &&
      !joint.entry.clauses.some((c) => c.kind === "broken" || c.kind === "driven")
    ) {
      list.push({ what: say("the screws", slots), why: say("unsaid which"), at: joint.at });
    }
  }
  boxes(worked, add, list);
  list.push(...uncheckedGuarding(worked));
  for (const { title, finish, exposed, amount, at } of worked.coats) {
    add("how much to finish", { coat: title }, exposed, at);
    if (finish && ifKnown(exposed))
      add("how much finish it takes", { finish: finish.name, coat: title }, amount, at);
  }
  for (const { name, roll, sheet, along, at } of worked.linings) {
    add("how large a liner", { box: name }, sheet, at);
    if (roll && ifKnown(sheet)) add("how much liner to buy", { roll: roll.name, box: name }, along, at);
  }
  for (const { step, coat, piece, why } of unknownWaits(worked))
    if (coat) add("coat dries", { finish: coat.line!.finish, thing: coat.words }, why, step.at);
    else add("glue sets", { piece: worked.space.pieces[piece!]!.part }, why, step.at);
  for (const { box, holes, at } of worked.drainage)
    if (holes) add("the drain holes", { box: box.name }, holes, at);
  list.push(...holdingUnchecked(worked));
  list.push(...rootsUnchecked(worked), ...standingUnchecked(worked));
  list.push(...waterUnchecked(worked.water), ...movementUnchecked(worked.movement));
  wood(worked, list);
  list.push(...weatherUnchecked(worked));
  for (const must of worked.musts) {
    for (const side of [must.left, must.right]) add("your own rule", {}, side, must.at);
  }
  return merged(list);
}

/** Puts something on the list when its value is not known, with why. */
type Add = (what: string, slots: Slots, value: Value<unknown>, at?: At) => void;

function addCause(list: Unchecked[], what: Says, cause: Cause, at: At | undefined): void {
  if (cause.kind !== "mistake") list.push({ what, why: cause.why, ...(at && { at }) });
}

/** What the space and the way in are compared with is everything placed; a line that could not be worked out is a mistake of its own. */
function spaceAndWay({ settings, pieces }: Partial1, list: Unchecked[]): void {
  if (pieces.lines.length > 0) return;
  const why = say("nothing placed");
  if (settings.space) list.push({ what: say("fits the space"), why });
  if (settings.wayIn) list.push({ what: say("goes in"), why });
}

const placeOf = ({ entry: { keyword, subject }, context: { file } }: Placement): At => ({
  file,
  start: keyword.start,
  end: subject.end,
});

function later(worked: Partial1, list: Unchecked[]): void {
  const { loaded } = worked;
  const main = loaded.files[0]!;
  for (const [kind, words] of Object.entries(LATER)) {
    const first = main.tree.entries.find((e) => e.kind === kind);
    if (first)
      list.push({ ...words, at: { file: main.file, start: first.keyword.start, end: first.keyword.end } });
  }
  unplaced(worked, list);
}

/** What only placed pieces would show. */
function unplaced({ placing, parts, joints, space, scope }: Partial1, list: Unchecked[]): void {
  if (placing.plan.placements.length === 0) {
    if (parts.size > 0) list.push({ what: say("pieces fit"), why: say("no line places them") });
    return;
  }
  for (const joint of joints)
    if (!joint.placed && chooseNothing(joint.entry, space, scope).length === 0)
      list.push({
        what: say("pieces touch", { joint: joint.title }),
        why: say("some placed nowhere"),
        at: joint.at,
      });
}

function boxes({ boxes, settings }: Partial1, add: Add, list: Unchecked[]): void {
  for (const box of boxes) {
    const { at } = box.declared;
    const slots = { box: box.name };
    add("how much it holds", slots, box.volume, at);
    if (box.volume.state !== "known") continue;
    add("what the fill weighs", slots, box.weights.saturated, at);
    if (ifKnown(box.weights.saturated)) {
      add("what it weighs empty", slots, box.own, at);
      if (!settings.floorLimit)
        list.push({ what: say("floor carries", slots), why: say("no floor limit"), at });
    }
  }
}

function wood({ boards, sheets, shopping }: Partial1, list: Unchecked[]): void {
  for (const work of [...boards, ...sheets]) {
    const { material, answer } = work;
    const nothing = material.sold.length === 0 && material.onHand.length === 0;
    if (nothing) {
      list.push({ what: say("what to buy", { material: material.name }), why: say("no lengths sold") });
    } else if (answer.unplaced.length > 0 && !whyNothing(work) && !shortageOf(work)) {
      const slots = { n: answer.unplaced.length, material: material.name };
      list.push({ what: say("where to cut from", slots), why: say("too large to lay out") });
    }
  }
  const lacking = new Map(
    [...boards, ...sheets].map(({ material: { name, sold } }) => [
      name,
      sold.some(({ price }) => price) ? sold.filter(({ price }) => !price) : [],
    ]),
  );
  for (const what of shopping.withoutPrice) {
    const sizes = (lacking.get(what) ?? []).map(({ length, width }) =>
      width ? { row: [length, width], by: " x " } : length,
    );
    const why = sizes.length > 0 ? say("no price of size", { sizes: { all: sizes } }) : say("no price");
    list.push({ what: say("what it costs", { what }), why });
  }
  for (const { material } of [...boards, ...sheets]) {
    const all = currenciesOf(material);
    const why = say("several currencies", { currencies: { all } });
    if (all.length > 1) list.push({ what: say("cheapest", { what: material.name }), why });
  }
  if (shopping.currencies.length > 1) {
    const why = say("several currencies", { currencies: { all: shopping.currencies } });
    list.push({ what: say("cost in all"), why });
  }
}

/** The same thing said once. */
function merged(list: readonly Unchecked[]): Unchecked[] {
  const seen = new Set<string>();
  return list.filter((u) => {
    const key = `${keyOf(u.what)}\n${keyOf(u.why)}`;
    return !seen.has(key) && seen.add(key);
  });
}

/** The same for what reads the same: names and numbers fill these. */
const keyOf = ({ says, slots }: Says): string => [says, ...Object.values(slots)].join("\n");
