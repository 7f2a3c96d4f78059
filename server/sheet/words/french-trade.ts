/** The rows of the trade's tables in French, by their keys: tools, cautions, care, rules for holes. */
import { STRUCTURAL_CAUTION } from "../../checks/french/phrases";
import { fr } from "../../checks/french/type";
import { metricPilotShare, stainService, type ToolKey } from "../../trade";

/** A tool as a builder names it, and how to do without it; empty where there is no sound way. */
export const TOOLS: Readonly<Record<ToolKey, { readonly name: string; readonly instead: string }>> = {
  eyes: tool("protection des yeux"),
  ears: tool("protection des oreilles"),
  dust: tool("un masque à poussière"),
  pincers: tool(
    "des tenailles",
    fr`Un marteau arrache-clou les arrache aussi, une chute de bois sous la tête.`,
  ),
  sawhorses: tool(
    "deux tréteaux",
    fr`Deux supports stables de même hauteur conviennent, la planche serrée dessus.`,
  ),
  tape: tool(
    "un mètre à ruban",
    fr`Une latte droite où sont tracées les longueurs du plan convient, si toutes sont tracées d'après la même.`,
  ),
  pencil: tool("un crayon", fr`Un clou ou un couteau trace une ligne plus fine.`),
  square: tool(
    "une équerre",
    fr`Le coin d'un panneau de contreplaqué neuf ou d'une feuille de papier rigide est assez d'équerre pour tracer ; des côtés de 3, 4 et 5 d'une même mesure donnent un angle droit.`,
  ),
  crosscut: tool(
    "une scie à tronçonner",
    fr`Le marchand de bois coupe les planches à longueur si on lui donne la liste.`,
  ),
  miter: tool(
    "une scie qui pivote pour les onglets",
    fr`Une scie à main suit une ligne tracée à la fausse équerre, la planche serrée ; un rabot ou une cale à poncer finit jusqu'à la ligne.`,
  ),
  bevel: tool(
    fr`une scie qui s'incline pour les biseaux`,
    fr`Tracer la pente sur les deux chants et scier à la main en suivant les deux lignes, la planche serrée.`,
  ),
  compound: tool(
    fr`une scie qui pivote et s'incline à la fois`,
    fr`Tracer la coupe sur les quatre côtés et scier à la main en suivant les lignes, la planche serrée ; essayer d'abord sur une chute.`,
  ),
  rip: tool(
    "une scie à déligner",
    fr`Le marchand de bois déligne pour peu, ou vend une planche plus étroite ; une scie à main suit une ligne tracée, la planche serrée.`,
  ),
  sheet: tool(
    "une scie à panneaux",
    fr`Le marchand de bois coupe les panneaux à la cote ; une scie à main suit une règle serrée le long de la ligne.`,
  ),
  chisel: tool(
    "une scie à denture fine, un ciseau à bois et un maillet",
    fr`Une entaille en bout peut se scier d'un bloc, dans les deux sens ; une râpe la rectifie.`,
  ),
  clamps: tool(
    "des serre-joints",
    fr`Une corde autour de l'assemblage, tordue avec un bâton, ou des poids dessus, tiennent pendant que la colle prend. À la scie, rien ne remplace un serre-joint.`,
  ),
  drill: tool("une perceuse", fr`Un vilebrequin ou une chignole perce les mêmes trous.`),
  driver: tool(fr`un tournevis, ou une perceuse avec l'embout de la tête`),
  hammer: tool("un marteau"),
  wrench: tool("une clé pour les boulons"),
  level: tool(
    "un niveau",
    fr`Un tuyau transparent rempli d'eau donne la même hauteur à deux endroits, et un poids au bout d'un fil donne l'aplomb.`,
  ),
  brush: tool("un pinceau"),
  rags: tool("des chiffons"),
  knife: tool("un couteau bien affûté", fr`De bons ciseaux la coupent aussi.`),
  stapler: tool("une agrafeuse", fr`Des semences courtes à tête large et un marteau la tiennent aussi.`),
};

function tool(name: string, instead = ""): { readonly name: string; readonly instead: string } {
  return { name, instead };
}

