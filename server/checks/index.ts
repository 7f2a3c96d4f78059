/** All checks, by code in alphabetical order; running them; what is accepted. */
import { say } from "../plan";
import type { Display } from "../units";
import type { Worked } from "../worked";
import { reasonFor } from "./accepting";
import { badDate } from "./bad-date";
import { badName } from "./bad-name";
import { badNumber } from "./bad-number";
import { boxOpen } from "./box-open";
import { boxOverLoad } from "./box-over-load";
import { braceShort } from "./brace-short";
import { builtUnclear } from "./built-unclear";
import { cannotAccept } from "./cannot-accept";
import { cannotBeCut } from "./cannot-be-cut";
import { cannotReach } from "./cannot-reach";
import { cheaperWith } from "./cheaper-with";
import { type Check, type Problem, problemsOf, type Says, textOf } from "./check";
import { climbableAtGuard } from "./climbable-at-guard";
import { countDiffers } from "./count-differs";
import { countMissing } from "./count-missing";
import { cutNeverPlaced } from "./cut-never-placed";
import { declaredTwice } from "./declared-twice";
import { endsCross } from "./ends-cross";
import { fastenerRusts } from "./fastener-rusts";
import { fileNotFound } from "./file-not-found";
import { finishAfterCover } from "./finish-after-cover";
import { footOverLoad } from "./foot-over-load";
import { gapCloses } from "./gap-closes";
import { gapTraps } from "./gap-traps";
import { gapUneven } from "./gap-uneven";
import { hangsInAir } from "./hangs-in-air";
import { heavyToLift } from "./heavy-to-lift";
import { impossibleValue } from "./impossible-value";
import { inACircle } from "./in-a-circle";
import { indentedAlone } from "./indented-alone";
import { jointUnfastened } from "./joint-unfastened";
import { limitWithoutSource } from "./limit-without-source";
import { loadHasNoPath } from "./load-has-no-path";
import { measureOutOfBounds } from "./measure-out-of-bounds";
import { mergeConflict } from "./merge-conflict";
import { missingMeasure } from "./missing-measure";
import { mustBroken } from "./must-broken";
import { neverAssembled } from "./never-assembled";
import { neverUsed } from "./never-used";
import { newerLanguage } from "./newer-language";
import { noDrain } from "./no-drain";
import { noRoom } from "./no-room";
import { noRoomToDrive } from "./no-room-to-drive";
import { noToolForCut } from "./no-tool-for-cut";
import { notEnoughOnHand } from "./not-enough-on-hand";
import { notForFood } from "./not-for-food";
import { notText } from "./not-text";
import { notTouching } from "./not-touching";
import { notUnderstood } from "./not-understood";
import { offTheTape } from "./off-the-tape";
import { offcutWasted } from "./offcut-wasted";
import { outsideSpace } from "./outside-space";
import { overBudget } from "./over-budget";
import { piecesOverlap } from "./pieces-overlap";
import { pilotWrong } from "./pilot-wrong";
import { placeDisputed } from "./place-disputed";
import { placeUndecided } from "./place-undecided";
import { placedNeverCut } from "./placed-never-cut";
import { racks } from "./racks";
import { ringOpen } from "./ring-open";
import { rootsCramped } from "./roots-cramped";
import { saidTwice } from "./said-twice";
import { screwHoldsLittle } from "./screw-holds-little";
import { screwInEndGrain } from "./screw-in-end-grain";
import { screwMisses } from "./screw-misses";
import { screwNearEdge } from "./screw-near-edge";
import { screwOverloaded } from "./screw-overloaded";
import { screwPokesThrough } from "./screw-pokes-through";
import { screwSplits } from "./screw-splits";
import { sideBows } from "./side-bows";
import { sizeMissing } from "./size-missing";
import { slatSags } from "./slat-sags";
import { stepUsesLater } from "./step-uses-later";
import { strayCharacter } from "./stray-character";
import { type Language, slotText } from "./telling";
import { tipsOver } from "./tips-over";
import { TONGUES } from "./tongues";
import { tooBig } from "./too-big";
import { tooDeep } from "./too-deep";
import { tooLongForStock } from "./too-long-for-stock";
import { tooMany } from "./too-many";
import { tooWeak } from "./too-weak";
import { tooWideForStock } from "./too-wide-for-stock";
import { unitMismatch } from "./unit-mismatch";
import { unknownEntry } from "./unknown-entry";
import { unknownName } from "./unknown-name";
import { unknownSection } from "./unknown-section";
import { waitMissing } from "./wait-missing";
import { waterStays } from "./water-stays";
import { willRot } from "./will-rot";
import { wontGoIn } from "./wont-go-in";

