/** What is said in French about guards, openings that catch, and soil for food. */
import type { Templates } from "../telling";

export const GUARDING: Readonly<Record<string, Templates>> = {
  "climbable-at-guard": {
    one: "Un enfant prend appui sur {low}, à {from} de haut : debout là, il ne lui reste que {left} d’un garde-corps de {guard}, ou {more} d’un garde-corps de {tall}.",
    several:
      "Un enfant prend appui sur {low}, à {from} de haut, puis sur {high}, à {to} : debout là, il ne lui reste que {left} d’un garde-corps de {guard}, ou {more} d’un garde-corps de {tall}.",
    guard: "Le plan dit que l’ouvrage se trouve près d’un garde-corps.",
    highest: "{high} est l’appui le plus haut jusqu’à {most}.",
    floor: "Le garde-corps se dresse sur le même sol.",
    caution: "{caution}",
    level:
      "Tous ses appuis sont à {from} de haut : ce n’en seraient plus à {down} plus bas, à {least}, ou à plus de {up} plus haut, au-dessus de {most}.",
    things: "Ne laissez à {things} aucun dessus entre {least} et {most} où un pied trouve appui.",
    away: "L’ouvrage doit se trouver à plus de {far} du garde-corps.",
  },
  "gap-traps": {
    finger:
      "Un vide de {gap} entre {piece} et {other}{more} prend les doigts d’un enfant, comme tous ceux de {low} à {high}.",
    head: "Une ouverture de {gap} sur {long} entre {piece} et {other}{more} laisse passer le corps d’un enfant mais non sa tête, comme toutes celles de plus de {low} et de moins de {high}.",
    here: "{other} se trouve ici.",
    count: "Mettez-en {pieces} pièces : des vides de {gap}",
    "at most": "Espacez-les de {to} au plus : {pieces} pièces, avec des vides de {gap}",
    apart: "Espacez-les de {to}",
    "on center": "Espacez-les de {to} d’axe en axe : des vides de {gap}",
    "finger limits": "Laissez entre ces pièces moins de {low}, ou plus de {high}.",
    "head limits": "Laissez entre ces pièces {low} au plus, ou {high} au moins.",
  },
  "not-for-food": {
    painted:
      "Ce qui pousse dans {box} se mange ({plants}), et la terre y touche {material}, dont la vieille peinture peut contenir du plomb.",
    unknown:
      "Ce qui pousse dans {box} se mange ({plants}), et la terre y touche {material}, du bois récupéré dont personne ne dit s’il a été traité, ni avec quoi.",
    "old treated":
      "Ce qui pousse dans {box} se mange ({plants}), et la terre y touche {material}, du bois traité qui peut être assez vieux pour contenir de l’arsenic.",
    liner:
      "Ce qui pousse dans {box} se mange ({plants}), et la terre y repose sur {roll}, qui n’est pas donné pour ce qui se mange.",
    grows: "Voici ce qui y pousse.",
    stock: "Voici tout ce qui est dit de {material}.",
    roll: "Voici ce qui est dit de {roll}.",
    line: "Doublez {box} avec {roll}",
    reline: "Doublez plutôt {box} avec {roll}",
    plain: "Coupez {part} dans {stock}",
    "no roll":
      "Doublez {box} avec un rouleau donné pour « food safe » et qui ne laisse pas passer l’eau : il n’y en a pas ici.",
    "no such roll": "Doublez {box} avec un rouleau donné pour « food safe » : il n’y en a pas ici.",
    "new": "Coupez {parts} dans du bois acheté pour cela.",
  },
};
