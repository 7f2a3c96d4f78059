/**
 * What a plan's text says, as typed nodes with their places in the text. The tree knows no trade and no arithmetic:
 * a length is still the text `83-1/2"`. It is always whole: an entry or clause that could not be read is kept as
 * such (`unknown`, `broken`) beside the complaint about it.
 */

/** Offsets in the text, in UTF-16 units; `end` is just past the last one. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export interface Name extends Span {
  readonly text: string;
}

/** Words to people: the rest of a line, or a file's path. */
export interface Text extends Span {
  readonly text: string;
}

export type LiteralForm =
  | "length"
  | "angle"
  | "measured"
  | "money"
  | "share"
  | "number"
  | "section"
  | "screw";

export interface Literal extends Span {
  readonly kind: "literal";
  readonly form: LiteralForm;
  readonly text: string;
}

/** One named thing, perhaps narrowed: `legs`, `front left leg`, `2x4`, `floor`. */
export interface Thing extends Span {
  readonly where: readonly Name[];
  readonly name: Name;
}

export type Expression =
  | Literal
  | (Span & { readonly kind: "name"; readonly name: Name })
  | (Span & { readonly kind: "negative"; readonly value: Expression })
  | (Span & {
      readonly kind: "sum";
      readonly operator: "+" | "-" | "*" | "/";
      readonly left: Expression;
      readonly right: Expression;
    })
  | (Span & { readonly kind: "call"; readonly name: Name; readonly args: readonly Expression[] })
  | (Span & { readonly kind: "round"; readonly value: Expression; readonly step: Expression })
  /** `overall width of legs`: the property's words joined by one blank. */
  | (Span & { readonly kind: "property"; readonly property: Name; readonly of: Thing });

export type Comparison = "at most" | "at least" | "less than" | "more than" | "exactly";

export type Side = "left" | "right" | "front" | "back" | "top" | "bottom";
export type Lie = "upright" | "across" | "front to back" | "flat" | "on edge";

/** A clause: what follows a comma or stands on a line of its own. */
export type Clause = Span &
  (
    | PlanClause
    | MaterialClause
    | PartClause
    | BoxClause
    | PlaceClause
    | JointClause
    | WorkClause
    | BuiltClause
  );

export interface Offer extends Span {
  readonly length: Expression;
  readonly width?: Expression;
  readonly price?: Expression;
}
export interface OnHand extends Span {
  readonly count: Expression;
  readonly length: Expression;
  readonly width?: Expression;
  readonly bad: readonly { readonly from: Expression; readonly to: Expression }[];
}
export interface Extent extends Span {
  readonly side: "wide" | "deep" | "high" | "long";
  readonly value: Expression;
}

export type PlanClause =
  | { readonly kind: "language"; readonly value: Expression }
  | { readonly kind: "units"; readonly system: "inches" | "millimetres"; readonly mark?: Expression }
  | { readonly kind: "setting"; readonly where: "outdoors" | "indoors" }
  | { readonly kind: "near"; readonly what: "children" | "guard" }
  | { readonly kind: "space" | "way in"; readonly extents: readonly Extent[] }
  | { readonly kind: "floor limit" | "foot limit"; readonly value: Expression; readonly by?: Text }
  | { readonly kind: "of which"; readonly what: Name; readonly value: Expression }
  | { readonly kind: "budget" | "tax" | "make" | "kerf"; readonly value: Expression }
  | { readonly kind: "spare"; readonly count: Expression; readonly per: Expression }
  | { readonly kind: "lumber"; readonly standard: "dry" | "green" | "planed metric" }
  | { readonly kind: "anchored" | "written by" | "licence"; readonly text: Text };

export type MaterialClause =
  | { readonly kind: "actual" | "measured"; readonly sides: readonly Expression[] }
  | { readonly kind: "species"; readonly name: Name }
  | { readonly kind: "moisture"; readonly state?: "dry" | "green"; readonly value?: Expression }
  | { readonly kind: "condition"; readonly word: "treated" | "untreated" | "heartwood" | "rough" | "painted" }
  | { readonly kind: "sold"; readonly offers: readonly Offer[] }
  | { readonly kind: "on hand"; readonly items: readonly OnHand[]; readonly count?: Expression }
  | { readonly kind: "end trim"; readonly value: Expression }
  | { readonly kind: "salvage"; readonly rule: "use up" | "keep" }
  | { readonly kind: "thickness" | "plywood"; readonly value: Expression }
  | { readonly kind: "grain"; readonly along: "length" | "width" | "none" }
  | { readonly kind: "price"; readonly value: Expression; readonly per: Name }
  | { readonly kind: "food"; readonly safe: boolean }
  | {
      readonly kind: "fits";
      readonly size?: Literal;
      readonly sides: readonly Expression[];
      readonly what: readonly Name[];
    }
  | { readonly kind: "thread"; readonly value: Expression }
  | { readonly kind: "coating"; readonly word: Name }
  | { readonly kind: "pack"; readonly count: Expression; readonly price?: Expression }
  | { readonly kind: "covers"; readonly value: Expression; readonly per: Name }
  | { readonly kind: "coats of"; readonly value: Expression }
  | { readonly kind: "dries"; readonly value: Expression }
  | { readonly kind: "tin"; readonly size: Expression; readonly price?: Expression }
  | { readonly kind: "density"; readonly state: "dry" | "moist" | "saturated"; readonly value: Expression }
  | { readonly kind: "miters to" | "bevels to"; readonly value: Expression }
  | { readonly kind: "rips"; readonly can: boolean }
  | { readonly kind: "has"; readonly names: readonly Name[] }
  | { readonly kind: "bound"; readonly comparison: Comparison; readonly value: Expression };

