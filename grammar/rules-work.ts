/** What follows the opening words in boxes, places, joints and steps, and the grammar as a whole. */
import { LookaheadWhenAsked } from "./lookahead";
import { literalOf } from "./rules-base";
import { HeadRules } from "./rules-heads";
import * as T from "./tokens";
import { K } from "./tokens";
import type {
  Axis,
  BoxClause,
  BuiltClause,
  Clause,
  Expression,
  JointClause,
  JointPlace,
  Name,
  PlaceClause,
  Relation,
  Side,
  Thing,
} from "./tree";

type Of<C, K extends string> = C extends { kind: K } ? Omit<C, "kind"> : never;

const namedBy = (name: Name | undefined): Expression => ({
  kind: "name",
  name: name!,
  start: name?.start ?? 0,
  end: name?.end ?? 0,
});

export class PlanRules extends HeadRules {
  /** `potting-mix to 1" below rim` */
  filled = this.RULE("filled", (): Of<BoxClause, "filled"> => {
    const what = this.SUBRULE(this.name);
    const level = this.OPTION(() => {
      this.OPTION1(() => this.CONSUME(K.to));
      const value = this.SUBRULE(this.expression);
      const how = this.OR<"below rim" | "deep">([
        this.alt(1, "below rim", "below", "rim"),
        this.alt(2, "deep", "deep"),
      ]);
      return { how, value };
    });
    return { with: what, ...(level && { level }) };
  });

  gaps = this.RULE("gaps", (): void => {
    this.OPTION(() => this.CONSUME(K.the));
    this.CONSUME(K.gaps);
  });

  /** `12 holes of 1/2"` */
  holes = this.RULE("holes", (): { count?: Expression; size?: Expression } => {
    // The word itself may be a name, so it is no number of holes.
    const count = this.OPTION({
      GATE: () => !this.has(K.holes, 1),
      DEF: () => this.SUBRULE(this.factor),
    });
    this.CONSUME(K.holes);
    const size = this.OPTION1(() => {
      this.CONSUME(K.of);
      return this.SUBRULE(this.expression);
    });
    return { ...(count && { count }), ...(size && { size }) };
  });

  weighs = this.RULE("weighs", (): Expression => {
    const value = this.SUBRULE(this.expression);
    this.OPTION(() => this.CONSUME(K.empty));
    return value;
  });

  axis = this.RULE(
    "axis",
    (): Axis =>
      this.OR<Axis>([
        this.alt(1, "left to right", "left", "to", "right"),
        this.alt(2, "front to back", "front", "to", "back"),
        this.alt(3, "up and down", "up", "and", "down"),
      ]),
  );

  /** `top of legs` */
  faceOf = this.RULE("faceOf", (): { face: Side; target: Thing } => {
    const face = this.SUBRULE(this.side);
    this.CONSUME(K.of);
    return { face, target: this.SUBRULE(this.thing) };
  });

  span = this.RULE("span", (): { first: Thing; second: Thing } => {
    const first = this.SUBRULE(this.thing);
    this.CONSUME(K.and);
    return { first, second: this.SUBRULE1(this.thing) };
  });

  leaning = this.RULE("leaning", (): Of<PlaceClause, "leaning"> => {
    const angle = this.SUBRULE(this.expression);
    const toward = this.OR<Side | "in" | "out">([
      { ALT: () => this.SUBRULE(this.side) },
      this.alt(1, "in", "in"),
      this.alt(1, "out", "out"),
    ]);
    return { angle, toward };
  });

  sloping = this.RULE("sloping", () => {
    const angle = this.SUBRULE(this.expression);
    this.run(0, "down", "to", "the");
    return { angle, toward: this.SUBRULE(this.side) };
  });

  centered = this.RULE("centered", (): Of<PlaceClause, "centered"> => {
    const axis = this.OPTION(() => this.SUBRULE(this.axis));
    this.CONSUME(K.on);
    const target = this.SUBRULE(this.thing);
    return { ...(axis && { axis }), target };
  });

