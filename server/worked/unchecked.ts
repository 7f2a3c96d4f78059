/** What was not looked at, and why: never left unsaid. Causes that are mistakes are told as problems instead. */

import type { Entry } from "../../grammar/tree";
import { type At, type Cause, ifKnown, type Value } from "../plan";
import { chooseNothing } from "./choose";
import type { Unchecked } from "./fault";
import type { Placement } from "./placing";
import { PLANNED_CODES } from "./planned";
import type { Worked } from "./work";

/** What entries mean that this version reads but does not work out. */
const LATER: Readonly<Partial<Record<Entry["kind"], { what: string; why: string }>>> = {
  load: { what: "loads: whether anything sags, tips or breaks", why: "strength is not worked out yet" },
  step: {
    what: "how long the steps really take, and whether clamps suffice for them",
    why: "times are taken as written, and of the tools only drill and brush are looked at",
  },
  glue: { what: "how glue joints hold", why: "only whether placed pieces touch is looked at yet" },
};

type Partial1 = Omit<Worked, "unchecked">;

export function uncheckedOf(worked: Partial1): Unchecked[] {
  const list: Unchecked[] = [];
  const add = (what: string, value: Value<unknown>, at?: At) => {
    if (value.state === "unknown") addCause(list, what, value.cause, at);
    if (value.state === "outside")
      list.push({ what, why: `its table only holds for ${value.range}`, ...(at && { at }) });
  };
  later(worked, list);
  for (const { placement, stands } of worked.pieces.lines)
    add(`where ${placement.subject.name} stands`, stands, placeOf(placement));
  spaceAndWay(worked, list);
  for (const part of worked.parts.values()) {
    add(`how many of ${part.name} there are`, part.count, part.declared.at);
    add(`how long ${part.name} is`, part.length, part.lengthAt);
    add(`what ${part.name} weighs`, part.weight, part.declared.at);
    if (part.notches.length > 0 && !worked.space.named.has(part.name)) {
      list.push({
        what: `whether the notches of ${part.name} fit what goes into them`,
        why: "none of its pieces is placed",
        at: part.declared.at,
      });
    }
  }
  for (const measure of worked.measures.values())
    add(`what ${measure.name} comes to`, measure.value, measure.declared.at);
  for (const ring of worked.rings.filter((r) => r.lies === "flat")) {
    const beveled = ring.members.some(({ part }) => {
      const { leftEnd, rightEnd } = worked.parts.get(part) ?? {};
      return leftEnd?.bevel || rightEnd?.bevel;
    });
    const why = "only its miters are worked out yet";
    if (beveled) list.push({ what: `whether the bevels of ${ring.name} meet`, why, at: ring.declared.at });
  }
  for (const ring of worked.rings) add(`whether ${ring.name} closes`, ring.closing, ring.declared.at);
  for (const joint of worked.joints) {
    for (const path of joint.paths)
      add(`how far the screw goes from ${path.first} into ${path.into}`, path.driven, joint.at);
    if (joint.entry.kind === "fasten") add(`how many screws ${joint.title} takes`, joint.count, joint.at);
    if (
      joint.entry.kind === "fasten" &&
      !joint.size &&
      !joint.entry.clauses.some((c) => c.kind === "broken" || c.kind === "driven")
    ) {
      list.push({ what: `the screws of ${joint.title}`, why: "the line does not say which", at: joint.at });
    }
  }
  boxes(worked, add, list);
  for (const { title, finish, exposed, amount, at } of worked.coats) {
    add(`how much there is to finish of ${title}`, exposed, at);
    if (finish && ifKnown(exposed)) add(`how much ${finish.name} ${title} takes`, amount, at);
  }
  for (const { name, roll, sheet, along, at } of worked.linings) {
    add(`how large a liner ${name} takes`, sheet, at);
    if (roll && ifKnown(sheet)) add(`how much ${roll.name} to buy for ${name}`, along, at);
  }
  wood(worked, list);
  for (const must of worked.musts) {
    for (const side of [must.left, must.right]) add("your own rule", side, must.at);
  }
  for (const line of worked.accepted) {
    if (!PLANNED_CODES.includes(line.code)) continue;
    list.push({
      what: `${line.code}, which the plan accepts`,
      why: "this version does not look for it yet",
      at: line.at,
    });
  }
  return merged(list);
}