export type { Check, Cure, Edit, Problem, ProblemClass, ProblemNumber, Says, Slot } from "./check";
export { titleOf } from "./check";
export { LANGUAGES, type Language } from "./telling";
export { causeText, uncheckedText } from "./unchecked-words";
export { baseName } from "./writing";

export const CHECKS: readonly Check[] = [
  badDate,
  badName,
  badNumber,
  boxOpen,
  boxOverLoad,
  braceShort,
  builtUnclear,
  cannotAccept,
  cannotBeCut,
  cannotReach,
  cheaperWith,
  climbableAtGuard,
  countDiffers,
  countMissing,
  cutNeverPlaced,
  declaredTwice,
  endsCross,
  fastenerRusts,
  fileNotFound,
  finishAfterCover,
  footOverLoad,
  gapCloses,
  gapTraps,
  gapUneven,
  hangsInAir,
  heavyToLift,
  impossibleValue,
  inACircle,
  indentedAlone,
  jointUnfastened,
  limitWithoutSource,
  loadHasNoPath,
  measureOutOfBounds,
  mergeConflict,
  missingMeasure,
  mustBroken,
  neverAssembled,
  neverUsed,
  newerLanguage,
  noDrain,
  noRoom,
  noRoomToDrive,
  noToolForCut,
  notEnoughOnHand,
  notForFood,
  notText,
  notTouching,
  notUnderstood,
  offTheTape,
  offcutWasted,
  outsideSpace,
  overBudget,
  piecesOverlap,
  pilotWrong,
  placeDisputed,
  placeUndecided,
  placedNeverCut,
  racks,
  ringOpen,
  rootsCramped,
  saidTwice,
  screwHoldsLittle,
  screwInEndGrain,
  screwMisses,
  screwNearEdge,
  screwOverloaded,
  screwPokesThrough,
  screwSplits,
  sideBows,
  sizeMissing,
  slatSags,
  stepUsesLater,
  strayCharacter,
  tipsOver,
  tooBig,
  tooDeep,
  tooLongForStock,
  tooMany,
  tooWeak,
  tooWideForStock,
  unitMismatch,
  unknownEntry,
  unknownName,
  unknownSection,
  waitMissing,
  waterStays,
  willRot,
  wontGoIn,
];

const BY_CODE = new Map(CHECKS.map((c) => [c.code, c]));
export const checkOf = (code: string): Check | undefined => BY_CODE.get(code);

export interface Judged {
  /** Open problems, in the order of the text. */
  readonly problems: readonly Problem[];
  /** Those that an `accept` line lets stand, each with its reason. */
  readonly accepted: readonly { readonly problem: Problem; readonly because: string }[];
}

/** Runs every check, and sets aside what the plan accepts. */
export function judge(worked: Worked): Judged {
  const found: Problem[] = [];
  for (const check of CHECKS) if (check !== cannotAccept) found.push(...problemsOf(check, worked));
  // What accepts nothing is only known once everything else was looked for.
  found.push(...problemsOf(cannotAccept, worked, found));
  found.sort(inOrderOf(worked));
  const problems: Problem[] = [];
  const accepted: { problem: Problem; because: string }[] = [];
  for (const problem of found) {
    const because = reasonFor(problem, worked);
    if (because) accepted.push({ problem, because });
    else problems.push(problem);
  }
  return { problems, accepted };
}

/** By file, the plan first; then by place in the text; then by code. */
function inOrderOf({ loaded }: Worked): (a: Problem, b: Problem) => number {
  const rank = new Map(loaded.files.map((f, i) => [f.file, i]));
  return (a, b) =>
    (rank.get(a.at.file) ?? 0) - (rank.get(b.at.file) ?? 0) ||
    a.at.start - b.at.start ||
    (a.code < b.code ? -1 : a.code > b.code ? 1 : 0);
}

/** What is called something inside of a sentence, by itself: "a part". */
export const phraseText = (says: string, display: Display, language: Language = "en"): string =>
  slotText(say(says), display, TONGUES[language]);

/** A problem's own sentence, a cure's title, or any other of its texts, in the plan's units and in that language. */
export function problemText(code: string, says: Says, display: Display, language: Language = "en"): string {
  const check = checkOf(code);
  return check ? textOf(check, says, display, language) : says.says;
}
