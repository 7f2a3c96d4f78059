/** How heads, clauses and functions are written, with what stands in each place: `{length}` is told by signature-words.ts. */
import type { Part } from "./signature-words";

/** One way of writing something; `when` tells it from the others by what is typed. */
export interface Written {
  readonly text: string;
  readonly when?: RegExp;
}

const one = (text: string): readonly Written[] => [{ text }];

/** The first line of an entry, without the word that opens it. */
export const HEADS: Readonly<Record<string, readonly Written[]>> = {
  measure: one("{name} = {value}"),
  stock: one("{name} of {section}"),
  sheet: one("{name}"),
  roll: one("{name}"),
  fastener: one("{name}"),
  finish: one("{name}"),
  fill: one("{name}"),
  part: one("{name} {how many} of {stock}"),
  assembly: one("{name}"),
  ring: one("{name} = {how many} {part} and {part}"),
  box: one("{name}"),
  place: one("{thing} {how it lies}"),
  fasten: one("{first} through {between} into {last}"),
  glue: one("{first} to {last}"),
  coat: one("{things} with {finish}"),
  line: one("{box} with {roll}"),
  load: one("{thing} {weight} {spread, anywhere or middle}"),
  must: one("{value} {comparison} {value} because {reason}"),
  accept: one("{code} on {thing} because {reason}"),
  built: one("{date} by {words}"),
};

