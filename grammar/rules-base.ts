/** The rules every clause leans on: names, things, expressions. Each returns a typed node; none throws at parse time. */
import { EmbeddedActionsParser, type IToken, type TokenType } from "chevrotain";
import * as T from "./tokens";
import { endOf, K, type Keyword } from "./tokens";
import type { Comparison, Expression, Literal, LiteralForm, Name, Side, Text, Thing } from "./tree";

const FORMS: Readonly<Record<string, LiteralForm>> = {
  Length: "length",
  Angle: "angle",
  Measured: "measured",
  Money: "money",
  Share: "share",
  Numeral: "number",
  Section: "section",
  ScrewSize: "screw",
};

const NARROWING = new Set(["front", "back", "left", "right", "top", "bottom", "middle", "upper", "lower"]);
/** Words that join; after a narrowing word they mean that it was itself the name. */
const JOINING = new Set(["and", "of", "to", "with", "into", "through", "on", "at", "from", "because"]);
/** Words that say how something lies or which face is meant; after a narrowing word they mean that it was itself the name. */
const LYING = new Set(["upright", "across", "flat", "leaning", "sloping", "face", "edge"]);

export const nameOf = (t: IToken): Name => ({ text: t.image, start: t.startOffset, end: endOf(t) });
export const textOf = (t: IToken): Text => nameOf(t);
export const literalOf = (t: IToken): Literal => ({
  kind: "literal",
  form: FORMS[t.tokenType.name] ?? "number",
  text: t.image,
  start: t.startOffset,
  end: endOf(t),
});

export class BaseRules extends EmbeddedActionsParser {
  /** An alternative of fixed words that stands for a value. `i` tells it from the rule's others using the same words. */
  protected alt<V>(i: number, value: V, ...words: readonly Keyword[]): { ALT: () => V } {
    return {
      ALT: () => {
        this.run(i, ...words);
        return value;
      },
    };
  }

  /** These words in a row. */
  protected run(i: number, ...words: readonly Keyword[]): void {
    for (const word of words) this.consume(i, K[word]);
  }

  protected image(at: number): string {
    return this.LA(at).image ?? "";
  }

  protected isWord(at: number): boolean {
    const type = this.LA(at).tokenType;
    return type === T.Word || (type?.CATEGORIES?.includes(T.Word) ?? false);
  }

  protected has(type: TokenType, at = 1): boolean {
    return this.LA(at).tokenType === type;
  }

  private endsName(at: number): boolean {
    const word = this.image(at);
    return JOINING.has(word) || LYING.has(word) || (word === "front" && this.image(at + 1) === "to");
  }

  name = this.RULE("name", (): Name => nameOf(this.CONSUME(T.Word)));

  text = this.RULE("text", (): Text => textOf(this.CONSUME(T.Words)));

  day = this.RULE("day", (): Text => textOf(this.CONSUME(T.Day)));

  because = this.RULE("because", (): Text => {
    this.CONSUME(K.because);
    return textOf(this.CONSUME(T.Words));
  });

  side = this.RULE(
    "side",
    (): Side =>
      this.OR(
        (["left", "right", "front", "back", "top", "bottom"] as const).map((side) => this.alt(0, side, side)),
      ),
  );

  /** `legs`, `front left leg`, `2x4`, `floor` */
  thing = this.RULE("thing", (): Thing => {
    const where: Name[] = [];
    this.MANY({
      GATE: () => NARROWING.has(this.image(1)) && this.isWord(2) && !this.endsName(2),
      DEF: () => where.push(nameOf(this.CONSUME1(T.Word))),
    });
    const last = this.OR([{ ALT: () => this.CONSUME2(T.Word) }, { ALT: () => this.CONSUME(T.Section) }]);
    return this.ACTION(() => {
      const name = nameOf(last);
      return { where, name, start: where[0]?.start ?? name.start, end: name.end };
    });
  });

  /** `side and end and leg` */
  things = this.RULE("things", (): Thing[] => {
    const list: Thing[] = [];
    this.AT_LEAST_ONE_SEP({ SEP: K.and, DEF: () => list.push(this.SUBRULE(this.thing)) });
    return list;
  });

  names = this.RULE("names", (): Name[] => {
    const list: Name[] = [];
    this.AT_LEAST_ONE_SEP({ SEP: K.and, DEF: () => list.push(nameOf(this.CONSUME(T.Word))) });
    return list;
  });