  corners = this.RULE(
    "corners",
    (): Of<PlaceClause, "corners"> =>
      this.OR<Of<PlaceClause, "corners">>({
        IGNORE_AMBIGUITIES: true,
        DEF: [
          {
            GATE: () =>
              this.isWord(1) && (this.LA(2).tokenTypeIdx === 1 || this.isWord(2)) && !this.has(K.of, 2),
            ALT: () => ({ target: this.SUBRULE(this.thing) }),
          },
          {
            ALT: () => {
              const width = this.SUBRULE(this.expression);
              this.CONSUME(T.By);
              return { width, depth: this.SUBRULE1(this.expression) };
            },
          },
        ],
      }),
  );

  /** `bottom left to top right` */
  fromTo = this.RULE("fromTo", (): Of<PlaceClause, "run"> => {
    const from: Side[] = [];
    this.AT_LEAST_ONE(() => from.push(this.SUBRULE(this.side)));
    this.CONSUME(K.to);
    const to: Side[] = [];
    this.AT_LEAST_ONE1(() => to.push(this.SUBRULE1(this.side)));
    return { from, to };
  });

  diagonal = this.RULE("diagonal", (): Of<PlaceClause, "diagonal"> => {
    const { face, target } = this.SUBRULE(this.faceOf) ?? {};
    const run = this.OPTION(() => {
      this.CONSUME(K.from);
      return this.SUBRULE(this.fromTo);
    });
    return { face: face!, target: target!, from: run?.from ?? [], to: run?.to ?? [] };
  });

  mirrored = this.RULE("mirrored", () => {
    const axis = this.SUBRULE(this.axis);
    this.CONSUME(K.about);
    return { axis, about: this.SUBRULE(this.thing) };
  });

  apart = this.RULE("apart", (): Expression => {
    const value = this.SUBRULE(this.expression);
    this.CONSUME(K.apart);
    return value;
  });

  /** A place clause that opens with a number: `3" above seat`, `2 high`, `1" in from left of legs` … */
  measuredPlace = this.RULE("measuredPlace", (): PlaceClause => {
    const value = this.SUBRULE(this.expression);
    return this.OR<PlaceClause>([
      {
        ALT: () => {
          const relation = this.OR1<Relation>([
            this.alt(1, "above", "above"),
            this.alt(1, "below", "below"),
            this.alt(1, "behind", "behind"),
            this.alt(2, "left of", "left", "of"),
            this.alt(3, "right of", "right", "of"),
          ]);
          return { kind: "touches", relation, target: this.SUBRULE(this.thing), distance: value };
        },
      },
      {
        ALT: () => {
          this.run(4, "in");
          return this.OR2<PlaceClause>([
            {
              ALT: () => {
                this.run(5, "front", "of");
                return {
                  kind: "touches",
                  relation: "in front of",
                  target: this.SUBRULE1(this.thing),
                  distance: value,
                };
              },
            },
            {
              ALT: () => {
                this.run(6, "from");
                return { kind: "inset", distance: value, past: false, ...this.SUBRULE(this.faceOf) };
              },
            },
          ]);
        },
      },
      {
        ALT: () => {
          this.run(7, "past");
          return { kind: "inset", distance: value, past: true, ...this.SUBRULE1(this.faceOf) };
        },
      },
      {
        ALT: () => {
          this.run(12, "from");
          const datum = this.OR3<Side | "floor">([
            { ALT: () => this.SUBRULE(this.side) },
            this.alt(13, "floor", "floor"),
          ]);
          return { kind: "from", distance: value, datum };
        },
      },
      this.alt(8, { kind: "from", distance: value, datum: "floor" } as PlaceClause, "up"),
      this.alt(9, { kind: "repeat", count: value, direction: "up and down" } as PlaceClause, "high"),
      this.alt(9, { kind: "repeat", count: value, direction: "left to right" } as PlaceClause, "across"),
      this.alt(9, { kind: "repeat", count: value, direction: "front to back" } as PlaceClause, "deep"),
      this.alt(10, { kind: "spacing", rule: "apart", value } as PlaceClause, "apart"),
      this.alt(11, { kind: "spacing", rule: "on center", value } as PlaceClause, "on", "center"),
    ]);
  });