export const CAUTIONS: Readonly<Record<string, string>> = {
  estimate: STRUCTURAL_CAUTION,
  floor: fr`Un balcon, un toit ou un plancher faible : demander au propriétaire ou à l'ingénieur du bâtiment avant d'y poser quoi que ce soit. Sa limite vaut pour tout ensemble, personnes et neige comprises, et pas seulement pour le bac.`,
  guard: fr`Près d'un garde-corps, tout ce sur quoi un enfant peut monter rend le garde-corps moins haut. Laisser environ 4 pieds entre les deux.`,
  tall: fr`Ce qui est haut et étroit bascule. Ancrer celui-ci pour qu'il ne le puisse pas, et le tenir pendant le montage.`,
  hung: fr`Ce qui pend au mur s'arrache du plâtre et des plaques : visser dans les montants ou la maçonnerie derrière, et les repérer d'abord.`,
  "circular-saw": fr`Les protecteurs d'une scie circulaire couvrent les dents au-dessus et au-dessous de la semelle, et celui du bas revient seul quand on recule la scie : s'en assurer avant chaque coupe.`,
  "table-saw": fr`Déligner avec le couteau diviseur et le dispositif anti-recul en place.`,
  "push-stick": fr`Pour déligner étroit à la scie sur table, pousser avec un poussoir : la planche peut être rejetée.`,
  rip: fr`Un long délignage à la scie portative peut se coincer et rejeter la scie : serrer la planche et un guide, et garder le trait ouvert.`,
  "short-piece": fr`Les pièces de moins de 6 pouces se coupent dans une longue planche, serrées, jamais tenues à la main devant la scie.`,
  miter: fr`Serrer les petites pièces sur une scie à onglet ; 6 pouces est la plus courte longueur à tenir à la main.`,
  "blade-change": fr`Débrancher la scie avant de changer la lame.`,
  eyes: fr`Porter une protection des yeux pour scier, percer et visser.`,
  ears: fr`Une scie circulaire fait environ 100 à 110 dBA : porter une protection des oreilles.`,
  splitting: fr`Percer un avant-trou près des bouts et des chants, et dans le bois mince ou cassant, même là où les tables n'en demandent pas.`,
  dust: fr`La poussière de bois abîme les poumons : porter un masque, et couper dehors si possible.`,
  "dust-cedar": fr`La poussière de thuya géant peut provoquer de l'asthme : porter un masque pour chaque coupe et pour poncer.`,
  "treated-dust": fr`La poussière de bois traité est pire que celle du bois nu : le couper dehors, avec un masque.`,
  "treated-burn": fr`Ne jamais brûler de bois traité ni ses chutes, ni du bois de récupération qui pourrait l'être.`,
  "treated-food": fr`Le bois traité vendu aujourd'hui ne contient pas d'arsenic, mais son cuivre peut passer dans la terre. Doubler de géotextile un bac où poussent des légumes si cela inquiète.`,
  "treated-contact": fr`Le bois traité qui touche la terre doit porter la marque de contact avec le sol UC4A ; UC3B ne vaut que hors sol.`,
  "treated-drying": fr`Le bois fraîchement traité doit sécher avant une finition : deux à quatre semaines ou plus, jusqu'à ce qu'il boive l'eau dont on l'asperge.`,
  "treated-screws": fr`Le bois traité au cuivre demande des fixations galvanisées à chaud ou en inox : il ronge les autres.`,
  "black-stain": fr`Le cèdre, le séquoia et le chêne noircissent autour de l'acier : prendre des fixations en inox.`,
  "old-treated": fr`Le bois traité vendu pour l'habitation avant 2004 peut contenir de l'arsenic : ne pas s'en servir pour un bac.`,
  "salvage-poison": fr`Ne pas se servir de traverses de chemin de fer (créosote) ni de bois traité au pentachlorophénol.`,
  salvage: fr`Chercher les clous avant de scier du bois de récupération, et les arracher. Une vieille peinture peut contenir du plomb : ne pas la poncer ni la scier avant de l'avoir fait analyser. Laisser le bois qui porte des taches de produits.`,
  pallet: fr`Lire les marques des palettes : laisser celles qui portent MB, qui ont été gazées, et celles qui n'en portent pas.`,
  "near-food": fr`Bois de récupération, bois traité, finition ou doublure dont on ne sait pas s'ils conviennent près des aliments : le doute demeure, les tenir loin de ce qui se mange.`,
  "oily-rags": fr`Les chiffons huileux chauffent d'eux-mêmes et peuvent prendre feu : les étaler dehors pour sécher, ou les noyer dans l'eau.`,
  lifting: fr`51 lb est le maximum pour une personne dans la meilleure posture, et c'est moins bras tendus ou penché : se faire aider, ou porter en plusieurs fois.`,
  "wet-box": fr`Ne pas déplacer un bac rempli, encore moins mouillé : le mettre en place vide, et le vider avant de le déplacer.`,
  digging: fr`Faire repérer les réseaux enterrés avant de creuser ou d'enfoncer un ancrage.`,
  children: fr`Tenir les enfants à l'écart pendant les travaux, et ramasser chaque vis et chaque chute tombée : les petites s'avalent.`,
  "small-parts": fr`Une pièce libre qui entre dans un tube de 1-1/4 pouce de large et 2-1/4 pouces de profondeur peut étouffer un petit enfant : la fixer pour qu'elle ne puisse pas se détacher.`,
};

