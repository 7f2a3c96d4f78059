/** What decides between alternatives, worked out for each when it is first asked: a plan needs few of them, and a start would wait for all. */
import { type ILookaheadStrategy, LLkLookaheadStrategy } from "chevrotain";

type Alternation = ILookaheadStrategy["buildLookaheadForAlternation"];
type Optional = ILookaheadStrategy["buildLookaheadForOptional"];
type Parser = ThisParameterType<ReturnType<Alternation>>;

export class LookaheadWhenAsked extends LLkLookaheadStrategy {
  override buildLookaheadForAlternation(options: Parameters<Alternation>[0]): ReturnType<Alternation> {
    let made: ReturnType<Alternation> | undefined;
    const make = () => super.buildLookaheadForAlternation(options);
    return function (this: Parser, alternatives) {
      made ??= make();
      return made.call(this, alternatives);
    };
  }

  override buildLookaheadForOptional(options: Parameters<Optional>[0]): ReturnType<Optional> {
    let made: ReturnType<Optional> | undefined;
    const make = () => super.buildLookaheadForOptional(options);
    return function (this: Parser) {
      made ??= make();
      return made.call(this);
    };
  }
}
