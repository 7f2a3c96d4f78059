/**
 * How properties are tried: the same cases each time, so that a change is refused for what it does and never by chance.
 * `FC_SEED=any` tries others. The first case that fails is told as it is; to look for its smallest form, which may take
 * hours, set `FC_SHRINK`.
 */
import fc from "fast-check";

const { FC_SEED = "20261128", FC_SHRINK } = process.env;

fc.configureGlobal({
  endOnFailure: !FC_SHRINK,
  ...(FC_SEED === "any" ? {} : { seed: Number(FC_SEED) }),
});
