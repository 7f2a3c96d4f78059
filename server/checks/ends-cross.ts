import { ifKnown } from "../plan";
import type { Check, Finding } from "./check";
import { ofKind } from "./faults";
import { apart } from "./writing";

export const endsCross: Check = {
  code: "ends-cross",
  class: "error",
  title: "End cuts that run into each other",
  page: `On a short wide piece, slanted end cuts meet before they reach the far edge, and there is nothing left between them. Make
the piece longer, or its ends less slanted.

\`\`\`sawbuck
part block 2 of 1x6, length 8", long point to long point, ends mitered 45°
\`\`\`

\`\`\`sawbuck
part block 2 of 1x6, length 14", long point to long point, ends mitered 45°
\`\`\``,
  templates: {
    cross:
      "“{name}” is only {length} long, and its end cuts run into each other: at {least} they would just meet.",
    end: "It is cut here.",
    longer: "Make “{name}” longer than {least}, or its ends less slanted.",
  },
  run: (worked) =>
    ofKind(worked, "ends-cross").flatMap(({ name, least }): Finding[] => {
      const part = worked.parts.get(name);
      const is = ifKnown(part?.length);
      if (!part || !is) return [];
      const [length, meets] = apart(is, least, worked.settings.display);
      const ends = [part.leftEnd, part.rightEnd].flatMap((e) => (e ? [e.at] : []));
      return [
        {
          at: part.lengthAt,
          about: [name],
          says: "cross",
          slots: { name, length, least: meets },
          numbers: [
            { name: "length", value: is, source: "the plan" },
            { name: "the ends meet at", value: least, source: "worked out" },
          ],
          related: ends
            .filter((e, i) => ends.findIndex((other) => other.start === e.start) === i)
            .map((at) => ({ at, says: "end", slots: {} })),
          cures: [{ says: "longer", slots: { name, least: meets }, edits: [] }],
        },
      ];
    }),
};
