/** Clauses that open with a number: no word finds them, so they are offered as they would be written here. */
import type { Form } from "../../grammar/forms";
import { CLAUSE_PATTERNS, stillOpen } from "./completion-forms";
import { clauseDocument } from "./completion-names";
import { type Asking, type Offer, offer, RANK } from "./completion-offer";
import { measuredFrom, type Open } from "./completion-place";
import { drivenOffer, saidOfScrews } from "./completion-screws";
import { filled } from "./completion-snippet";
import type { Typed } from "./completion-typed";

export function exampleOffers(asking: Asking, typed: Typed, open: Open | undefined): Offer[] {
  const numbered = (CLAUSE_PATTERNS.get(typed.entry) ?? []).filter(
    ({ form }) => form.opens.length === 0 && stillOpen(typed.entry, "", typed.said),
  );
  return [...numbered.flatMap(({ form }) => examplesOf(form, asking, typed, open)), ...extents(typed)];
}

function examplesOf(form: Form, asking: Asking, typed: Typed, open: Open | undefined): Offer[] {
  const documentation = () => clauseDocument(form, asking);
  const written = (text: string, rank: number): Offer => numberOffer(text, rank, documentation);
  const all = typed.clauses.map((c) => c.map((t) => t.image));
  switch (typed.entry) {
    case "fasten": {
      const said = saidOfScrews(typed);
      const driven = said.driven ? undefined : drivenOffer(asking);
      return [
        ...(driven
          ? [{ ...driven, documentation }]
          : said.driven
            ? []
            : [written(form.example, RANK.word + 1)]),
        ...(said.place || said.spacing ? [] : [written('{6"} on center', RANK.word + 1)]),
      ];
    }
    case "place": {
      const from = measuredFrom(asking);
      const counted = ["high", "across", "deep"].filter((w) => !all.some((c) => c[1] === w));
      const repeats = counted.map((w, i) => written(`{2} ${w}`, RANK.word - 0.5 + i / 100));
      const spaced = counted.length < 3 ? [written('{3"} apart', RANK.word - 0.6)] : [];
      const near = from && open && open.axes.length > 0;
      return [
        ...(near
          ? [`{3"} above ${from}`, `{1"} in from left of ${from}`].map((t) => written(t, RANK.other))
          : []),
        ...spaced,
        ...repeats,
      ];
    }
    default:
      return [
        written(
          form.example.replace(/^\d+/, (n) => (form.example.startsWith("#") ? n : `{${n}}`)),
          RANK.word + 1,
        ),
      ];
  }
}

/** The sizes that a list of the plan's room still lacks. */
function extents({ entry, previous, clauses }: Typed): Offer[] {
  if (entry !== "plan" || !Object.hasOwn(ROOM, previous)) return [];
  const from = clauses.findLastIndex((c) => c[0]?.image === previous.split(" ")[0]);
  const said = new Set(clauses.slice(from).flatMap((c) => c.map((t) => t.image)));
  return (ROOM[previous] ?? [])
    .filter((text) => !said.has(text.split(" ")[1]!))
    .map((text, i) => numberOffer(text, RANK.likely + i / 100));
}

const ROOM: Readonly<Record<string, readonly string[]>> = {
  space: ['{60"} wide', '{30"} deep', '{48"} high'],
  "way in": ['{32"} wide', '{78"} high'],
};

function numberOffer(text: string, rank: number, documentation?: () => string): Offer {
  const { plain, snippet } = filled(text, () => []);
  return offer(plain, "clause", rank, {
    insertText: plain,
    ...(snippet !== plain && { snippet }),
    ...(documentation && { documentation }),
  });
}
