/** What follows the opening words of the clauses of plan, stock, sheet, roll, fastener, finish, fill, tools and part. */
import { BaseRules, literalOf, nameOf } from "./rules-base";
import * as T from "./tokens";
import { K } from "./tokens";
import type {
  EndCut,
  Expression,
  Extent,
  Literal,
  MaterialClause,
  Name,
  Offer,
  OnHand,
  PartClause,
  PlanClause,
  Points,
  Text,
} from "./tree";

type Of<C, K extends string> = C extends { kind: K } ? Omit<C, "kind"> : never;
type Where = Extract<PartClause, { kind: "notch" | "dado" }>["at"];

export class MaterialRules extends BaseRules {
  /** A clause that is complete with its opening words. */
  nothing = this.RULE("nothing", (): void => undefined);

  /** `1-1/2" x 3-1/2"` */
  sizes = this.RULE("sizes", (): Expression[] => {
    const list: Expression[] = [];
    this.AT_LEAST_ONE_SEP({ SEP: T.By, DEF: () => list.push(this.SUBRULE(this.expression)) });
    return list;
  });

  /** `60" wide, 30" deep, 48" high` or `60" x 30" x 48"` */
  extents = this.RULE("extents", (): Extent[] => {
    const list: Extent[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: T.Comma,
      DEF: () => {
        const values = this.SUBRULE(this.sizes);
        const side = this.OPTION(() =>
          this.OR((["wide", "deep", "high", "long"] as const).map((word) => this.alt(0, word, word))),
        );
        this.ACTION(() => {
          const order: readonly Extent["side"][] = side ? [side, side, side] : ["wide", "deep", "high"];
          for (const [i, value] of values.entries()) {
            list.push({ side: order[i] ?? "high", value, start: value.start, end: value.end });
          }
        });
      },
    });
    return list;
  });

  /** `58 psf by the building's engineer` */
  limit = this.RULE("limit", (): { value: Expression; by?: Text } => {
    const value = this.SUBRULE(this.expression);
    const by = this.OPTION(() => {
      this.CONSUME(K.by);
      return this.SUBRULE(this.text);
    });
    return by ? { value, by } : { value };
  });

  ofWhich = this.RULE("ofWhich", () => ({
    what: this.SUBRULE(this.name),
    value: this.SUBRULE(this.expression),
  }));

  /** `1 in 10` */
  spare = this.RULE("spare", () => {
    const count = this.SUBRULE(this.expression);
    this.CONSUME(K.in);
    return { count, per: this.SUBRULE1(this.expression) };
  });

  /** `inches to 1/16"` */
  units = this.RULE("units", (): Of<PlanClause, "units"> => {
    const system = this.OR<"inches" | "millimetres">([
      this.alt(1, "inches", "inches"),
      this.alt(1, "millimetres", "millimetres"),
      this.alt(1, "millimetres", "mm"),
    ]);
    const mark = this.OPTION(() => {
      this.CONSUME(K.to);
      return this.SUBRULE(this.expression);
    });
    return mark ? { system, mark } : { system };
  });

  lumber = this.RULE(
    "lumber",
    (): Of<PlanClause, "lumber"> => ({
      standard: this.OR<Of<PlanClause, "lumber">["standard"]>([
        this.alt(1, "dry", "dry"),
        this.alt(1, "green", "green"),
        this.alt(1, "planed metric", "planed", "metric"),
      ]),
    }),
  );

  /** `8' $4.20, 10' $5.60` or `48" x 96" $38` */
  offers = this.RULE("offers", (): Offer[] => {
    const list: Offer[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: T.Comma,
      DEF: () => {
        const sides = this.SUBRULE(this.sizes);
        const price = this.OPTION(() => literalOf(this.CONSUME(T.Money)));
        this.ACTION(() => {
          const [length, width] = sides;
          list.push({
            length: length!,
            ...(width && { width }),
            ...(price && { price }),
            start: length!.start,
            end: (price ?? sides[sides.length - 1]!).end,
          });
        });
      },
    });
    return list;
  });

  /** `3 of 41", 1 of 8' bad 30" to 36"` */
  onHand = this.RULE("onHand", (): OnHand[] => {
    const list: OnHand[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: T.Comma,
      DEF: () => {
        const count = this.SUBRULE(this.factor);
        this.CONSUME(K.of);
        const sides = this.SUBRULE(this.sizes);
        const bad: { from: Expression; to: Expression }[] = [];
        this.OPTION(() => {
          this.CONSUME(K.bad);
          this.AT_LEAST_ONE_SEP1({
            SEP: K.and,
            DEF: () => {
              const from = this.SUBRULE1(this.expression);
              this.CONSUME(K.to);
              bad.push({ from, to: this.SUBRULE2(this.expression) });
            },
          });
        });
        this.ACTION(() => {
          const [length, width] = sides;
          const end = bad[bad.length - 1]?.to ?? sides[sides.length - 1]!;
          list.push({
            count,
            length: length!,
            ...(width && { width }),
            bad,
            start: count.start,
            end: end.end,
          });
        });
      },
    });
    return list;
  });

  moisture = this.RULE(
    "moisture",
    (): Of<MaterialClause, "moisture"> =>
      this.OR<Of<MaterialClause, "moisture">>([
        this.alt(1, { state: "dry" as const }, "dry"),
        this.alt(1, { state: "green" as const }, "green"),
        { ALT: () => ({ value: literalOf(this.CONSUME(T.Share)) }) },
      ]),
  );

  grain = this.RULE("grain", () => ({
    along: this.OR<"length" | "width">([this.alt(1, "length", "length"), this.alt(1, "width", "width")]),
  }));

  /** `$2.10 per foot`, `250 sqft per gal` */
  per = this.RULE("per", () => {
    const value = this.SUBRULE(this.expression);
    this.CONSUME(K.per);
    return { value, per: this.SUBRULE(this.name) };
  });

  /** `#8 x 2" screw`, `0.131" x 2-1/2" nail` */
  fits = this.RULE("fits", (): Of<MaterialClause, "fits"> => {
    let size: Literal | undefined;
    let sides: Expression[] = [];
    this.OR({
      DEF: [
        {
          ALT: () => {
            size = literalOf(this.CONSUME(T.ScrewSize));
          },
        },
        {
          ALT: () => {
            sides = this.SUBRULE(this.sizes);
          },
        },
      ],
      // A screw size is a literal too: the first alternative takes it.
      IGNORE_AMBIGUITIES: true,
    });
    const what: Name[] = [];
    this.MANY(() => what.push(nameOf(this.CONSUME(T.Word))));
    return { ...(size && { size }), sides, what };
  });

  /** `100 $9.80`, `1 qt $18` */
  priced = this.RULE("priced", (): { size: Expression; price?: Expression } => {
    const size = this.SUBRULE(this.factor);
    const price = this.OPTION(() => literalOf(this.CONSUME(T.Money)));
    return price ? { size, price } : { size };
  });

  /** `2 coats` */
  coatCount = this.RULE("coatCount", (): Expression => {
    const value = this.SUBRULE(this.expression);
    this.OR([this.alt(1, 0, "coats"), this.alt(1, 0, "coat")]);
    return value;
  });

  /** `28-1/2" long point to long point` */
  partLength = this.RULE("partLength", (): Of<PartClause, "length"> => {
    const value = this.SUBRULE(this.expression);
    const points = this.OPTION(() => this.SUBRULE(this.points));
    return points ? { value, points } : { value };
  });

  points = this.RULE(
    "points",
    (): Points =>
      this.OR<Points>([
        this.alt(1, "overall", "overall"),
        {
          ALT: () => {
            const from = this.OR1([this.alt(2, "long", "long"), this.alt(2, "short", "short")]);
            this.run(3, "point", "to");
            const to = this.OR2([this.alt(4, "long", "long"), this.alt(4, "short", "short")]);
            this.run(5, "point");
            return from === to ? (from === "long" ? "long to long" : "short to short") : "long to short";
          },
        },
      ]),
  );

  /** `plus 1/2"` */
  allowance = this.RULE("allowance", (): Expression | undefined =>
    this.OPTION(() => {
      this.CONSUME(K.plus);
      return this.SUBRULE(this.expression);
    }),
  );

  /** `mitered 45° and beveled 10°` */
  ends = this.RULE("ends", (): EndCut[] => {
    const cuts: EndCut[] = [];
    this.OR([
      this.alt(1, 0, "square"),
      {
        ALT: () =>
          this.AT_LEAST_ONE(() => {
            this.OPTION(() => this.CONSUME(K.and));
            const how = this.OR1<EndCut["how"]>([
              this.alt(1, "mitered", "mitered"),
              this.alt(1, "beveled", "beveled"),
            ]);
            const angle = this.SUBRULE(this.expression);
            cuts.push({ how, angle, start: angle.start, end: angle.end });
          }),
      },
    ]);
    return cuts;
  });

  edges = this.RULE("edges", () => ({
    on: this.OR<"one edge" | "opposite edges">([
      this.alt(1, "one edge", "one", "edge"),
      this.alt(2, "opposite edges", "opposite", "edges"),
    ]),
  }));

  /** `1-1/2" x 3/4" at left end`, `3/4" x 3/8" at 12" from left` */
  notch = this.RULE("notch", () => {
    const along = this.SUBRULE(this.expression);
    this.CONSUME(T.By);
    const into = this.SUBRULE1(this.expression);
    this.CONSUME(K.at);
    const at = this.OR<Where>({
      IGNORE_AMBIGUITIES: true,
      DEF: [
        {
          GATE: () => !this.has(T.Open) && this.isWord(1) && !this.has(K.of, 2),
          ALT: () => this.SUBRULE(this.whichEnd),
        },
        { ALT: () => this.SUBRULE(this.fromEnd) },
      ],
    });
    return { along, into, at };
  });

  whichEnd = this.RULE(
    "whichEnd",
    (): Where =>
      this.OR<Where>([
        this.alt(1, "left end", "left", "end"),
        this.alt(2, "right end", "right", "end"),
        this.alt(3, "both ends", "both", "ends"),
        this.alt(4, "both ends", "each", "end"),
      ]),
  );

  fromEnd = this.RULE("fromEnd", (): Where => {
    const distance = this.SUBRULE2(this.expression);
    this.CONSUME(K.from);
    return {
      distance,
      from: this.OR1<"left" | "right">([this.alt(5, "left", "left"), this.alt(5, "right", "right")]),
    };
  });

  /** `2 left and 2 right` */
  handed = this.RULE("handed", (): Of<PartClause, "handed"> => {
    const sides: { left?: Expression; right?: Expression } = {};
    this.AT_LEAST_ONE_SEP({
      SEP: K.and,
      DEF: () => {
        const value = this.SUBRULE(this.factor);
        const side = this.OR<"left" | "right">([this.alt(1, "left", "left"), this.alt(1, "right", "right")]);
        sides[side] = value;
      },
    });
    return { ...sides, pairs: false };
  });
}