const [ROUGH, SMOOTH] = stainService.map(({ value }) => value) as [Years, Years];
type Years = (typeof stainService)[number]["value"];

export const CARE: Readonly<Record<string, string>> = {
  "care: tighten": fr`Resserrer les vis après la première saison sèche : le bois se rétracte en séchant, et elles prennent du jeu.`,
  "care: bolts": fr`Resserrer les boulons au bout d'un mois, puis chaque printemps.`,
  "care: oil": fr`Asperger d'eau chaque printemps : là où elle pénètre sans plus perler, nettoyer le bois et le huiler de nouveau.`,
  "care: stain-rough": fr`Deux couches de lasure sur bois brut durent jusqu'à ${ROUGH.high} ans dehors : les renouveler quand le bois paraît sec.`,
  "care: stain-smooth": fr`Une couche de lasure sur bois neuf raboté dure de ${SMOOTH.low} à ${SMOOTH.high} ans dehors : la renouveler quand le bois paraît sec.`,
  "care: finish": fr`Regarder la finition chaque printemps, le bois de bout d'abord : la renouveler là où elle est usée ou fendillée, avant que le bois grise dessous.`,
  "care: bare": fr`Sans finition, le bois grise et se fend dehors. Chercher chaque printemps les fentes qui courent jusqu'à une vis.`,
  "care: drains": fr`Chaque printemps, verser de l'eau et s'assurer qu'elle sort par-dessous : débarrasser trous et jours des racines et de la terre.`,
  "care: liner": fr`Regarder la doublure chaque printemps, le long du bord et dans les angles : fermer une déchirure.`,
  "care: liner-open": fr`Chaque printemps, dégager les ouvertures de la doublure au-dessus de l'écoulement.`,
  "care: no-drain": fr`L'eau ne s'écoule pas : arroser peu, et tenir à l'abri de la pluie.`,
  "care: frost": fr`La terre mouillée gonfle en gelant et pousse les parois : la laisser s'égoutter avant le premier gel, et regarder les angles au printemps.`,
  "care: frost-water": fr`L'eau qui reste dedans le fait éclater en gelant : le vider, et tout tuyau avec, avant le premier gel.`,
  "care: feet": fr`Enfoncer chaque printemps un tournevis dans ce qui touche le sol : là où il entre sans peine, le bois pourrit et doit être remplacé.`,
  "care: treated-cuts": fr`Passer un produit de préservation sur chaque coupe et chaque trou du bois traité : le traitement n'atteint pas le cœur.`,
  "care: hinged": fr`Chaque printemps, vérifier qu'il s'ouvre librement et ne s'affaisse pas, et resserrer les vis de ses charnières et de son loquet.`,
  "care: tall": fr`Tirer sur ses ancrages chaque année, et dehors après chaque tempête.`,
  "care: grows": fr`Rincer ce qu'on en mange, et brosser et rincer le bac vide entre deux cultures.`,
  "care: children": fr`Passer un chiffon sur les arêtes et les bords à chaque saison : poncer les échardes, et enfoncer les vis qui dépassent.`,
  "care: salvage": fr`Inspecter chaque année le bois de récupération : fentes aux anciens trous de clous, peinture qui s'écaille.`,
};

/** Rules for holes, by their names or by the keys of their rows. */
export const RULES: Readonly<Record<string, string>> = {
  "NDS withdrawal, 90% of root": fr`NDS, arrachement, 90 % du noyau`,
  "NDS withdrawal, 70% of root": fr`NDS, arrachement, 70 % du noyau`,
  "older rule for softwood, 70% of root": fr`ancienne règle pour bois tendre, 70 % du noyau`,
  "older rule for hardwood, 90% of root": fr`ancienne règle pour bois dur, 90 % du noyau`,
  "NDS lateral, 7/8 of root": "NDS, charge latérale, 7/8 du noyau",
  "NDS lateral, full root": "NDS, charge latérale, noyau entier",
  "softwood, 85% of root": fr`bois tendre, 85 % du noyau`,
  "hardwood, full root": "bois dur, noyau entier",
  [`${Math.round(metricPilotShare.value * 100)}% of the screw's diameter`]: fr`${Math.round(metricPilotShare.value * 100)} % du diamètre de la vis`,
  "hole for the shank, shank diameters": "trou de passage, en diamètres de la tige",
  "hole for a nail, at most 75% of it": fr`trou pour un clou, au plus 75 % du clou`,
  "hole for a nail in hard wood, at most 90% of it": fr`trou pour un clou en bois dur, au plus 90 % du clou`,
  "hole for a bolt, wider than it by": "trou pour un boulon, plus large de",
  "drain holes of a container": "trous d’écoulement d’un bac",
  "flat head of a wood screw, shank diameters": "tête plate de vis à bois, en diamètres de la tige",
};