const END = one("mitered {angle} and beveled {angle}");
const OUT = [
  { text: "{length} x {length} at left end" },
  { text: "{length} x {length} at {length} from left", when: /\bat\s+[\d(]/ },
] as const;

/** What follows a clause's opening words; a clause that is not here is whole with them. */
export const CLAUSES: Readonly<Record<string, Readonly<Record<string, readonly Written[]>>>> = {
  plan: {
    language: one("{number}"),
    units: one("{inches or millimetres} to {length}"),
    "anchored to": one("{words}"),
    space: one("{length} wide, {length} deep, {length} high"),
    "way in": one("{length} wide, {length} high"),
    "floor limit": one("{pressure} by {words}"),
    "foot limit": one("{weight} by {words}"),
    "of which": one("{words} {pressure}"),
    budget: one("{money}"),
    tax: one("{share}"),
    spare: one("{number} in {number}"),
    kerf: one("{length}"),
    make: one("{number}"),
    lumber: one("{dry, green or planed metric}"),
    "written by": one("{words}"),
    licence: one("{words}"),
  },
  measure: { "at least": one("{value}"), "at most": one("{value}") },
  stock: {
    actual: one("{length} x {length}"),
    measured: one("{length} x {length}"),
    species: one("{wood}"),
    moisture: one("{dry, green or a share}"),
    sold: one("{length} {money}, …"),
    "on hand": one("{number} of {length} bad {length} to {length}"),
    "end trim": one("{length}"),
  },
  sheet: {
    thickness: one("{length}"),
    plywood: one("{length}"),
    species: one("{wood}"),
    sold: one("{length} x {length} {money}, …"),
    "on hand": one("{number} of {length} x {length}"),
    "grain along": one("{length or width}"),
  },
  roll: { width: one("{length}"), price: one("{money} per {foot, yard or metre}") },
  fastener: {
    "": one("{size} {screw, nail or bolt}"),
    nail: one("{length} x {length}"),
    bolt: one("{length} x {length}"),
    thread: one("{length}"),
    coating: one("{stainless, galvanized, coated or plain}"),
    "box of": one("{number} {money}"),
    "on hand": one("{number}"),
  },
  finish: {
    covers: one("{area} per {gal, qt or L}"),
    "": one("{number} coats"),
    dries: one("{time}"),
    "tin of": one("{volume} {money}"),
  },
  fill: { dry: one("{density}"), moist: one("{density}"), saturated: one("{density}") },
  yard: { tax: one("{share}") },
  tools: {
    kerf: one("{length}"),
    "miters to": one("{angle}"),
    "bevels to": one("{angle}"),
    has: one("{words} and {words}"),
  },
  part: {
    length: one("{length} {between which points}"),
    "cut to fit": one("plus {length}"),
    width: one("{length}"),
    ends: END,
    "left end": END,
    "right end": END,
    "long points on": one("{one edge or opposite edges}"),
    notch: OUT,
    dado: OUT,
    "": one("{number} left and {number} right"),
  },
  box: {
    walls: one("{things}"),
    bottom: one("{things}"),
    inside: one("{length} x {length} x {length}"),
    "tapering to": one("{length} x {length}"),
    outline: one("{length} x {length}"),
    "filled with": [
      { text: "{fill} to {length} below rim" },
      { text: "{fill} {length} deep", when: /\bdeep\b/ },
    ],
    "carried by": one("{things}"),
    "drains through": one("the gaps"),
    "drains by": one("{number} holes of {length}"),
    grows: one("{crop} and {crop}"),
    weighs: one("{weight} empty"),
  },
  place: {
    "wide face": one("{side}"),
    "long points": one("{side}"),
    leaning: one("{angle} {side}"),
    sloping: one("{angle} down to the {side}"),
    on: one("{thing}"),
    under: one("{thing}"),
    "left of": one("{thing}"),
    "right of": one("{thing}"),
    "in front of": one("{thing}"),
    behind: one("{thing}"),
    "flush with": one("{side} of {thing}"),
    between: one("{thing} and {thing}"),
    centered: one("{direction} on {thing}"),
    "at each corner of": [{ text: "{length} x {length}" }, { text: "{thing}", when: /corner of\s+[a-z]/ }],
    "diagonally on": one("{side} of {thing}"),
    from: one("{corner} to {corner}"),
    "": [
      { text: "{length} above {thing}" },
      { text: "{length} in from {side} of {thing}", when: /\bin\b/ },
      { text: "{length} past {side} of {thing}", when: /\bpast\b/ },
      { text: "{length} from {side}", when: /[\d"'m] from\b/ },
      { text: "{number} high", when: /^\d+ (?:high|across|deep)?$/ },
      { text: "{length} apart", when: /\bapart\b/ },
    ],
    "spread between": one("{thing} and {thing}"),
    "spread over": one("{thing}"),
    "at most": one("{length} apart"),
    mirrored: one("{direction} about {thing}"),
  },
  fasten: {
    "": [
      { text: "{how many} {size} at each crossing" },
      { text: "{how many} {size} at each end", when: /at each end/ },
      { text: "{how many} {size} along it", when: /\balong/ },
      { text: "{how many} {size} in all", when: /\bin\b/ },
      { text: "{length} on center", when: /^[^#]*(?:["'m]|\bon\b)(?!.*#)/ },
    ],
    pilot: one("{length}"),
    clearance: one("{length}"),
    angled: one("{angle}"),
  },
  glue: { with: one("{words}") },
  coat: { "": one("{number} coats") },
  line: { fold: one("{length}"), overlap: one("{length}") },
  step: {
    uses: one("{things}"),
    coats: one("{things}"),
    lines: one("{box}"),
    takes: one("{time}"),
    "then wait": one("{time}"),
    wait: one("{time}"),
    "": one("{number} people"),
  },
  built: {
    measured: [
      { text: "{measure} = {value} because {reason}" },
      { text: "length of {part} = {length} because {reason}", when: /^\s*length/ },
    ],
    used: one("{stock} instead of {stock} because {reason}"),
    changed: one("{words}"),
    wear: one("{date} {words}"),
  },
};

/** Everything that stands in braces above. */
export const PARTS_IN_USE: readonly string[] = [HEADS, ...Object.values(CLAUSES)].flatMap((table) =>
  Object.values(table).flatMap((list) =>
    list.flatMap(({ text }) => [...text.matchAll(/\{([^}]+)\}/g)].map((m) => m[1]!)),
  ),
);

export const isPart = (text: string, words: Readonly<Record<Part, string>>): text is Part =>
  Object.hasOwn(words, text);
