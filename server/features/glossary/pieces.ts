/** Words for pieces by the work they do: legs, rails, braces, and what they stand against. */
import { type Term, term } from "./term";

/** Where no source is named, what a sentence says is common practice. */
export const PIECES: readonly Term[] = [
  term(
    "batten",
    "batten",
    { en: "batten, battens", fr: "barre, barres, traverse de barrage" },
    {
      en: "A batten is a strip that lies across several boards and holds them together. It keeps them in one plane, and each board gets screws of its own.",
      fr: "Une barre se pose en travers de plusieurs planches et les tient ensemble. Elle les garde dans un même plan, et chaque planche a ses propres vis.",
    },
    "prose",
    "piece",
  ),
  term(
    "ledger",
    "ledger",
    { en: "ledger, ledgers", fr: "lambourde, lambourdes, muralière" },
    {
      en: "A ledger is fixed along a wall or a frame, and other pieces rest on it. Its screws carry the whole load, and on a building local codes say how it is fixed.",
      fr: "Une lambourde se fixe le long d’un mur ou d’un cadre, et d’autres pièces y reposent. Ses vis portent toute la charge, et sur un bâtiment la réglementation locale décide.",
    },
    "prose",
    "piece",
    "prose fr",
  ),
  term(
    "cleat",
    "cleat",
    { en: "cleat, cleats", fr: "tasseau, tasseaux" },
    {
      en: "A cleat is a short strip screwed to one piece so that another can rest on it or be screwed to it. It spares you screws in end grain.",
      fr: "Un tasseau est un court morceau de bois vissé sur une pièce pour qu’une autre s’y appuie ou s’y visse. Il évite de visser dans le bois de bout.",
    },
    "prose",
    "piece",
    "prose fr",
  ),
  term(
    "rail",
    "frame",
    { en: "rail, rails", fr: "traverse, traverses" },
    {
      en: "A rail runs level between legs or posts and ties them together. Set on edge, it also holds up what lies on it.",
      fr: "Une traverse court de niveau entre des pieds ou des poteaux et les relie. Posée sur chant, elle porte aussi ce qui repose dessus.",
    },
    "piece",
  ),
  term(
    "leg",
    "frame",
    { en: "leg, legs, post, posts", fr: "pied, pieds, poteau, poteaux" },
    {
      en: "Legs and posts stand upright and bring the load down to the floor. Cut them all to one length, with a stop on the saw, or the thing rocks.",
      fr: "Pieds et poteaux sont debout et mènent la charge au sol. Coupez-les tous à la même longueur, contre une butée, sinon l’ouvrage sera bancal.",
    },
    "piece",
  ),
  term(
    "brace",
    "brace",
    { en: "brace, braces, bracing, braced", fr: "écharpe, écharpes, contreventement" },
    {
      en: "A brace runs at a slant across a frame and makes triangles of it. Four sides can lean over, but a triangle cannot change its shape.",
      fr: "Une écharpe traverse un cadre en biais et en fait des triangles. Quatre côtés peuvent pencher, mais un triangle ne peut pas se déformer.",
    },
    "prose",
    "piece",
  ),
  term(
    "slat",
    "slats",
    { en: "slat, slats", fr: "latte, lattes" },
    {
      en: "Slats are thin boards laid side by side with gaps, as in the seat of a bench. The gaps let water through and leave room to swell.",
      fr: "Les lattes sont des planches minces posées côte à côte avec des jours, comme sur un banc. Les jours laissent passer l’eau et le bois gonfler.",
    },
    "prose",
    "piece",
  ),
];
