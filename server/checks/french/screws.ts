/** What is said in French about screws. */
import type { Templates } from "../telling";

/** What the checks of a screw's length share. */
const LENGTHS = {
  faces: "La ligne ne dit pas quelles faces se touchent : on prend plat contre plat.",
  layer: "{part} a {depth} {way}.",
  "one-length": "{A} {kind} de {least} mordrait assez et laisserait {margin} de bois devant la pointe.",
  range: "{A} {kind} de {least} à {most} mordrait assez et laisserait {margin} de bois devant la pointe.",
  longer: "{A} {kind} d’au moins {least} mordrait assez.",
  "too-thin":
    "Ces pièces sont trop minces pour qu’on y pose {a} {kind} {how} : prenez {into} plus épais, ou assemblez-les autrement, par exemple avec un tasseau derrière.",
  "one-size":
    "Aucune longueur ne convient à elle seule à toutes les pièces de cette ligne : donnez à chacune sa ligne « fasten ».",
} as const;

export const SCREWS: Readonly<Record<string, Templates>> = {
  "no-room-to-drive": {
    blocked:
      "Pour {screw} dans {first}, il y a derrière la tête {room} jusqu’à {by}, déjà en place à ce moment{more}, et une visseuse avec son embout demande {needs}.",
    here: "C’est ici qu’on place {piece}.",
    before: "Vissez avant que {by} soit en place : assemblez {by} dans une ligne ou une étape plus tardive.",
    other: "Ou vissez depuis l’autre côté, en biais, ou avec une visseuse d’angle.",
  },
  "screw-holds-little": {
    ...LENGTHS,
    unreached: "{Screw} n’atteint pas du tout {into} : il faut d’abord traverser {before}.",
    "under-half":
      "{Screw} traverse {before} et ne mord que de {bite} dans {into} : moins de la moitié de ses {length}.",
    "under-least":
      "{Screw} traverse {before} et ne mord que de {bite} dans {into}, alors qu’il faut au moins {least}.",
    turned: "Vissez depuis l’autre côté, à travers {into} dans le bout de {first}.",
    "also-unreached": "Depuis {first}, la pointe n’atteint pas {into}.",
    "also-little": "Depuis {first}, la prise n’est que de {bite} dans {into}.",
    shop: "Prenez {name} ({length}) : {hold} doit mordre dans {into}.",
    usual: "Prenez {a} {kind} de {length} : {hold} doit mordre dans {into}.",
  },
  "screw-in-end-grain": {
    counted:
      "Dans le bois de bout de {into}, {a} {kind} garde {share} de sa force en travers, et {pulled} contre l’arrachement : {many}.",
    uncounted:
      "Dans le bois de bout de {into}, {a} {kind} garde {share} de sa force en travers, et {pulled} contre l’arrachement.",
    block: "Mettez un tasseau derrière, et posez {a} {kind} en travers du fil dans chacune des deux pièces.",
    other: "Ou vissez depuis l’autre côté, à travers {into} dans {first}, là où cela va en travers du fil.",
    lean: "Ou penchez de 30° et plus hors d’équerre, pour croiser les fibres.",
  },
  "screw-misses": {
    misses: "{Screw} à travers {first} n’entre jamais dans {into} : la pointe sort de {leaves} à côté{more}.",
    ends: "{Screw} finit à l’intérieur de {leaves}, où il y a {through} à traverser sur le chemin de {into}{more}.",
    here: "C’est ici qu’on place {piece}.",
    other: "Vissez depuis le côté de {into}, ou en biais tout près de là où les deux se touchent.",
    straight: "Vissez droit, ou moins loin de l’équerre.",
  },
  "screw-near-edge": {
    near: "{Screw} est à {distance} du {side} de {piece}{more} : à moins de {asked}, le bois se fend.",
    here: "C’est ici qu’on place {piece}.",
    fewer: "Mettez-en {count} au lieu de {now} : chaque pointe est alors assez loin de tous les côtés.",
    thinner: "Prenez {a} {kind} de moindre diamètre : {size} peut aller si près.",
    move: "Restez à au moins {least} du {side}.",
  },
  "screw-pokes-through": {
    ...LENGTHS,
    out: "{Screw} traverse {layers} et dépasse de {proud}{where}.",
    box: "{Screw} traverse {layers} et dépasse de {proud}{where}, à l’intérieur de {box}, où des mains fouillent.",
    gap: "{Screw} traverse {layers}, franchit un vide de {gap} et finit dans {next}, où rien ne devait aller.",
    near: "{Screw} traverse {layers} et ne laisse que {over} de bois devant la pointe ; il doit en rester {margin}.",
    reaches: "{Screw} traverse {layers}, et sa pointe atteint l’autre face : il ne reste pas de bois devant.",
    "also-out": "De {first} dans {into}, la pointe dépasse de {proud}.",
    "also-near": "De {first} dans {into}, il reste trop peu de bois devant la pointe.",
    shop: "Prenez {name} ({length}) : il doit rester {margin} de bois devant la pointe.",
    usual: "Prenez {a} {kind} de {length} : il doit rester {margin} de bois devant la pointe.",
    thicker:
      "Ou prenez une pièce plus épaisse : avec au moins {needs} {way}, {into} reçoit {a} {kind} de cette longueur.",
    angle: "Ou vissez à {angle} hors d’équerre.",
    "angle-told":
      "À {angle} hors d’équerre, la pointe resterait dedans, mais la prise dans {into} serait alors trop faible.",
  },
};
