/** What is said, in English, of boards that bear something: what was taken for granted of them, and what would make them hold. */
import type { Template } from "./telling";

export const HOLDING_PHRASES = {
  "as graded lumber": "{wood}, as lumber of grade No. 2, with no stamp looked for ({source}).",
  "as clear wood":
    "{wood} as a thin board, brought down from the strength of clear wood, since no table has one ({source}).",
  "as a panel": "A {wood} panel, by its capacity in bending ({source}).",
  "wood by another": "{wood}, by the values of {by},",
  "weak when wet": "It gets wet in use, which makes wood weaker.",
  "somebody on it":
    "Somebody sits or stands on it: {weight} at the worst place, since no load line says otherwise.",
  "hold it once more":
    "Hold it up in one more place, in the middle of its longest span: {span} is then left, and the same board will do.",
  "hold it twice more":
    "Hold it up in two more places on its longest span: {span} is then left, and the same board will do.",
  "one upright more":
    "Fasten an upright on it in the middle of its longest span, and tie that to the other side: {span} is then left, and the same board will do.",
  "two uprights more":
    "Fasten two uprights on it on its longest span, and tie them to the other side: {span} is then left, and the same board will do.",
  "cut from a stronger board": "Cut {part} from {section} instead.",
  "cut from a stronger board of the shop": "Cut {part} from {section} instead: the shop has it.",
  "nothing that was tried":
    "Neither two more holders nor a board up to 2.4 times as thick would do: carry it another way.",
} as const satisfies Readonly<Record<string, Template>>;
