/**
 * Better answers than the first, and what is known of how good they are: the one way in for whoever has time beside the
 * typing. The same job and the same effort give the same news on every machine.
 */
import type { BoardAnswer, BoardJob } from "./job";
import type { SheetCertificate } from "./panels/certify-sheets";
import { proveSheets } from "./panels/prove";
import type { Certificate } from "./proof/certify-boards";
import { prove } from "./proof/prove";
import { settled } from "./proof/settle";
import type { SheetAnswer, SheetJob } from "./sheets";

/** How good an answer is known to be. Whatever it says has been accepted by a checker of its own. */
export interface Proof<Shown = Certificate | SheetCertificate> {
  /** `proven`: nothing costs less, and of what costs as much nothing takes less wood. `bounded`: nothing costs less than the bound. */
  readonly status: "proven" | "bounded";
  /** Of what the answer buys, and the least there can be, in one unit. */
  readonly cost: number;
  readonly bound: number;
  /** They are cents; else, where a price is missing, ticks of boards or square ticks of sheets. */
  readonly money: boolean;
  /** Counted work so far. */
  readonly work: number;
  readonly certificate: Shown | null;
}

export type LayoutJob =
  | { readonly kind: "boards"; readonly job: BoardJob }
  | { readonly kind: "sheets"; readonly job: SheetJob };

export interface Laid<Answer> {
  readonly answer: Answer;
  readonly proof: Proof;
}

/** The news of a job: `kind` is that of the job. */
export type LayoutNews =
  | ({ readonly kind: "boards" } & Laid<BoardAnswer>)
  | ({ readonly kind: "sheets" } & Laid<SheetAnswer>);

/** Better answers, where there are any yet: a function of the job alone. */
export interface Layouts {
  readonly boards: (job: BoardJob) => Laid<BoardAnswer> | undefined;
  readonly sheets: (job: SheetJob) => Laid<SheetAnswer> | undefined;
}

/** Counted work after which a job is left as it is: some seconds. */
export const EFFORT = 1_000_000_000;

/**
 * Tells whenever best or bound have changed, and in between, about every few milliseconds, nothing: a place to do other
 * things, or to stop. The last news is what it ends with. Never throws, whatever numbers the job holds.
 */
export function* improve(
  asked: LayoutJob,
  effort = EFFORT,
): Generator<LayoutNews | undefined, LayoutNews, void> {
  if (asked.kind === "sheets") {
    const run = proveSheets(asked.job, effort);
    return { kind: "sheets", ...(yield* onlyNews(run, (news) => ({ kind: "sheets", ...news }))) };
  }
  const found = yield* onlyNews(prove(asked.job, effort), (news) => ({ kind: "boards", ...news }));
  yield { kind: "boards", ...found };
  const { answer, work } = yield* settled(asked.job, found.answer, effort);
  return { kind: "boards", answer, proof: { ...found.proof, work: found.proof.work + work } };
}

/** Tells what has not been told yet. */
function* onlyNews<News>(
  run: Generator<News | undefined, News, void>,
  asNews: (news: News) => LayoutNews,
): Generator<LayoutNews | undefined, News, void> {
  let told: News | undefined;
  for (;;) {
    const { value, done } = run.next();
    if (done) return value;
    yield value && value !== told ? asNews(value) : undefined;
    told = value;
  }
}

/** To the end, at once. */
export function improved(asked: LayoutJob, effort = EFFORT): LayoutNews {
  const run = improve(asked, effort);
  for (;;) {
    const { value, done } = run.next();
    if (done) return value;
  }
}
