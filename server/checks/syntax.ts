/** Checks on the form of the text: what the grammar complained about, told as problems. */
import { SYNTAX_TEMPLATES } from "../../grammar/messages";
import type { SyntaxCode } from "../../grammar/tree";
import type { Check } from "./check";

/** The check that tells all complaints of one code, with the grammar's own words and cures. */
export function syntaxCheck(code: SyntaxCode, title: string, page: string): Check {
  return {
    code,
    class: "error",
    title,
    page,
    templates: SYNTAX_TEMPLATES[code],
    run: ({ loaded }) =>
      loaded.files.flatMap(({ file, tree }) =>
        tree.complaints
          .filter((c) => c.code === code)
          .map(({ start, end, says, slots, cure }) => ({
            at: { file, start, end },
            says,
            slots,
            cures: cure
              ? [
                  {
                    says: cure.says,
                    slots: cure.slots,
                    edits: [{ file, start: cure.start, end: cure.end, text: cure.text }],
                  },
                ]
              : [],
          })),
      ),
  };
}
