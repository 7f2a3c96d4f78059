/** The heads of every entry: what stands on its first line before the first comma. */
import { literalOf, nameOf } from "./rules-base";
import { MaterialRules } from "./rules-materials";
import * as T from "./tokens";
import { K } from "./tokens";
import type { Comparison, Expression, JointSide, Name, RingMember, Text, Thing, WorkClause } from "./tree";

type Bearing = (WorkClause & { readonly kind: "bears" })["how"];

export class HeadRules extends MaterialRules {
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

  loadHead = this.RULE("loadHead", (): { thing: Thing; value: Expression; how?: Bearing } => {
    const thing = this.SUBRULE(this.thing);
    const value = this.SUBRULE(this.expression);
    const how = this.OPTION(() =>
      this.OR<Bearing>([
        this.alt(1, "spread", "spread"),
        this.alt(2, "anywhere", "anywhere"),
        this.alt(3, "middle", "middle"),
      ]),
    );
    return { thing, value, ...(how && { how }) };
  });

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

  builtHead = this.RULE("builtHead", (): { date: Text; by?: Text } => {
    const date = this.SUBRULE(this.day);
    const by = this.OPTION(() => {
      this.CONSUME(K.by);
      return this.SUBRULE(this.text);
    });
    return { date, ...(by && { by }) };
  });
}
