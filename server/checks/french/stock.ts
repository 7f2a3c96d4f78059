/** What is said in French about what is bought, what is on hand and what is left of it. */
import { counted, type Templates } from "../telling";

export const STOCK: Readonly<Record<string, Templates>> = {
  "cannot-be-cut": {
    kerf: "À chaque coupe, la scie prendrait {kerf}, et le plus long morceau que donne {material} est de {longest} : on ne peut rien y couper.",
    "kerf-usual": "Écrivez ce que la scie prend vraiment : avec une lame courante, c’est {usual}.",
    trim: "On ôte {trim} à un bout de chaque {material} acheté, et le plus long qui se vend mesure {longest} : il ne reste rien à couper.",
    bad: "Tout ce qu’il y a de {material} en réserve est mauvais d’un bout à l’autre : on ne peut rien y couper.",
    neither:
      "{part} mesure {length} x {width} : en {material}, les panneaux assez longs sont trop étroits pour lui, dans le sens du fil.",
    either: "{part} mesure {length} x {width} et ne tient sur aucun panneau de {material}, dans aucun sens.",
    stock: "Voici comment {material} se vend et se trouve en réserve.",
    "larger-sheet": "Cherchez un panneau de {material} plus grand, ou faites {part} en deux morceaux.",
  },
  "cheaper-with": {
    length: counted(
      "n",
      "Une planche de {material} pourrait être de {length} au lieu de {instead}, ce qui épargnerait {saves}.",
      "{n} planches de {material} pourraient être de {length}, ce qui épargnerait {saves}.",
    ),
    hand: "Un morceau de {material} de plus en réserve, d’au moins {length} de long, épargnerait {saves} : on n’achète une planche de {instead} que pour cela.",
    sheet:
      "Un morceau de {material} de plus en réserve, d’au moins {width} x {length}, épargnerait {saves} : on n’achète un panneau de {instead} que pour cela.",
    "sheet-grain":
      "Un morceau de {material} de plus en réserve, d’au moins {length} dans le sens du fil et {width} en travers, épargnerait {saves} : on n’achète un panneau de {instead} que pour cela.",
    price:
      "On compte qu’une planche de {length} coûte {price}, autant à la longueur qu’une de {near} à {paid}.",
    free: "Ce qui est en réserve ne coûte rien, et il est bon d’un bout à l’autre.",
    first: "Le débit est une première réponse ; un autre demande peut-être moins de planches.",
    ask: "Demandez au marchand s’il a des planches de {length}. S’il en a, écrivez-les avec leur prix parmi ce qui se vend de {material}.",
    look: "Cherchez dans la réserve. Ce qui s’y trouve s’écrit sous {material} : « on hand 1 of {written} ».",
  },
  "not-enough-on-hand": {
    pile: "La réserve de {material} ne suffit pas : il n’y a pas de bois pour {pieces}, {lacks} en tout.",
    "pile-sure":
      "La réserve de {material} ne suffit pas, de quelque façon que l’on débite : il n’y a pas de bois pour {pieces}, {lacks} en tout.",
    large:
      "Ce qui se vend de {material} est trop petit pour certaines pièces, et la réserve ne les donne pas toutes : il n’y a pas de bois pour {pieces}, {lacks} en tout.",
    "large-sure":
      "Ce qui se vend de {material} est trop petit pour certaines pièces, et la réserve ne les donne pas toutes, de quelque façon que l’on débite : il n’y a pas de bois pour {pieces}, {lacks} en tout.",
    needs: "Aux pièces que seule la réserve peut donner, il faut {needs} ; elle contient {has} de bon bois.",
    unproven: "Un autre débit trouve peut-être du bois pour plus d’entre elles.",
    find: "Trouvez-en d’autre, ou faites des pièces plus petites ou moins nombreuses.",
    sold: "S’il s’achète, écrivez sous {material} en quelles longueurs il se vend.",
    "sold-sheets": "S’il s’achète, écrivez sous {material} en quelles tailles il se vend.",
  },
  "offcut-wasted": {
    board: "Il reste {length} d’une planche de {whole} : {material} pour {worth}.",
    sheet: "Il reste {width} x {length} d’un panneau de {whole} : {material} pour {worth}.",
    first: "Le débit est une première réponse ; un autre en laisse peut-être moins.",
    keep: "Gardez-le, et écrivez « on hand 1 of {written} » sous {material} dans votre fichier d’atelier : le prochain plan le débitera en premier.",
    "keep-sheet": "Gardez-le pour un plan qui demande un tel morceau.",
  },
};