function addCause(list: Unchecked[], what: string, cause: Cause, at: At | undefined): void {
  if (cause.kind !== "mistake") list.push({ what, why: cause.why, ...(at && { at }) });
}

/** What the space and the way in are compared with is everything placed; a line that could not be worked out is a mistake of its own. */
function spaceAndWay({ settings, pieces }: Partial1, list: Unchecked[]): void {
  if (pieces.lines.length > 0) return;
  const why = "it follows from where pieces stand, and none is placed";
  if (settings.space) list.push({ what: "whether it fits the space", why });
  if (settings.wayIn) list.push({ what: "whether it goes in by the way in", why });
}

const placeOf = ({ entry: { keyword, subject }, context: { file } }: Placement): At => ({
  file,
  start: keyword.start,
  end: subject.end,
});

function later(worked: Partial1, list: Unchecked[]): void {
  const { loaded, settings } = worked;
  const main = loaded.files[0]!;
  for (const [kind, words] of Object.entries(LATER)) {
    const first = main.tree.entries.find((e) => e.kind === kind);
    if (first)
      list.push({ ...words, at: { file: main.file, start: first.keyword.start, end: first.keyword.end } });
  }
  unplaced(worked, list);
  const why = "this version does not work it out yet";
  if (settings.nearGuard) list.push({ what: "climbing near a guard", why });
  if (settings.nearChildren) list.push({ what: "openings and edges where children are", why });
  if (settings.footLimit) list.push({ what: "what each foot presses on the floor", why });
}

/** What only placed pieces would show. */
function unplaced({ placing, parts, joints, space, scope }: Partial1, list: Unchecked[]): void {
  if (placing.plan.placements.length === 0) {
    if (parts.size > 0)
      list.push({
        what: "whether the pieces fit, touch, reach and stand",
        why: "no line says where they are placed",
      });
    return;
  }
  for (const joint of joints)
    if (!joint.placed && chooseNothing(joint.entry, space, scope).length === 0)
      list.push({
        what: `whether the pieces of ${joint.title} touch, and where its screws go`,
        why: "some of them are placed nowhere",
        at: joint.at,
      });
}

function boxes(
  { boxes, settings }: Partial1,
  add: (what: string, v: Value<unknown>, at?: At) => void,
  list: Unchecked[],
): void {
  for (const box of boxes) {
    const { at } = box.declared;
    add(`how much ${box.name} holds`, box.volume, at);
    if (box.volume.state !== "known") continue;
    add(`what the fill of ${box.name} weighs`, box.weights.saturated, at);
    if (ifKnown(box.weights.saturated)) {
      add(`what ${box.name} weighs empty`, box.own, at);
      if (!settings.floorLimit)
        list.push({
          what: `whether the floor carries ${box.name}`,
          why: "the plan gives no floor limit",
          at,
        });
    }
    list.push({
      what: `whether ${box.name} holds its fill, drains and stands`,
      why: "strength and water are not worked out yet",
      at,
    });
  }
}

function wood({ boards, sheets, shopping }: Partial1, list: Unchecked[]): void {
  for (const work of [...boards, ...sheets]) {
    const { material, answer } = work;
    const nothing = material.sold.length === 0 && material.onHand.length === 0;
    if (nothing) {
      list.push({
        what: `what to buy of ${material.name}`,
        why: "neither the plan nor the shop says what lengths are sold",
      });
    } else if (answer.unplaced.length > 0) {
      const n = answer.unplaced.length;
      list.push({
        what: `where ${n === 1 ? "one piece" : `${n} pieces`} of ${material.name} can be cut from`,
        why: "the first answer found no wood for them: nothing more is sold, or it is not long enough",
      });
    }
  }
  for (const what of new Set(shopping.withoutPrice))
    list.push({ what: `what ${what} costs`, why: "no price is given" });
  if (shopping.currencies.length > 1) {
    list.push({ what: "what it costs in all", why: `prices are in ${shopping.currencies.join(" and ")}` });
  }
}

/** The same thing said once. */
function merged(list: readonly Unchecked[]): Unchecked[] {
  const seen = new Set<string>();
  return list.filter((u) => {
    const key = `${u.what}\n${u.why}`;
    return !seen.has(key) && seen.add(key);
  });
}
