/** What is said in French about rot, rust, and the holes of screws. */
import { groundContact } from "../../trade";
import type { Templates } from "../telling";

export const WEATHER: Readonly<Record<string, Templates>> = {
  "fastener-rusts": {
    outdoors: "{name} est en acier nu : dehors, la rouille l’emporte{more}, et tache le bois.",
    soil: "{name} est en acier nu : dans {fill} de {box}, la rouille l’emporte{more}.",
    stains: "{name} est en acier galvanisé : {wood} ronge le zinc{more} et noircit tout autour.",
    shop: "Prenez {name}, de même taille : {coating}.",
    ask: "Demandez {a} {kind} de cette taille en acier {coatings}.",
  },
  "pilot-wrong": {
    "thread-wide":
      "Un avant-trou de {typed} est trop large pour {screw} : au-delà de {limit}, le filet ne trouve guère de bois où mordre.",
    "no-hold": "Un avant-trou de {typed} est aussi large que {screw} : rien ne tient plus.",
    "thread-narrow":
      "Un avant-trou de {typed} est trop étroit pour {screw} : en deçà de {limit}, le bois peut se fendre quand même, ou le métal se tordre et casser.",
    "nail-wide":
      "Un trou de {typed} est trop large pour {screw} : au-delà de {limit}, le bois ne serre plus.",
    "shank-narrow":
      "Dans un trou de passage de {typed}, le filet mord aussi, pour {screw} : en deçà de {limit}, les pièces restent écartées.",
    "head-through":
      "Un trou de passage de {typed} est aussi large que la tête, à peu près {limit} pour {screw} : la tête passe au travers.",
    "bolt-narrow": "Pour {screw}, un trou de {typed} est trop étroit : le bois se fend au passage.",
    "bolt-wide":
      "Un trou de {typed} est trop large pour {screw} : au-delà de {limit}, l’assemblage glisse avant de tenir.",
    wood: "Pour {part}, on prend {wood}, puisque le plan ne le dit pas.",
    drill: "Percez plutôt à {hole}.",
  },
  "screw-splits": {
    end: "{Screw} entre dans {piece} à {distance} du bout{more}, sans avant-trou : à moins de {asked}, le bois risque de se fendre.",
    brittle:
      "{Screw} entre dans {piece} à {distance} du bout{more}, sans avant-trou : {wood} se fend facilement et demande un trou à moins de {asked} d’un bout.",
    row: "{Screw} est à {distance} de la suivante dans une file le long du fil de {piece}{more}, sans avant-trou : à moins de {asked}, le bois risque de se fendre de l’une à l’autre.",
    dense:
      "{part} est en {wood}, de densité {gravity} : au-delà de {limit}, il faut un avant-trou pour {screw}, sinon le bois se fend ou le métal se tord et casse.",
    thin: "{part} n’a que {thick} d’épaisseur : sans avant-trou, {screw} risque de fendre une planche de moins de {asked}.",
    along: "{Screw} entre dans le bout de {part} sans avant-trou : dans le sens des fibres, cela les écarte.",
    here: "C’est ici qu’on place {piece}.",
    pilot: "Percez d’abord à {hole} : écrivez {to}",
    move: "Ou restez à au moins {least} du bout.",
    spread: "Ou espacez-les d’au moins {least}, ou décalez-les en travers du fil.",
  },
  "will-rot": {
    ground: "{Piece} pose sur le sol, dehors{more} : {because}.",
    floor: "{Piece} pose sans protection sur le sol bâti, dehors{more} : l’eau reste dessous, et {because}.",
    "soil-ground": "{Fill} de {box} touche {parts}, et le sol aussi, par-dessous : {because}.",
    soil: "{Fill} de {box} touche {parts} : {because}.",
    here: "C’est ici qu’on place {piece}.",
    bare: "Le plan ne donne pas de limite pour le plancher : on prend un sol de terre.",
    line: "Doublez {box} avec {roll} : {fill} ne touche plus le bois.",
    stock: "Prenez {stocks}.",
    ask: `Demandez à la scierie {sections} traité pour le contact du sol (${groundContact.value} sur son étiquette), ou en bois de cœur de cèdre, de chêne blanc ou de robinier.`,
    "ask-food":
      "Demandez à la scierie {sections} en bois de cœur de cèdre, de chêne blanc ou de robinier, puisqu’on peut manger ce qui y pousse.",
    foot: "Ou posez le tout sur un pied qui garde le bout au sec : une pierre, un sabot de poteau ou un bloc de bois traité.",
    raise: "Ou soulevez-le du sol, sur des pierres ou des blocs de bois traité.",
    coat: "Enduisez aussi {parts}, et surtout les bouts.",
    finish: "Huilez ou peignez {parts}, et surtout les bouts.",
  },
};
