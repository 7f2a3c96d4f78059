/** The not-checked list in words: what was not looked at, and why. */
import type { Cause, Says } from "../plan";
import { SIXTEENTHS } from "../units";
import type { Unchecked } from "../worked";
import { counted, type Language, type Template, written } from "./telling";
import { TONGUES } from "./tongues";

/** What was not looked at, and why: "{what}, since {why}". */
export const UNCHECKED = {
  // What.
  loads: "loads: whether anything sags or breaks",
  steps: "how long the steps really take, and whether clamps suffice for them",
  "glue holds": "how glue joints hold",
  "where it stands": "where {name} stands",
  "how many there are": "how many of {name} there are",
  "how long it is": "how long {name} is",
  "what it weighs": "what {name} weighs",
  "notches fit": "whether the notches of {name} fit what goes into them",
  "what it comes to": "what {name} comes to",
  "bevels meet": "whether the bevels of {name} meet",
  "whether it closes": "whether {name} closes",
  "how far the screw goes": "how far the screw goes from {first} into {into}",
  "how many screws": "how many screws {joint} takes",
  "the screws": "the screws of {joint}",
  "your own rule": "your own rule",
  "roots have room": "whether {crop} finds room for its roots in {box}",
  "tips over": "whether it tips over",
  "thing tips over": "whether what stands on {foot} tips over",
  "tips filled": "whether it tips over once {box} is filled",
  "anchor holds": "whether its anchor holds",
  "accepted code": "{code}, which the plan accepts",
  "fits the space": "whether it fits the space",
  "goes in": "whether it goes in by the way in",
  climbing: "climbing near a guard",
  "openings for children": "openings and edges where children are",
  "feet press": "what each foot presses on the floor",
  "pieces fit": "whether the pieces fit, touch, reach and stand",
  "pieces touch": "whether the pieces of {joint} touch, and where its screws go",
  "how much it holds": "how much {box} holds",
  "what the fill weighs": "what the fill of {box} weighs",
  "what it weighs empty": "what {box} weighs empty",
  "floor carries": "whether the floor carries {box}",
  "box holds": "whether {box} holds its fill and drains",
  "box holds": "whether {box} holds its fill and stands",
  "water leaves": "whether water can leave {box}",
  "how water runs":
    "how water runs through {box}: past fabric that clogs, over its bottom, and through holes that lie on wood",
  "gaps in the wet": "whether {name} boards side by side have room to swell",
  "boards cup": "whether boards cup, and whether screws near both their edges split them as they swell",
  "how much to finish": "how much there is to finish of {coat}",
  "how much finish it takes": "how much {finish} {coat} takes",
  "how large a liner": "how large a liner {box} takes",
  "how much liner to buy": "how much {roll} to buy for {box}",
  "the drain holes": "the drain holes of {box}",
  "coat dries": "whether {finish} on “{thing}” has dried when it is handled again",
  "glue sets": "whether the glue of {piece} has set when it is worked on again",
  "what to buy": "what to buy of {material}",
  "where to cut from": counted(
    "n",
    "where one piece of {material} can be cut from",
    "where {n} pieces of {material} can be cut from",
  ),
  "what it costs": "what {what} costs",
  "cost in all": "what it costs in all",
  // Why.
  "strength later": "strength is not worked out yet",
  "steps later": "times are taken as written, and of the tools only drill and brush are looked at",
  "glue later": "only whether placed pieces touch is looked at yet",
  "water later": "strength and water are not worked out yet",
  "no table of roots": "no table says what {crop} wants in a container",
  "nothing joined": "no line says how its pieces are joined",
  "in the ground": "it goes into the ground, and how that holds it is not worked out",
  "no weight": "nothing of it has a known weight",
  "feet in one line": "its feet stand in one line",
  "weighs nothing": "the weight of {parts} is not known, and counts as nothing",
  "fill weight unknown": "what its fill weighs dry and saturated is not known",
  "anchor in words": "the plan tells of it only in words",
  "unsaid place": "the plan does not say whether it stands outdoors",
  "unsaid drain and bottom": "it does not say how it drains, and no bottom of it is placed between its walls",
  "bottom not between walls": "no bottom of it is placed between its walls",
  "only ways out": "only how many ways out there are, and how wide, is looked at",
  "no shrinkage": "no table says how much {wood} swells",
  "only widths": "only how much wider they become is looked at",
  "not worked out yet": "this version does not work it out yet",
  "not looked for yet": "this version does not look for it yet",
  "only miters": "only its miters are worked out yet",
  "outside table": "its table only holds for {range}",
  "a mistake": "a mistake stands in the way",
  "screw cannot be driven": "the screw cannot be driven like that",
  "no piece placed": "none of its pieces is placed",
  "nothing placed": "it follows from where pieces stand, and none is placed",
  "no line places them": "no line says where they are placed",
  "some placed nowhere": "some of them are placed nowhere",
  "placed nowhere": "{name} is placed nowhere",
  "it is placed nowhere": "it is placed nowhere",
  "walls placed nowhere": "the walls of {box} are placed nowhere",
  "no wall square": "no wall of {box} stands square to that direction",
  "walls on one side": "the walls of {box} stand on one side only",
  "crossings unknown": "where pieces cross follows from where they stand, and they are placed nowhere",
  "inside from walls": "its inside follows from its walls, and these do not stand on all four sides",
  "outline from parts": "its outline follows from where its parts stand",
  "not counted": "neither its line nor a place says how many",
  "unsaid which": "the line does not say which",
  "unsaid how far it goes": "neither the plan nor the shop says how far {name} goes",
  "unsaid drain holes": "the plan does not say both how many there are and how wide",
  "unsaid drying": "neither the plan nor the shop says how long {name} takes to dry",
  "unsaid times": "the steps between do not all say how long they take",
  "unsaid roll width": "neither the plan nor the shop says how wide {name} is",
  "roll too narrow": "{name} is too narrow for strips that lie over each other so far",
  "chooses none": "“{words}” chooses none of the pieces that stand there",
  "chosen by place": "which “{words}” are follows from where they stand, and no line places them",
  "assembly placed nowhere": "{name} is placed nowhere, so nothing says how many pieces it takes",
  "unsaid fill": "the plan does not say what fills it",
  "unsaid empty weight": "the plan names neither its walls and bottom nor what it weighs empty",
  "no dry weight": "no dry weight of {name} is known",
  "no moist weight": "no moist weight of {name} is known",
  "no saturated weight": "no saturated weight of {name} is known",
  "no weight of wood": "no table gives the weight of {wood}",
  "no floor limit": "the plan gives no floor limit",
  "no lengths sold": "neither the plan nor the shop says what lengths are sold",
  "no wood found": "the first answer found no wood for them: nothing more is sold, or it is not long enough",
  "no price": "no price is given",
  "several currencies": "prices are in {currencies}",
} as const satisfies Readonly<Record<string, Template>>;

const ENGLISH: Readonly<Record<string, Template>> = UNCHECKED;

/** Something that was not looked at, and why: both without a capital and a full stop. */
export const uncheckedText = (
  { what, why }: Pick<Unchecked, "what" | "why">,
  language: Language = "en",
): { readonly what: string; readonly why: string } => ({
  what: textOf(what, language),
  why: textOf(why, language),
});

/** Why a value could not be had. */
export const causeText = ({ why }: Cause, language: Language = "en"): string => textOf(why, language);

/** No lengths stand in these texts, so it does not matter how a plan shows them. */
function textOf({ says, slots }: Says, language: Language): string {
  const tongue = TONGUES[language];
  return written(tongue.notChecked?.(says) ?? ENGLISH[says] ?? says, slots, SIXTEENTHS, tongue);
}
