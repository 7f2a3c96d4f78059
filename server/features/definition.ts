/** Where a name is declared: in the plan, in its shop file or in a file it brings; and where a file begins. */
import type { At, Reader } from "../plan";
import { standingAt } from "./at";
import type { Checked } from "./checked";
import { declaredAs } from "./values";

/** The declaration that the name at an offset means. `read` finds the file behind a `shop` or `bring` line. */
export function definitionAt(plan: Checked, offset: number, read: Reader): At | undefined {
  const { worked, file } = plan;
  const main = worked.loaded.files[0];
  if (!main) return undefined;
  const { spot, entry } = standingAt(main.tree, offset);
  switch (spot.is) {
    case "use":
    case "declared":
      return declaredAs(worked, spot.span.text)?.at;
    case "literal":
      return spot.span.form === "section" ? declaredAs(worked, spot.span.text)?.at : undefined;
    case "property":
      return declaredAs(worked, spot.property.of.name.text)?.at;
    case "screw":
      return worked.joints.find((j) => j.entry === entry)?.fastener?.declared.at;
    case "path": {
      const found = read(spot.span.text, file);
      return "refused" in found ? undefined : { file: found.file, start: 0, end: 0 };
    }
    default:
      return undefined;
  }
}