export interface EndCut extends Span {
  readonly how: "mitered" | "beveled";
  readonly angle: Expression;
}

export type PartClause =
  | { readonly kind: "length"; readonly value: Expression; readonly points?: Points }
  | { readonly kind: "points"; readonly points: Points }
  | { readonly kind: "cut to fit"; readonly allowance?: Expression }
  | { readonly kind: "width"; readonly value: Expression }
  | { readonly kind: "ends"; readonly which: "both" | "left" | "right"; readonly cuts: readonly EndCut[] }
  | { readonly kind: "long points"; readonly on: "one edge" | "opposite edges" }
  | {
      readonly kind: "notch" | "dado";
      readonly along: Expression;
      readonly into: Expression;
      readonly at:
        | "left end"
        | "right end"
        | "both ends"
        | { readonly distance: Expression; readonly from: "left" | "right" };
    }
  | {
      readonly kind: "handed";
      readonly left?: Expression;
      readonly right?: Expression;
      readonly pairs: boolean;
    };

export type Points = "overall" | "long to long" | "short to short" | "long to short";

export type BoxClause =
  | { readonly kind: "walls" | "floor"; readonly things: readonly Thing[] }
  | { readonly kind: "inside" | "outline" | "tapering"; readonly extents: readonly Extent[] }
  | {
      readonly kind: "filled";
      readonly with: Name;
      readonly level?: { readonly how: "below rim" | "deep"; readonly value: Expression };
    }
  | { readonly kind: "carried"; readonly by: readonly Thing[] }
  | {
      readonly kind: "drains";
      readonly how: "gaps" | "holes" | "nothing";
      readonly count?: Expression;
      readonly size?: Expression;
    }
  | { readonly kind: "grows"; readonly what: readonly Name[] }
  | { readonly kind: "weighs"; readonly value: Expression };

export type PlaceClause =
  | { readonly kind: "lies"; readonly lie: Lie }
  | { readonly kind: "wide face" | "long points at"; readonly side: Side }
  | { readonly kind: "leaning"; readonly angle: Expression; readonly toward: Side | "in" | "out" }
  | { readonly kind: "sloping"; readonly angle: Expression; readonly toward: Side }
  | {
      readonly kind: "touches";
      readonly relation: Relation;
      readonly target: Thing;
      readonly distance?: Expression;
    }
  | { readonly kind: "flush"; readonly face: Side; readonly target: Thing }
  | {
      readonly kind: "inset";
      readonly distance: Expression;
      readonly past: boolean;
      readonly face: Side;
      readonly target: Thing;
    }
  | { readonly kind: "between" | "spread"; readonly first: Thing; readonly second: Thing }
  | { readonly kind: "spread over"; readonly target: Thing }
  | { readonly kind: "end gaps" }
  | { readonly kind: "centered"; readonly axis?: Axis; readonly target: Thing }
  | { readonly kind: "from"; readonly distance: Expression; readonly datum: Side | "floor" }
  | {
      readonly kind: "corners";
      readonly width?: Expression;
      readonly depth?: Expression;
      readonly target?: Thing;
    }
  | {
      readonly kind: "diagonal";
      readonly face: Side;
      readonly target: Thing;
      /** Empty where that is a clause of its own. */
      readonly from: readonly Side[];
      readonly to: readonly Side[];
    }
  /** From which corner to which a diagonal runs, where that is a clause of its own. */
  | { readonly kind: "run"; readonly from: readonly Side[]; readonly to: readonly Side[] }
  | { readonly kind: "repeat"; readonly count?: Expression; readonly direction?: Axis }
  | {
      readonly kind: "spacing";
      readonly rule: "tight" | "apart" | "on center" | "at most apart";
      readonly value?: Expression;
    }
  | { readonly kind: "mirrored"; readonly axis: Axis; readonly about: Thing };

export type Axis = "left to right" | "front to back" | "up and down";
export type Relation = "on" | "under" | "above" | "below" | "left of" | "right of" | "in front of" | "behind";

export type JointPlace =
  | { readonly at: "each crossing" | "each end" | "along it" | "in all" }
  | { readonly at: "crossings"; readonly count: Expression };

