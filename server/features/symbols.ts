/** The outline of a plan: what it declares and what it joins, in the order written. */
import type { Entry, Name, Span } from "../../grammar/tree";
import { type DeclaredKind, ifKnown, type Value } from "../plan";
import { lengthText, type Quantity, quantityText } from "../units";
import type { Worked } from "../worked";
import type { Checked } from "./checked";
import { exactText, thingText, written } from "./values";

export interface PlanSymbol {
  readonly name: string;
  /** What it comes to: `4 of 2x4, 29-1/4"`. */
  readonly detail: string;
  readonly kind: "plan" | "joint" | "step" | "built" | "rule" | "load" | Declaring;
  /** All of it, and the name to show. The second lies inside the first. */
  readonly range: Span;
  readonly selection: Span;
  readonly children: readonly PlanSymbol[];
}

type Declaring = DeclaredKind | "tools" | "yard";

/** One `plan` symbol with everything under it; without a plan line, everything by itself. */
export function symbolsOf({ worked, text }: Checked): PlanSymbol[] {
  const { entries } = worked.loaded.whole;
  const inside = entries.flatMap((e) => symbolOf(e, worked));
  const plan = entries.find((e) => e.kind === "plan");
  if (plan?.kind !== "plan") return inside;
  const { keyword, title } = plan;
  const selection = title.text ? { start: title.start, end: title.end } : spanOf(keyword);
  const { make } = worked.settings;
  return [
    {
      name: title.text || "plan",
      detail: make > 1 ? `make ${make}` : "",
      kind: "plan",
      range: { start: 0, end: text.length },
      selection,
      children: inside,
    },
  ];
}

function symbolOf(entry: Entry, worked: Worked): PlanSymbol[] {
  const symbol = (
    name: string,
    kind: PlanSymbol["kind"],
    detail: string,
    at: Span,
    body: readonly Entry[] = [],
  ) =>
    name === ""
      ? []
      : [
          {
            name,
            detail,
            kind,
            range: { start: entry.start, end: entry.end },
            selection: spanOf(at),
            children: body.flatMap((e) => symbolOf(e, worked)),
          },
        ];
  const named = (name: Name, kind: Declaring, detail: string) => symbol(name.text, kind, detail, name);
  switch (entry.kind) {
    case "measure":
    case "stock":
    case "sheet":
    case "roll":
    case "fastener":
    case "finish":
    case "fill":
    case "part":
    case "ring":
    case "box":
      return named(entry.name, entry.kind, detailOf(entry, worked));
    case "assembly":
      return symbol(entry.name.text, "assembly", "", entry.name, entry.body);
    case "tools":
      return symbol("tools", "tools", "", entry.keyword);
    case "yard":
      return symbol(entry.title.text || "yard", "yard", "", entry.title.text ? entry.title : entry.keyword);
    case "fasten":
    case "glue": {
      const joint = worked.joints.find((j) => j.entry === entry);
      const title = joint?.title ?? `${entry.first.map((s) => thingText(s.thing)).join(" and ")} into …`;
      return symbol(`${entry.kind} ${title}`, "joint", joint ? jointDetail(joint) : "", entry.keyword);
    }
    case "must":
      return symbol(
        `must ${written(entry.left)} ${entry.comparison} ${written(entry.right)}`,
        "rule",
        "",
        entry.keyword,
      );
    case "load":
      return symbol(`load ${thingText(entry.thing)}`, "load", written(entry.value), entry.keyword);
    case "built":
      return symbol(`built ${entry.date.text}`, "built", entry.by?.text ?? "", entry.date);
    case "step":
      return symbol(entry.title.text || "step", "step", "", entry.title.text ? entry.title : entry.keyword);
    default:
      return [];
  }
}

/** What a declared thing comes to, in a few words. */
export function detailOf(entry: Extract<Entry, { name: Name }>, worked: Worked): string {
  const { display } = worked.settings;
  const name = entry.name.text;
  const value = (v: Value<Quantity> | undefined) => {
    const q = ifKnown(v);
    return q ? exactText(q, display) : "";
  };
  switch (entry.kind) {
    case "measure":
      return value(worked.measures.get(name)?.value);
    case "part": {
      const part = worked.parts.get(name);
      const count = ifKnown(part?.count);
      return joined(`${count === undefined ? "" : `${count} `}of ${entry.of.text}`, value(part?.length));
    }
    case "stock":
    case "sheet": {
      const material = worked.materials.find((m) => m.name === name);
      const [t, w] = [ifKnown(material?.thickness), ifKnown(material?.width)];
      return [t, w].flatMap((q) => (q ? [exactText(q, display)] : [])).join(" x ");
    }
    case "fastener": {
      const size = worked.fasteners.find((f) => f.name === name)?.size;
      if (!size) return "";
      return size.gauge === undefined ? lengthText(size.length, display) : size.text;
    }
    case "ring": {
      const ring = worked.rings.find((r) => r.name === name);
      return ring ? `${ring.sides.length} sides` : "";
    }
    case "box": {
      const volume = ifKnown(worked.boxes.find((b) => b.name === name)?.volume);
      return volume ? quantityText(volume, display) : "";
    }
    default:
      return "";
  }
}

function jointDetail(joint: Worked["joints"][number]): string {
  const count = ifKnown(joint.count);
  const what = joint.fastener?.name ?? joint.size?.text ?? "";
  return joined(what, joint.entry.kind === "fasten" && count !== undefined ? String(count) : joint.pattern);
}

const joined = (...texts: readonly string[]): string => texts.filter((t) => t !== "").join(", ");
const spanOf = ({ start, end }: Span): Span => ({ start, end });