  expression = this.RULE("expression", (): Expression => {
    let left = this.SUBRULE(this.term);
    this.MANY(() => {
      const operator = this.OR([this.sign(T.Plus, "+" as const), this.sign(T.Minus, "-" as const)]);
      const right = this.SUBRULE1(this.term);
      left = this.ACTION(() => ({ kind: "sum", operator, left, right, start: left.start, end: right.end }));
    });
    return left;
  });

  term = this.RULE("term", (): Expression => {
    let left = this.SUBRULE(this.factor);
    this.MANY(() => {
      const operator = this.OR([this.sign(T.Star, "*" as const), this.sign(T.Slash, "/" as const)]);
      const right = this.SUBRULE1(this.factor);
      left = this.ACTION(() => ({ kind: "sum", operator, left, right, start: left.start, end: right.end }));
    });
    return left;
  });

  factor = this.RULE(
    "factor",
    (): Expression =>
      this.OR({
        DEF: [
          {
            ALT: (): Expression => {
              const sign = this.CONSUME(T.Minus);
              const value = this.SUBRULE(this.factor);
              return this.ACTION(() => ({
                kind: "negative",
                value,
                start: sign.startOffset,
                end: value.end,
              }));
            },
          },
          {
            ALT: () => {
              this.CONSUME(T.Open);
              const inner = this.SUBRULE(this.expression);
              this.CONSUME(T.Close);
              return inner;
            },
          },
          { ALT: (): Expression => literalOf(this.CONSUME(T.Literal)) },
          {
            GATE: () => this.image(1) === "round" && !this.has(K.of, 2),
            ALT: () => this.SUBRULE(this.round),
          },
          { GATE: () => this.has(T.Open, 2), ALT: () => this.SUBRULE(this.call) },
          {
            GATE: () => this.has(K.of, 2) || (this.isWord(2) && this.has(K.of, 3)),
            ALT: () => this.SUBRULE(this.property),
          },
          {
            ALT: (): Expression => {
              const t = this.CONSUME(T.Word);
              return { kind: "name", name: nameOf(t), start: t.startOffset, end: endOf(t) };
            },
          },
        ],
        // The alternatives that open with a word are told apart by looking one and two tokens further.
        IGNORE_AMBIGUITIES: true,
      }),
  );

  /** `round X to 1/16"` */
  round = this.RULE("round", (): Expression => {
    const word = this.CONSUME(K.round);
    const value = this.SUBRULE(this.expression);
    this.CONSUME(K.to);
    const step = this.SUBRULE(this.factor);
    return this.ACTION(() => ({ kind: "round", value, step, start: word.startOffset, end: step.end }));
  });

  call = this.RULE("call", (): Expression => {
    const word = this.CONSUME(T.Word);
    this.CONSUME(T.Open);
    const args: Expression[] = [];
    this.AT_LEAST_ONE_SEP({ SEP: T.Comma, DEF: () => args.push(this.SUBRULE(this.expression)) });
    const close = this.CONSUME(T.Close);
    return this.ACTION(() => ({
      kind: "call",
      name: nameOf(word),
      args,
      start: word.startOffset,
      end: endOf(close),
    }));
  });

  /** `thickness of 2x4`, `overall width of legs` */
  property = this.RULE("property", (): Expression => {
    const first = this.CONSUME(T.Word);
    const second = this.OPTION({
      GATE: () => !this.has(K.of, 1),
      DEF: () => this.CONSUME2(T.Word),
    });
    this.CONSUME(K.of);
    const of = this.SUBRULE(this.thing);
    return this.ACTION(() => {
      const property = {
        text: second ? `${first.image} ${second.image}` : first.image,
        start: first.startOffset,
        end: endOf(second ?? first),
      };
      return { kind: "property", property, of, start: property.start, end: of.end };
    });
  });

  comparison = this.RULE(
    "comparison",
    (): Comparison =>
      this.OR<Comparison>([
        {
          ALT: () => {
            this.run(1, "at");
            return this.OR1<Comparison>([this.alt(1, "at most", "most"), this.alt(1, "at least", "least")]);
          },
        },
        this.alt(3, "less than", "less", "than"),
        this.alt(4, "more than", "more", "than"),
        this.alt(5, "exactly", "exactly"),
        this.sign(T.AtMost, "at most"),
        this.sign(T.AtLeast, "at least"),
        this.sign(T.Less, "less than"),
        this.sign(T.More, "more than"),
        this.sign(T.Equals, "exactly"),
      ]),
  );

  /** One mark that stands for a value. */
  protected sign<V>(type: TokenType, value: V): { ALT: () => V } {
    return {
      ALT: () => {
        this.CONSUME(type);
        return value;
      },
    };
  }
}
