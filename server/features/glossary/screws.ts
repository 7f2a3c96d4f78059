/** Words of screws and of the holes for them. */
import { shankDiameter, woodOverTip } from "../../trade";
import { type Term, term } from "./term";

const EIGHT = shankDiameter(8).toFixed(3);

/** Where no source is named, what a sentence says is common practice. */
export const SCREWS: readonly Term[] = [
  term(
    "pilot",
    "holes",
    { en: "pilot hole, pilot holes, pilot", fr: "avant-trou, avant-trous" },
    {
      en: "A pilot hole is drilled before the screw goes in, a little thinner than its thread. It keeps the wood from splitting and the screw on its way.",
      fr: "L’avant-trou se perce avant de visser, un peu plus mince que le filet. Il évite que le bois se fende et garde la vis dans sa direction.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "clearance",
    "holes",
    { en: "clearance hole, clearance holes, clearance", fr: "trou de passage, trous de passage" },
    {
      en: "Through this wider hole the screw slides freely in the first piece. Its head can then pull both pieces tight instead of holding them apart.",
      fr: "Dans ce trou plus large la vis glisse librement à travers la première pièce. Sa tête serre alors les deux au lieu de les tenir écartées.",
    },
    "prose fr",
  ),
  term(
    "countersink",
    "countersink",
    { en: "countersink, countersinks, countersunk", fr: "fraisure, fraiser, fraisée" },
    {
      en: "A countersink is the cone at the mouth of a hole that takes a screw’s flat head. The head then lies flush with the wood or just below it.",
      fr: "La fraisure est le cône à l’entrée d’un trou qui reçoit la tête fraisée. La tête affleure alors le bois, ou se trouve juste dessous.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "gauge",
    "gauge",
    { en: "gauge", fr: "calibre" },
    {
      en: `The number behind # is the gauge, and a higher one is a thicker screw. A #8 is nominally ${EIGHT}" thick at its shank.`,
      fr: `Le numéro après # est le calibre, et plus il est grand, plus la vis est grosse. Une #8 a un diamètre nominal de ${EIGHT.replace(".", ",")}" au fût.`,
    },
  ),
  term(
    "thread",
    "thread",
    { en: "thread, threads, threaded", fr: "filet, filetage" },
    {
      en: "The thread is the ridge that winds round a screw and cuts into the wood. What holds is the thread in the last piece, not the length of the screw.",
      fr: "Le filet est l’arête qui s’enroule autour de la vis et mord le bois. Ce qui tient est le filet dans la dernière pièce, pas la longueur de la vis.",
    },
  ),
  term(
    "shank",
    "thread",
    { en: "shank, shanks", fr: "fût" },
    {
      en: "The shank is the smooth stretch between the thread and the head. In the first piece it turns freely, so that the head can pull that piece tight.",
      fr: "Le fût est la partie lisse entre le filet et la tête. Dans la première pièce il tourne librement, et la tête peut la serrer.",
    },
    "prose",
  ),
  term(
    "bite",
    "bite",
    { en: "bite, bites, penetration", fr: "prise, pénétration" },
    {
      en: `The bite is how deep a screw goes into the last piece. At least half of the screw belongs there, with ${woodOverTip.value}" of wood left over its tip.`,
      fr: `La prise est la profondeur de la vis dans la dernière pièce. Au moins la moitié de la vis doit y être, et ${woodOverTip.value}" de bois rester devant sa pointe.`,
    },
  ),
  term(
    "toe-screw",
    "toe",
    { en: "toe-screw, toe-screwed, toe-screws, angled", fr: "vissage en biais, en biais" },
    {
      en: "A screw driven at a slant goes through the side of one piece into the next. Start well away from the end and drill its hole first, or the wood splits.",
      fr: "Une vis en biais traverse le flanc d’une pièce et entre dans l’autre. Partez loin du bout et percez d’abord son trou, sinon le bois se fend.",
    },
  ),
  term(
    "coating",
    "coating",
    { en: "coating, galvanized, stainless, galvanised", fr: "galvanisé, galvanisée, inox" },
    {
      en: "Galvanized screws wear a coat of zinc, and stainless ones do not need any. Plain steel rusts out of doors, and sooner in treated wood.",
      fr: "Les vis galvanisées portent une couche de zinc, celles en inox n’en ont pas besoin. L’acier nu rouille dehors, et plus vite dans le bois traité.",
    },
  ),
];
