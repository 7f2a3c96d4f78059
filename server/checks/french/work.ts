/** What is said in French about cutting, buying, rings and boxes. */
import type { Templates } from "../telling";

export const WORK: Readonly<Record<string, Templates>> = {
  "box-open": {
    wall: "{box} est ouvert {where} : un jour de {narrow} sur {long} dans sa paroi laisse passer le contenu, alors qu’on n’en admet que {limit}.",
    bottom:
      "{box} est ouvert par-dessous : un jour de {narrow} sur {long} dans son fond laisse passer le contenu, alors qu’on n’en admet que {limit}.",
    inside:
      "La ligne dit que {box} a {typed} {side} à l’intérieur, mais ses parois sont à {placed} l’une de l’autre.",
    deep: "La ligne dit que {box} a {typed} de haut à l’intérieur, mais de son fond à son bord il y a {placed}.",
    here: "{piece} en est au plus près.",
  },
  "box-over-load": {
    over: "{box}, plein et mouillé, presse le plancher de {pressure}, plus que les {limit} {whose}.",
    none: "{box}, plein et mouillé, presse le plancher de {pressure}, et il ne reste rien des {limit} que vous avez écrits comme limite.",
    near: "{box}, plein et mouillé, presse le plancher de {pressure}, tout près des {limit} {whose}.",
    limit: "La limite du plancher est de {limit}, d’après {by}.",
    "limit-unsaid": "La limite du plancher est de {limit} ; le plan ne dit pas d’après qui.",
    share: "De cette limite, « {what} » prend {value}.",
    volume: "{box} contient {volume} de {fill} : {weights} ({source}).",
    "fill-assumed": "{fill} est {assumed}.",
    empty: "Le bac lui-même pèse {own} ({from}).",
    "no-empty": "Le bac lui-même n’est pas compté : le plan ne dit pas ce qu’il pèse vide.",
    outline: "Son emprise est de {wide} x {deep} ({from}).",
    caution: "{caution}",
    depth: "La limite que vous avez écrite serait atteinte avec {depth} de {fill} dedans.",
    spread: "Réparti sur {area}, le même poids presserait de {limit}.",
  },
  "brace-short": {
    short: "{part} a {typed} de pointe à pointe, mais d’un coin à l’autre il faut {needs}.",
    long: "{part} a {typed} de pointe à pointe, mais d’un coin à l’autre il n’y a place que pour {needs}.",
    miter:
      "{part} a des abouts coupés en onglet à {typed}, mais pour bien porter dans ses coins il leur faut {needs}.",
    write: "Écrivez {to}",
    leave: "Ne dites ni la longueur ni les coupes d’about : elles découlent de l’endroit où va l’écharpe.",
  },
  "ends-cross": {
    cross:
      "« {name} » n’a que {length} de long, et ses coupes d’about se croisent : à {least}, elles se rejoindraient tout juste.",
    end: "La coupe est ici.",
    longer: "Donnez à « {name} » plus de {least}, ou des abouts moins en biais.",
  },
  "no-tool-for-cut": {
    miter: "{part} demande un onglet de {angle} hors d’équerre, et la scie ne tourne que jusqu’à {most}.",
    bevel: "{part} demande un biseau de {angle} hors d’équerre, et la lame ne s’incline que jusqu’à {most}.",
    rip: "{part} est à déligner à {width}, et la ligne « tools » dit que rien ne peut se déligner.",
    tools: "Les outils sont dits ici.",
  },
  "off-the-tape": {
    length:
      "La longueur de {part} tombe à {exact}, entre deux traits du mètre ; on coupe à {mark}, soit {error} {way}.",
    width:
      "La largeur de {part} tombe à {exact}, entre deux traits du mètre ; on déligne à {mark}, soit {error} {way}.",
    write: "Écrivez {mark}",
    round: "Arrondissez à {step}",
  },
  "over-budget": {
    over: "Cela coûte {total}, soit {more} de plus que le budget de {budget}.",
    least:
      "Cela coûte {total} et davantage, soit {more} de plus que le budget de {budget} : on ne connaît pas le prix de {without}.",
    "over-cheapest":
      "Cela coûte {total}, soit {more} de plus que le budget de {budget}, et à ces prix aucun débit n’est moins cher.",
    "over-within":
      "Cela coûte {total}, soit {more} de plus que le budget de {budget} ; en débitant autrement, on épargnerait au plus {saves}.",
    "least-cheapest":
      "Cela coûte {total} et davantage, soit {more} de plus que le budget de {budget} : on ne connaît pas le prix de {without}, et à ces prix aucun débit n’est moins cher.",
    "least-within":
      "Cela coûte {total} et davantage, soit {more} de plus que le budget de {budget} : on ne connaît pas le prix de {without} ; en débitant autrement, on épargnerait au plus {saves}.",
    other: "Les prix sont en {currency} : on ne peut pas les comparer au budget de {budget}.",
    uncounted: "On ne sait pas combien il faut de {what} : tout n’est donc pas compté ici.",
    unmeasured: "On ne sait pas quelle quantité de {what} il faut : tout n’est donc pas compté ici.",
    first: "Le débit des planches est une première réponse ; il en existe peut-être une moins chère.",
  },
  "ring-open": {
    short:
      "{ring} ne ferme pas : ses {n} angles tournent de {turns} en tout, soit {misfit} de moins que 360° ; l’angle de {a} et {b} bâille donc de {heel} dehors et de {toe} dedans, ou de {spread} à chaque angle si tous se le partagent.",
    far: "{ring} ne ferme pas : ses {n} angles tournent de {turns} en tout, soit {misfit} de plus que 360° ; à l’angle de {a} et {b}, il y a donc un écart de {heel} dehors et de {toe} dedans, ou de {spread} à chaque angle si tous se le partagent.",
    square:
      "{ring} ne ferme pas : aucun de ses abouts n’est coupé en biais, et ses {n} angles doivent tourner de 360° en tout.",
    mitered:
      "{ring} ne ferme pas : il est posé sur chant, où ce sont des biseaux qui tournent les angles, et ses abouts sont coupés d’onglet, comme pour un cadre à plat.",
    beveled:
      "{ring} ne ferme pas : il est posé à plat, où ce sont des onglets qui tournent les angles, et ses abouts sont biseautés, comme pour un cadre sur chant.",
    sides:
      "{ring} ne ferme pas : ses angles tournent de 360°, mais {b} commence à {opening} de là où finit {a}.",
    faces:
      "Là où {a} ({w1} {way}, coupe à {x}) rencontre {b} ({w2} {way}, coupe à {y}) dans {ring}, les faces coupées ont {m1} et {m2} de long : une marche de {step} à l’intérieur.",
    "too-few": "{ring} a {sides}, et il en faut au moins trois à un cadre.",
    "ends-cross":
      "{ring} ne peut pas se faire : {side} est si court pour sa largeur que ses deux coupes se croisent avant son bord intérieur.",
    unusable: "{ring} ne peut pas se faire : la taille de {side} n’est rien qui se coupe.",
    "end-cut": "{part} est coupé à {angle}.",
    long: "{part} a {length} de long.",
    across: "{part} a {across} {way}.",
    bevel: "Coupez plutôt ses abouts en biseau à {angle}.",
    miter: "Coupez plutôt ses abouts d’onglet à {angle}.",
    alike: "Coupez tous les abouts à {angle} : 180° divisés par {n} côtés.",
    "alike-told":
      "Pour {n} côtés tous pareils, coupez chaque about à {angle} ; ici, les longueurs ne vont pas non plus ensemble.",
    length: "Donnez à {side} {to} de long au lieu de {from}.",
    "length-outside": "Donnez à {side} {to} de long sur son bord extérieur au lieu de {from}.",
    match: "Coupez {a} à {x} et {b} à {y} : les deux faces ont alors la même longueur.",
    "in-space":
      "Là où {a} rencontre {b} dans {ring}, tel qu’il est placé, {share} seulement de l’about coupé porte sur l’autre : l’angle reste ouvert.",
    leaning:
      "{ring} ne ferme pas : avec des côtés penchés de {lean} {way}, ses {n} angles tournent de {turns} en tout au lieu de 360°.",
    gapes:
      "Là où {a} rencontre {b} dans {ring}, tel qu’il est placé, les abouts coupés bâillent de {opening}.",
    compound:
      "Des côtés penchés demandent un onglet et un biseau ensemble : pour {n} côtés égaux penchés de {lean}, {miter} et {bevel}.",
    "on-edge":
      "Ses abouts sont en biseau et non en onglet : on prend donc ses pièces comme posées sur chant.",
  },
  "too-long-for-stock": {
    board:
      "{part} demande {needs}, mais le plus long morceau que donne {material} est de {longest} : il manque {over}.",
    sheet:
      "{part} demande {needs} le long du panneau, mais le plus long panneau de {material} est de {longest}.",
    trim: "On ôte {trim} à un bout de chaque planche achetée.",
    stock: "Voici comment {material} se vend et se trouve en réserve.",
    "longer-sheet": "Cherchez un panneau de {material} plus long, ou faites {part} en deux morceaux.",
    usual: "Une planche de {length} est assez longue, et c’est une longueur qui se vend couramment.",
    longer: "Cherchez une planche de {material} plus longue, ou faites {part} en deux morceaux.",
  },
  "too-wide-for-stock": {
    board: "{part} est à déligner à {width}, mais {material} n’a que {has} de large.",
    sheet:
      "{part} a {width} de large, et aucun panneau de {material} n’est aussi large dans le sens où va son fil.",
  },
};
