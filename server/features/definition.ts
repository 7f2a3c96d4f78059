/** Where a name is declared: in the plan, in its shop file or in a file it brings; and where a file begins. */
import { type At, type Declared, enclosedBy, type Reader } from "../plan";
import { type Standing, standingAt } from "./at";
import type { Checked } from "./checked";
import { declaredAs } from "./values";

/** The declaration that the name at an offset means. `read` finds the file behind a `shop` or `bring` line. */
export function definitionAt(plan: Checked, offset: number, read: Reader): At | undefined {
  const { worked, file } = plan;
  const { whole } = worked.loaded;
  const standing = standingAt(whole, offset);
  if (standing.spot.is === "path") {
    if (standing.entry?.kind === "enclosed") return undefined;
    const head = enclosedBy(whole, offset, standing.spot.span.text)?.head;
    if (head) return { file, start: head.path.start, end: head.path.end };
    const found = read(standing.spot.span.text, file, file);
    return "refused" in found ? undefined : { file: found.file, start: 0, end: 0 };
  }
  return declaredBy(plan, standing)?.at;
}

/** What the name, section, property or screw that stands somewhere was declared as; undefined where nothing was. */
export function declaredBy({ worked }: Checked, { spot, entry }: Standing): Declared | undefined {
  switch (spot.is) {
    case "use":
    case "declared":
      return declaredAs(worked, spot.span.text);
    case "literal":
      return spot.span.form === "section" ? declaredAs(worked, spot.span.text) : undefined;
    case "property":
      return declaredAs(worked, spot.property.of.name.text);
    case "screw":
      return worked.joints.find((j) => j.entry === entry)?.fastener?.declared;
    default:
      return undefined;
  }
}
