/** What follows the opening words in boxes, places, joints and steps, and the heads of every entry. */
import { literalOf, nameOf } from "./rules-base";
import { MaterialRules } from "./rules-materials";
import * as T from "./tokens";
import { K } from "./tokens";
import type {
  Axis,
  BoxClause,
  Clause,
  Comparison,
  Expression,
  JointClause,
  JointPlace,
  JointSide,
  Lie,
  Name,
  PlaceClause,
  Relation,
  RingMember,
  Side,
  Text,
  Thing,
  WorkClause,
} from "./tree";

type Of<C, K extends string> = C extends { kind: K } ? Omit<C, "kind"> : never;

export class PlanRules extends MaterialRules {
  // Heads -------------------------------------------------------------------------------------------------------

  material = this.RULE(
    "material",
    (): Name =>
      this.OR([{ ALT: () => nameOf(this.CONSUME(T.Section)) }, { ALT: () => nameOf(this.CONSUME(T.Word)) }]),
  );

  measureHead = this.RULE("measureHead", (): { name: Name; value?: Expression } => {
    const name = this.SUBRULE(this.name);
    const value = this.OPTION(() => {
      this.CONSUME(T.Equals);
      return this.SUBRULE(this.expression);
    });
    return value ? { name, value } : { name };
  });

  stockHead = this.RULE("stockHead", (): { name: Name; of?: Name } => {
    const name = this.SUBRULE(this.material);
    const of = this.OPTION(() => {
      this.CONSUME(K.of);
      return this.SUBRULE1(this.material);
    });
    return of ? { name, of } : { name };
  });

  partHead = this.RULE("partHead", (): { name: Name; count?: Expression; of: Name } => {
    const name = this.SUBRULE(this.name);
    const count = this.OPTION({ GATE: () => !this.has(K.of), DEF: () => this.SUBRULE(this.factor) });
    this.CONSUME(K.of);
    const of = this.SUBRULE(this.material);
    return { name, ...(count && { count }), of };
  });

  ringHead = this.RULE("ringHead", (): { name: Name; members: RingMember[] } => {
    const name = this.SUBRULE(this.name);
    this.CONSUME(T.Equals);
    const members: RingMember[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: K.and,
      DEF: () => {
        const count = this.OPTION(() => literalOf(this.CONSUME(T.Numeral)));
        const thing = this.SUBRULE(this.thing);
        this.ACTION(() =>
          members.push({
            ...(count && { count }),
            thing,
            start: count?.start ?? thing.start,
            end: thing.end,
          }),
        );
      },
    });
    return { name, members };
  });

  placeHead = this.RULE("placeHead", (): { subject: Thing; lie?: Lie } => {
    const subject = this.SUBRULE(this.thing);
    const lie = this.OPTION(() =>
      this.OR<Lie>([
        this.alt(1, "upright", "upright"),
        this.alt(2, "across", "across"),
        this.alt(3, "front to back", "front", "to", "back"),
        this.alt(4, "flat", "flat"),
        this.alt(5, "on edge", "on", "edge"),
      ]),
    );
    return lie ? { subject, lie } : { subject };
  });

  jointSides = this.RULE("jointSides", (): JointSide[] => {
    const list: JointSide[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: K.and,
      DEF: () => {
        const thing = this.SUBRULE(this.thing);
        const face = this.OPTION(() =>
          this.OR<NonNullable<JointSide["face"]>>(
            (["face", "edge", "end"] as const).map((f) => this.alt(1, f, f)),
          ),
        );
        this.ACTION(() =>
          list.push({
            thing,
            ...(face && { face }),
            start: thing.start,
            end: thing.end + (face ? face.length + 1 : 0),
          }),
        );
      },
    });
    return list;
  });

  jointHead = this.RULE("jointHead", (): { first: JointSide[]; through: JointSide[]; into: JointSide[] } => {
    const first = this.SUBRULE(this.jointSides);
    const through = this.OPTION(() => {
      this.CONSUME(K.through);
      return this.SUBRULE1(this.jointSides);
    });
    this.OR([this.alt(1, 0, "into"), this.alt(1, 0, "to"), this.alt(1, 0, "onto")]);
    return { first, through: through ?? [], into: this.SUBRULE2(this.jointSides) };
  });

  withHead = this.RULE("withHead", (): { things: Thing[]; with: Name } => {
    const things = this.SUBRULE(this.things);
    this.CONSUME(K.with);
    return { things, with: this.SUBRULE(this.name) };
  });

  loadHead = this.RULE(
    "loadHead",
    (): { thing: Thing; value: Expression; how?: Of<WorkClause, "bears">["how"] } => {
      const thing = this.SUBRULE(this.thing);
      const value = this.SUBRULE(this.expression);
      const how = this.OPTION(() =>
        this.OR<Of<WorkClause, "bears">["how"]>([
          this.alt(1, "spread", "spread"),
          this.alt(2, "anywhere", "anywhere"),
          this.alt(3, "middle", "middle"),
        ]),
      );
      return { thing, value, ...(how && { how }) };
    },
  );

  mustHead = this.RULE(
    "mustHead",
    (): { left: Expression; comparison: Comparison; right: Expression; because?: Text } => {
      const left = this.SUBRULE(this.expression);
      const comparison = this.SUBRULE(this.comparison);
      const right = this.SUBRULE1(this.expression);
      const because = this.OPTION(() => this.SUBRULE(this.because));
      return { left, comparison, right, ...(because && { because }) };
    },
  );

  acceptHead = this.RULE("acceptHead", (): { code: Name; on?: Thing; because?: Text } => {
    const code = this.SUBRULE(this.name);
    const on = this.OPTION(() => {
      this.CONSUME(K.on);
      return this.SUBRULE(this.thing);
    });
    const because = this.OPTION1(() => this.SUBRULE(this.because));
    return { code, ...(on && { on }), ...(because && { because }) };
  });

  // Boxes -------------------------------------------------------------------------------------------------------

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
    const count = this.OPTION(() => this.SUBRULE(this.factor));
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

  // Places ------------------------------------------------------------------------------------------------------

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

  leaning = this.RULE("leaning", () => ({
    angle: this.SUBRULE(this.expression),
    toward: this.SUBRULE(this.side),
  }));

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

  diagonal = this.RULE("diagonal", (): Of<PlaceClause, "diagonal"> => {
    const { face, target } = this.SUBRULE(this.faceOf) ?? {};
    this.OPTION(() => this.CONSUME(T.Comma));
    this.CONSUME(K.from);
    const from: Side[] = [];
    this.AT_LEAST_ONE(() => from.push(this.SUBRULE(this.side)));
    this.CONSUME(K.to);
    const to: Side[] = [];
    this.AT_LEAST_ONE1(() => to.push(this.SUBRULE1(this.side)));
    return { face: face!, target: target!, from, to };
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

  // Joints and steps --------------------------------------------------------------------------------------------

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

  /** The grammar is checked against itself by a test; at start-up that would only cost time. */
  constructor(check = false) {
    super(T.VOCABULARY, { maxLookahead: 1, nodeLocationTracking: "none", skipValidations: !check });
    this.performSelfAnalysis();
  }
}

export type ClauseBody = Clause extends infer C
  ? C extends Clause
    ? Omit<C, "start" | "end">
    : never
  : never;