  jointPlace = this.RULE(
    "jointPlace",
    (): JointPlace =>
      this.OR<JointPlace>([
        {
          ALT: () => {
            this.run(1, "at");
            return this.OR1<JointPlace>([
              {
                ALT: () => {
                  this.run(2, "each");
                  return this.OR2<JointPlace>([
                    this.alt(3, { at: "each crossing" }, "crossing"),
                    this.alt(3, { at: "each end" }, "end"),
                  ]);
                },
              },
              {
                ALT: () => {
                  const count = this.CONSUME(T.Numeral);
                  this.OR3([this.alt(4, 0, "crossings"), this.alt(5, 0, "crossing")]);
                  return { at: "crossings", count: literalOf(count) };
                },
              },
            ]);
          },
        },
        this.alt(6, { at: "along it" }, "along", "it"),
        this.alt(7, { at: "in all" }, "in", "all"),
      ]),
  );

  /** `2 #8 x 1-5/8" at each crossing`, `deck-2 at each end`, `6" on center` */
  driven = this.RULE("driven", (): JointClause => {
    const value = this.OPTION({ GATE: () => !this.has(T.ScrewSize), DEF: () => this.SUBRULE(this.factor) });
    return this.OR<JointClause>([
      {
        GATE: () => value !== undefined && this.has(K.on),
        ALT: () => {
          this.run(1, "on", "center");
          return { kind: "joint spacing", value: value! };
        },
      },
      {
        ALT: () => {
          const size = this.OPTION1(() => literalOf(this.CONSUME(T.ScrewSize)));
          const named = this.OPTION2({
            GATE: () =>
              !size && !this.has(K.at) && !this.has(K.along) && !(this.has(K.in) && this.has(K.all, 2)),
            DEF: () => this.SUBRULE(this.name),
          });
          const place = this.OPTION3(() => this.SUBRULE(this.jointPlace));
          return this.ACTION((): JointClause => {
            const bare = !size && !named && value?.kind === "name" ? value.name : undefined;
            const fastener = named ?? bare;
            return {
              kind: "driven",
              ...(value && !bare && { count: value }),
              ...(size && { size }),
              ...(fastener && { fastener }),
              ...(place && { place }),
            };
          });
        },
      },
    ]);
  });

  people = this.RULE("people", (): Expression => {
    const value = this.SUBRULE(this.expression);
    this.OR([this.alt(1, 0, "people"), this.alt(1, 0, "person")]);
    return value;
  });

  /** `rim-height = 27-1/2"`, `length of leg = 28"` */
  cameOut = this.RULE("cameOut", (): Of<BuiltClause, "came out"> => {
    const what = this.OR<Expression>({
      DEF: [
        {
          GATE: () => this.has(K.of, 2) || (this.isWord(2) && this.has(K.of, 3)),
          ALT: () => this.SUBRULE(this.property),
        },
        { ALT: () => namedBy(this.SUBRULE(this.name)) },
      ],
      IGNORE_AMBIGUITIES: true,
    });
    this.CONSUME(T.Equals);
    const value = literalOf(this.CONSUME(T.Literal));
    const because = this.OPTION(() => this.SUBRULE(this.because));
    return { what, value, ...(because && { because }) };
  });

  /** `fir-1x4 instead of 1x4` */
  madeOf = this.RULE("madeOf", (): Of<BuiltClause, "made of"> => {
    const used = this.SUBRULE(this.material);
    this.run(0, "instead", "of");
    const planned = this.SUBRULE1(this.material);
    const because = this.OPTION(() => this.SUBRULE(this.because));
    return { used, planned, ...(because && { because }) };
  });

  wear = this.RULE("wear", (): Of<BuiltClause, "wear"> => {
    const date = this.SUBRULE(this.day);
    return { date, text: this.SUBRULE(this.text) };
  });

  /** The grammar is checked against itself by a test; at start-up that would only cost time. */
  constructor(check = false) {
    super(T.VOCABULARY, {
      maxLookahead: 1,
      lookaheadStrategy: new LookaheadWhenAsked({ maxLookahead: 1 }),
      nodeLocationTracking: "none",
      skipValidations: !check,
    });
    this.performSelfAnalysis();
  }
}

export type ClauseBody = Clause extends infer C
  ? C extends Clause
    ? Omit<C, "start" | "end">
    : never
  : never;
