/** What is said in French about loads, and about what bears them. */
import type { Templates } from "../telling";

/** What is taken for granted, and what would do, is said with phrases. */
const MEMBER = { assumed: "{what}", cure: "{what}", caution: "{caution}" } as const;

export const HOLDING: Readonly<Record<string, Templates>> = {
  "too-weak": {
    ...MEMBER,
    bends:
      "{piece} porte {load} sur des portées allant jusqu’à {span}, et son bois peut en porter {bears}{more}.",
    shears: "{piece} porte {load}, et au ras de ses appuis son bois peut en porter {bears}{more}.",
    wall: "L’écoulement bouché, ce qui remplit le bac, gorgé d’eau, pousse {piece} vers le dehors avec {load}, et sur {span} son bois peut en porter {bears}{more}.",
  },
  "slat-sags": {
    ...MEMBER,
    sags: "{piece} porte {load} et fléchit de {sag} sur une portée de {span}, alors que 1/{part} de celle-ci, {limit}, est le plus qu’on laisse{more}.",
  },
  "side-bows": {
    ...MEMBER,
    bows: "Ce qui remplit {box} fait bomber {piece} vers le dehors de {bow} sur {span}, alors que 1/120 de cela, {limit}, est le plus qu’on laisse{more}.",
  },
  "screw-overloaded": {
    hangs: "{load} pendent à {screws} entre {piece} et {by}, qui peuvent en tenir {holds}.",
    pulled: "{load} tirent sur {screws} entre {piece} et {by}, qui peuvent en tenir {holds}.",
    nothing:
      "{load} pendent à {screws} entre {piece} et {by} : la prise y est de {bite}, et en dessous de {least}, {thick}, on ne leur compte aucune force.",
    "nothing-pulled":
      "{load} tirent sur {screws} entre {piece} et {by} : la prise y est de {bite}, et en dessous de {least}, {thick}, on ne leur compte aucune force.",
    "end-grain":
      "{load} tirent sur {screws} entre {piece} et {by} : elles sont dans du bois de bout, qui ne retient aucune vis qu’on arrache.",
    pushes: "La poussée est celle de ce qui remplit le bac, gorgé d’eau, l’écoulement bouché.",
    caution: "{caution}",
    more: "Mettez-en {count} là, au lieu de {now} ({kind}).",
    shop: "Prenez plutôt {name} ({length}) : le même nombre tient alors.",
    usual: "Prenez plutôt des vis {size} : le même nombre tient alors.",
    rest: "Faites reposer {piece} sur quelque chose qui tient au sol ou à {by}, un tasseau ou une entaille, pour que rien ne pende à des vis.",
    "or-rest":
      "Ou faites reposer {piece} sur quelque chose qui tient au sol ou à {by}, un tasseau ou une entaille, pour que rien ne pende à des vis.",
  },
  "load-has-no-path": {
    nothing:
      "{piece} porte {load}, et rien ne la soutient : elle touche {other}, mais aucune ligne ne fixe les deux.",
    "one-place":
      "{piece} porte {load} et n’est tenue qu’à un endroit, son poids étant à côté : elle bascule.",
    here: "C’est ici qu’on place {other}.",
    fasten: "Fixez {part} à {into}, ou faites-la reposer sur quelque chose.",
    support: "Soutenez {part} aussi à son autre bout.",
    caution: "{caution}",
  },
  "foot-over-load": {
    over: "{piece} presse le plancher de {load}, plus que les {limit} que vous avez écrits comme limite d’un pied{more}.",
    near: "{piece} presse le plancher de {load}, tout près des {limit} que vous avez écrits comme limite d’un pied{more}.",
    limit: "La limite d’un pied est de {limit}, d’après {by}.",
    "limit-unsaid": "La limite d’un pied est de {limit} ; le plan ne dit pas d’après qui.",
    usual: "Quelqu’un qui s’y assoit ou y monte est compté pour {weight}, là où c’est le pire pour ce pied.",
    spread:
      "Une plaque dessous, ou plus de pieds, répartirait la charge ; {n} pieds aussi chargés resteraient dans la limite.",
    caution: "{caution}",
  },
};
