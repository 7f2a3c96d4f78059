/** What is said in French about where pieces stand, and what touches what. */
import type { Templates } from "../telling";

export const PLACED: Readonly<Record<string, Templates>> = {
  "gap-uneven": {
    uneven:
      "Les jours de cette rangée de {n} {part} vont de {least} à {most} ; tous égaux, ils feraient {even}.",
    here: "Cette pièce est à {gap} de la précédente.",
  },
  "hangs-in-air": {
    near: "{piece}{others} est en l’air : le plus proche est {to}, à {gap} {where}{more}.",
    edge: "{piece}{others} est en l’air : le contact avec {to} n’est que le long d’une arête ou sur un coin, où rien ne tient{more}.",
    floor: "{piece}{others} est en l’air, à {gap} au-dessus du sol{more}.",
    wall: "Rien ne touche le sol : {piece} est au plus bas, à {gap} au-dessus.",
    here: "C’est ici qu’on place {piece}.",
    distance: "Écrivez {new} au lieu de {old} : la pièce porte alors à cet endroit.",
    move: "Déplacez la pièce de {gap} {toward}, ou mettez là quelque chose qui la tienne.",
    face: "Faites porter une de ses faces sur une face de {to}, ou mettez là quelque chose qui la tienne.",
    under: "Posez la pièce sur le sol, ou mettez quelque chose dessous.",
    fixed: "Si l’ouvrage est fixé à un mur, dites-le : « accept hangs-in-air because c’est fixé au mur ».",
  },
  "joint-unfastened": {
    one: "{piece} repose sur {other}, mais aucune ligne ne l’assemble à quoi que ce soit : on peut l’enlever.",
    some: "{piece} repose sur {other}, mais aucune ligne ne l’assemble à quoi que ce soit, non plus que {more} du même genre : on peut les enlever.",
    "one-beside":
      "{piece} touche {other}, mais aucune ligne ne l’assemble à quoi que ce soit : rien ne retient la pièce.",
    "some-beside":
      "{piece} touche {other}, mais aucune ligne ne l’assemble à quoi que ce soit, non plus que {more} du même genre : rien ne les retient.",
    here: "C’est ici qu’on place {other}.",
    join: "Assemblez-les : « fasten {part} into {into} », avec ses vis.",
  },
  "no-room": {
    row: "{count} « {subject} » côte à côte prennent {length}, mais il n’y a que {span} : {over} de trop.",
    neither:
      "{count} « {subject} » côte à côte prennent {length}, {over} de plus que la place ; {fewer} laissent des vides de {gap}, plus larges que les {most} que la ligne permet.",
    "no span": "{count} « {subject} » côte à côte prennent {length}, mais il n’y a rien entre les deux.",
    diagonal:
      "« {subject} » ne va pas là d’un coin à l’autre : sa largeur est de {width}, dans un rectangle de {across} sur {up}.",
    write: "Écrivez {to}",
  },
  "not-touching": {
    gap: "{first} et {into} s’assemblent, mais il y a {gap} entre les deux : déplacez {first} de {gap} {way}.",
    "gap-more":
      "{first} et {into} s’assemblent, mais il y a {gap} entre les deux, {more} : déplacez {first} de {gap} {way}.",
    never: "Cette ligne assemble {name} à {others}, mais aucun {name} n’y porte par une face.",
    loose:
      "On met {subject} entre {first} et {second}, mais il manque {gap} à sa longueur pour aller de l’un à l’autre.",
    here: "C’est ici qu’on place {piece}.",
    fill: "Donnez à {subject} {gap} de plus en longueur, ou rapprochez de {gap} ce qui l’encadre.",
  },
  "outside-space": {
    over: "L’ouvrage a {reach} {way}, et son espace {limit} {way} : {over} de trop, et c’est {piece} qui va le plus loin.",
    below: "{piece} descend à {depth} sous le sol{more}.",
    space: "L’espace a {limit} {way}.",
    less: "Faites l’ouvrage {less} de {over}.",
  },
  "pieces-overlap": {
    axis: "{low} va jusqu’à {to} {from}, et {high} commence déjà à {starts} : les deux se chevauchent de {depth} {way}{more}.",
    plain: "{first} et {second} se chevauchent de {depth} {way}{more}.",
    same: "{second} est juste là où {first} se trouve déjà{more}.",
    here: "C’est ici qu’on place {piece}.",
    distance: "Écrivez {new} au lieu de {old} : rien ne gêne plus {second}.",
    move: "Déplacez {second} de {depth} {toward}, ou ôtez-en autant à l’une des deux pièces.",
    shorten:
      "Ôtez {depth} à l’une des deux pièces, ou déplacez-en une : à elle seule, {second} ne peut pas aller {toward}, où se trouve autre chose.",
    askew:
      "Déplacez l’une des deux pièces, ou coupez-la plus court ou à un autre angle, jusqu’à gagner {depth} entre elles.",
    twice: "Enlevez l’une des deux pièces, ou mettez {second} ailleurs.",
    row: "Écartez les pièces de cette ligne de {depth} de plus {way}.",
    mirror: "Déplacez {piece} de {half} {toward} : sa pièce symétrique va d’autant de l’autre côté.",
    turn: "Écrivez « wide face {facing} » : chacune fait alors {thin} {way}, et rien ne se chevauche plus.",
  },
  "place-disputed": {
    "left to right":
      "« {subject} » ne peut pas être à deux endroits : « {first} » met son côté gauche à {was} de la gauche, « {second} » à {is} ; cela fait {apart} d’écart.",
    "front to back":
      "« {subject} » ne peut pas être à deux endroits : « {first} » met son avant à {was} de l’avant, « {second} » à {is} ; cela fait {apart} d’écart.",
    "up and down":
      "« {subject} » ne peut pas être à deux endroits : « {first} » met son dessous à {was} du sol, « {second} » à {is} ; cela fait {apart} d’écart.",
    first: "L’autre endroit est dit ici.",
    "take-out": "Enlevez « {text} »",
  },
  "place-undecided": {
    open: "Rien ne dit où se trouve « {subject} » {directions}.",
    lie: "Rien ne dit comment « {subject} » est posé : debout (« upright »), en travers (« across ») ou d’avant en arrière (« front to back »).",
    "flat or on edge": "Rien ne dit si « {subject} » est à plat (« flat ») ou sur chant (« on edge »).",
    "lie and open":
      "Rien ne dit comment « {subject} » est posé (debout : « upright », en travers : « across », ou d’avant en arrière : « front to back »), ni où cela se trouve {directions}.",
    "flat or on edge and open":
      "Rien ne dit si « {subject} » est à plat (« flat ») ou sur chant (« on edge »), ni où cela se trouve {directions}.",
    nowhere: "« {name} » n’est nulle part ici : ce qu’on met à côté n’a donc pas de place non plus.",
    itself: "Il n’y a pas d’autre « {name} » ici, sur quoi cette ligne puisse s’appuyer.",
    narrowed:
      "Il n’y a pas de « {words} » ici : les mots devant un nom choisissent ce qui est d’un côté du milieu de plusieurs, « middle » ce qui y est.",
    floor: "Le sol n’est qu’un niveau, sans côtés : mesurez depuis quelque chose qui y est posé.",
    "no-far-side":
      "À quelle distance est le {side}, cela découle de l’espace du plan, qu’aucune ligne ne dit.",
    "no-far-side inside":
      "Un sous-ensemble n’a pas de {side} avant d’être assemblé ; mesurez depuis son {other}.",
    room: "Rien ne dit dans quelle place mettre autant de « {subject} » qu’il en tient. Dites-le par exemple ainsi : « between left legs and right legs »",
    add: "Ajoutez « {text} »",
    space: "Dites l’espace dans la ligne « plan », par exemple : {example}",
  },
  racks: {
    racks:
      "Si on pousse {way}, {upright} et {others} se couchent : rien n’y va en diagonale, aucun panneau n’y est debout, et les vis d’une traverse n’embrassent que {spread} d’un montant, alors que {stiff} font un angle raide.",
    loose:
      "Si on pousse {way}, {upright} et {others} se couchent : rien n’y va en diagonale, aucun panneau n’y est debout, et aucune traverse n’est vissée à un montant.",
    single:
      "Si on pousse {way}, {upright} et {others} se couchent : rien n’y va en diagonale, aucun panneau n’y est debout, et aucune traverse n’a deux vis l’une au-dessus de l’autre dans un montant.",
    rail: "{piece} relie les montants.",
    brace:
      "Ajoutez une écharpe : une pièce placée « diagonally on {side} of …, from bottom left to top right ».",
    wider: "Ou prenez des traverses plus larges, avec deux vis bien écartées à chaque montant.",
  },
  "wont-go-in": {
    built:
      "Une fois monté, l’ouvrage mesure {sides} et n’entre pas : de quelque façon qu’on le tourne, il lui faut {need}, et le passage en a {have} ; montez-le sur place, puisque chaque pièce entre seule.",
    piece:
      "{part} mesure {sides} et n’entre pas : de quelque façon qu’on tourne la pièce, il lui faut {need}, et le passage en a {have}.",
    "way-in": "Le passage a {opening}.",
    "group-fits": "Une fois monté, {group} mesure {sides} et entre.",
    "group-not": "Une fois monté, {group} mesure {sides} et n’entre pas non plus.",
    "cut-smaller": "Faites {part} en deux morceaux, assemblés une fois dedans.",
  },
};