export type JointClause =
  | {
      readonly kind: "driven";
      readonly count?: Expression;
      readonly size?: Literal;
      readonly fastener?: Name;
      readonly place?: JointPlace;
    }
  | { readonly kind: "joint place"; readonly place: JointPlace }
  | { readonly kind: "joint spacing"; readonly value: Expression }
  | { readonly kind: "pilot" | "clearance" | "angled"; readonly value: Expression }
  | { readonly kind: "glue with"; readonly name: Name };

export type WorkClause =
  | { readonly kind: "fold" | "overlap"; readonly value: Expression }
  | { readonly kind: "bears"; readonly how: "spread" | "anywhere" | "middle" }
  | { readonly kind: "uses" | "coats" | "lines"; readonly things: readonly Thing[] }
  | { readonly kind: "takes" | "wait"; readonly value: Expression }
  | { readonly kind: "people"; readonly value: Expression }
  | { readonly kind: "broken"; readonly text: string };

/** What came out otherwise than the plan has it, and what became of it. */
export type BuiltClause =
  /** A measure, or the length of a part. */
  | { readonly kind: "came out"; readonly what: Expression; readonly value: Literal; readonly because?: Text }
  /** One board or sheet in the place of another. */
  | { readonly kind: "made of"; readonly used: Name; readonly planned: Name; readonly because?: Text }
  | { readonly kind: "changed"; readonly text: Text }
  | { readonly kind: "wear"; readonly date: Text; readonly text: Text };

/** A piece in a joint: the thing, and which of its faces meets the other. */
export interface JointSide extends Span {
  readonly thing: Thing;
  readonly face?: "face" | "edge" | "end";
}

export interface RingMember extends Span {
  readonly count?: Expression;
  readonly thing: Thing;
}

interface EntryBase extends Span {
  /** The word that opens the entry. */
  readonly keyword: Name;
  readonly clauses: readonly Clause[];
}

export type Entry = EntryBase & Head;

export type Head =
  | { readonly kind: "plan" | "note" | "yard"; readonly title: Text }
  | { readonly kind: "step"; readonly title: Text }
  | { readonly kind: "shop" | "bring"; readonly path: Text }
  /** What follows, up to the next of its kind, is the text of that file. */
  | { readonly kind: "enclosed"; readonly path: Text }
  | { readonly kind: "measure"; readonly name: Name; readonly value?: Expression }
  | { readonly kind: "stock"; readonly name: Name; readonly of?: Name }
  | { readonly kind: "sheet" | "roll" | "fastener" | "finish" | "fill" | "box"; readonly name: Name }
  | { readonly kind: "tools" }
  | { readonly kind: "part"; readonly name: Name; readonly count?: Expression; readonly of: Name }
  | { readonly kind: "assembly"; readonly name: Name; readonly body: readonly Entry[] }
  | { readonly kind: "ring"; readonly name: Name; readonly members: readonly RingMember[] }
  | { readonly kind: "place"; readonly subject: Thing }
  | {
      readonly kind: "fasten" | "glue";
      readonly first: readonly JointSide[];
      readonly through: readonly JointSide[];
      readonly into: readonly JointSide[];
    }
  | { readonly kind: "coat" | "line"; readonly things: readonly Thing[]; readonly with: Name }
  | { readonly kind: "load"; readonly thing: Thing; readonly value: Expression }
  | {
      readonly kind: "must";
      readonly left: Expression;
      readonly comparison: Comparison;
      readonly right: Expression;
      readonly because?: Text;
    }
  | { readonly kind: "built"; readonly date: Text; readonly by?: Text }
  | { readonly kind: "accept"; readonly code: Name; readonly on?: Thing; readonly because?: Text }
  /** An entry whose first word, or whose head, could not be read; `name` is what it likely declares. */
  | { readonly kind: "unknown"; readonly name?: Name };

export type EntryKind = Entry["kind"];

/** A complaint about the form of the text. `says` names a template of messages.ts, `slots` fills it. */
export interface Complaint extends Span {
  readonly code: SyntaxCode;
  readonly says: string;
  /** Words of the plan and of its language; `any` is a choice of them. */
  readonly slots: Readonly<Record<string, string | { readonly any: readonly string[] }>>;
  /** A change of the text that mends it. `says` and `slots` are its title, as above. */
  readonly cure?: {
    readonly says: string;
    readonly slots: Readonly<Record<string, string>>;
    readonly start: number;
    readonly end: number;
    readonly text: string;
  };
}

export type SyntaxCode =
  | "unknown-entry"
  | "not-understood"
  | "stray-character"
  | "bad-name"
  | "bad-number"
  | "bad-date"
  | "indented-alone"
  | "merge-conflict"
  | "not-text"
  | "too-big"
  | "too-deep";

export interface Comment extends Span {
  readonly text: string;
}

export interface Tree {
  readonly text: string;
  readonly entries: readonly Entry[];
  readonly comments: readonly Comment[];
  readonly complaints: readonly Complaint[];
}
