/** Where numbers come from, in French: documents keep the names they are found by, and what is described is translated. */

import { COMMON_PRACTICE, FROM_MEMORY, type Source } from "../../trade";
import { de } from "./elision";
import { fr } from "./type";

/** For the sheet, without who reproduced it. */
export function cited(source: Source): string {
  const { confidence, via } = source;
  if (isItsOwn(source)) return named(source);
  if (confidence === "memory") return `${named(source)}, de mémoire`;
  if (confidence === "common practice") return `${named(source)}, usage du métier`;
  return confidence === "secondary" && via === undefined ? `${named(source)} (non confirmé)` : named(source);
}

/** With who reproduced it, and whether that is sure. */
export function citedInFull(source: Source): string {
  const { via, confidence } = source;
  if (via === undefined || isItsOwn(source)) return cited(source);
  const doubt = confidence === "secondary" ? fr` ; non confirmé` : "";
  return `${named(source)} (repris ${de(inFrench(via))}${doubt})`;
}

/** "common practice" and "from memory" say all there is to say. */
const isItsOwn = ({ document }: Source): boolean =>
  document === COMMON_PRACTICE.document || document === FROM_MEMORY.document;

const named = ({ document, edition, table }: Source): string =>
  [
    [inFrench(document), ...(edition === undefined ? [] : [edition])].join(" "),
    ...(table === undefined ? [] : [inFrench(table)]),
  ].join(", ");

const inFrench = (text: string): string => DESCRIBED[text] ?? text;

/** Documents, tables and copies that are described in English words; what is not here is cited by its own name. */
export const DESCRIBED: Readonly<Record<string, string>> = {
  "common practice": "usage du métier",
  "from memory": "de mémoire",

  "dressed dry sizes": "cotes rabotées, bois sec",
  "dressed green sizes": "cotes rabotées, bois vert",
  "planed metric, sold by finished size": "raboté métrique, vendu par cote finie",
  "metric names of the inch sizes": "noms métriques des cotes en pouces",
  "lumber lengths": "longueurs de bois",
  "metric lengths, steps of 300 mm": "longueurs métriques, par 300 mm",
  "saw blade widths": "épaisseurs de lames de scie",
  "tolerance class T2": "classe de tolérance T2",
  "performance categories, unsanded or touch-sanded, at 9% moisture": fr`catégories de performance, non poncé ou peu poncé, à 9 % d'humidité`,
  "metric plywood thicknesses usually sold": "épaisseurs métriques courantes de contreplaqué",
  "usual metric sheet": "panneau métrique courant",
  "plywood design-capacity table": "table de résistance du contreplaqué",

  "Table 12.3.3A, specific gravity": "table 12.3.3A, densités",
  "Table 5-3, clear wood at 12% moisture": fr`table 5-3, bois sans défaut à 12 % d'humidité`,
  "Table 4-3, shrinkage from green to oven-dry": fr`table 4-3, retrait du vert à l'anhydre`,
  "naval facilities manual MO-312": "manuel naval MO-312",
  "Table 2-1, heartwood decay resistance": "table 2-1, durabilité du bois de cœur",
  "chapter 2, redwood": "chapitre 2, séquoia",
  "species groups": "groupes d’essences",
  "Table 5-3, clear wood, green": "table 5-3, bois vert sans défaut",
  "allowable properties from clear wood": "contraintes admissibles à partir du bois sans défaut",
  "chapter 7, stress grades": "chapitre 7, classes de résistance",
  "Tables 4A and 4B, three-ply plywood": "tables 4A et 4B, contreplaqué à trois plis",
  "span ratings of sheathing by thickness": "portées nominales des panneaux par épaisseur",
  "NDS Manual": "manuel NDS",
  "wet service of panels": "panneaux en milieu humide",
  "10.4.3, holes of bolts": "10.4.3, trous des boulons",
  "use categories": "classes d’emploi",
  "species combinations": "essences vendues ensemble",
  "weight of wood, 62.4 [G / (1 + 0.009 G M)] (1 + M/100)":
    "poids du bois, 62,4 [G / (1 + 0,009 G M)] (1 + M/100)",
  "Table 13-5, dimensional change coefficients": "table 13-5, coefficients de variation des cotes",
  "dimensional change": "variation des cotes",
  "chapter 4": "chapitre 4",
  abstract: "résumé",
  "Table 4-2": "table 4-2",
  "chapter 13, moisture in service": "chapitre 13, humidité en service",
  "NDS Supplement 2018": "NDS, supplément 2018",
  "Table 4A": "table 4A",
  "Southern Pine, by size": "pin jaune du Sud, par section",
  "Table 4A, adjustment factors": "table 4A, coefficients",
  "Table 2.3.2, load duration": "table 2.3.2, durée de charge",
  "3.5.2, long-term deflection": "3.5.2, flèche à long terme",

  "Appendix L, Table L3, root diameters": "annexe L, table L3, diamètres de noyau",
  "wood screw threads per inch": "filets par pouce des vis à bois",
  "lead holes, withdrawal": "avant-trous, arrachement",
  "NDS commentary": "NDS, commentaire",
  "lead holes before 1962": "avant-trous avant 1962",
  "lead holes, lateral load": "avant-trous, charge latérale",
  "metric wood screw diameters": "diamètres métriques des vis à bois",
  "gauges and millimetres": "calibres et millimètres",
  "digest of NDS": "abrégé de NDS",
  "wood screws": "vis à bois",
  "Table 12L, footnote": "table 12L, note",
  "NDS Commentary C12.1.5.7": "NDS, commentaire C12.1.5.7",
  "wood screws, wood side": "vis à bois, côté bois",
  "end grain factor": "coefficient de bois de bout",
  "issuhub.com document 4884": "issuhub.com, document 4884",
  "Eq 6.37, page 189": "éq. 6.37, page 189",
  "wet service factors of fasteners": "coefficients des fixations en milieu humide",
  "toe-nails": "clous en biais",
  "Appendix I, Table I1, bending yield strength": "annexe I, table I1, limites en flexion",
  "Appendix L, Table L2, lag screws": "annexe L, table L2, tire-fonds",
  "Appendix L, Table L4, nails": "annexe L, table L4, clous",
  "Table 11N": "table 11N",
  "Table 12K, lag screws": "table 12K, tire-fonds",
  "11.2.1, lag screws in end grain": "11.2.1, tire-fonds en bois de bout",
  "Table 11.3.3, wet service factors of connections":
    "table 11.3.3, coefficients des assemblages en milieu humide",

  "densities, loose and rammed earth": "masses volumiques, terre meuble et damée",
  "an engineer's advice, 2003": "avis d’un ingénieur, 2003",
  "HUD Residential Structural Design Guide": "HUD, guide de calcul des structures d’habitation",
  "Table 3.5, guide soils": "table 3.5, sols types",
  "densities of retail potting mix": "masses volumiques de terreaux du commerce",
  "densities of soils": "masses volumiques de terres",
  "Table C3, weights of materials": "table C3, poids des matériaux",
  "Jaky, 1 - sin(phi)": "Jaky, 1 - sin φ",
  "phi 30": "φ = 30°",
  "velocity pressure": "pression dynamique du vent",
  "building practice": "pratique du bâtiment",
  "margin against overturning": "sécurité au renversement",
  "a worked example on the web": "un exemple chiffré sur le web",
  "a builders' forum": "un forum de constructeurs",
  "a city's public records (Everett)": "les archives publiques d’une ville (Everett)",
  "a city's public records (Santa Ana)": "les archives publiques d’une ville (Santa Ana)",
  "garden pages": "pages de jardinage",
  "garden pages that follow extension tables":
    "pages de jardinage qui suivent des tables de vulgarisation agricole",
  "web pages": "pages web",

  "chapter 16, semitransparent penetrating stain": "chapitre 16, lasure semi-transparente",
  "landscape fabric, laying it": "géotextile, pose",
  "pond liner sizes": "tailles de bâches de bassin",
  "Iowa State, drainage of containers": "université d’État de l’Iowa, écoulement des bacs",
  "scope, furniture that tips": "champ d’application, meubles qui basculent",
  "Texas A&M EHT-062, vegetable gardening in containers": "Texas A&M EHT-062, potager en bacs",
  "University of Maryland Extension, growing vegetables in containers":
    "vulgarisation agricole de l’université du Maryland, légumes en bac",
  "rooting depths in open ground": "profondeurs de racines en pleine terre",

  "13.C, portable circular saws": "13.C, scies circulaires portatives",
  ripping: "délignage",
  "eye protection": "protection des yeux",
  "noise exposure": "exposition au bruit",
  "wood dust, 1 mg/m3": "poussière de bois, 1 mg/m³",
  "western redcedar dust, 0.5 mg/m3": "poussière de thuya géant, 0,5 mg/m³",
  "EPA consumer sheet on treated wood": "EPA, fiche du consommateur sur le bois traité",
  "extension service (Michigan), answer 178073": "vulgarisation agricole (Michigan), réponse 178073",
  "use categories UC3B and UC4A": "classes d’emploi UC3B et UC4A",
  "marks of treatment on pallets": "marques de traitement des palettes",
  "NIOSH lifting equation": "NIOSH, équation de levage",
  "load constant 51 lb": "constante de charge 51 lb",
  "load constant 51 lb (23 kg)": "constante de charge 51 lb (23 kg)",
  "small parts cylinder": "cylindre des petites pièces",
  "12.1.6, lead holes of nails": "12.1.6, avant-trous des clous",
  "12.1.3, holes of bolts": "12.1.3, trous des boulons",
  "Table R301.7, deflection": "table R301.7, flèche",
  "Table R301.7, walls with flexible finishes": "table R301.7, parois à parement souple",
  "metric wood screw threads": "filets métriques des vis à bois",
  "National Building Code of Canada": "Code national du bâtiment du Canada",
  "stability: tilted in all directions": "stabilité : incliné en tous sens",
  "9.8.8.6, what makes a guard easy to climb": "9.8.8.6, ce qui rend un garde-corps facile à escalader",
  "ASTM F1148, home playground equipment": "ASTM F1148, aires de jeux à domicile",
  "playground guidance of the CPSC, Handbook for Public Playground Safety":
    "CPSC, manuel de sécurité des aires de jeux publiques",
  "an open-source structural library (xc)": "une bibliothèque de calcul de structures libre (xc)",
  "an open-source set of lumber design values": "un jeu libre de valeurs de calcul du bois",
  "a screw seller's web page": fr`la page web d'un marchand de vis`,
  "a fastener seller's table": fr`la table d'un marchand de fixations`,
  "a flooring maker's web page": fr`la page web d'un fabricant de planchers`,
  "timber sellers' pages": "pages de marchands de bois",
  "issuu.com, Wood Handbook page 107": "issuu.com, Wood Handbook, page 107",
  "a garden web page (rainyside.com)": "une page web de jardinage (rainyside.com)",
  "a pond-keeping magazine": "une revue de bassins",
  "a safety web page": "une page web de sécurité",
  "apawood-europe.org, performance category": "apawood-europe.org, catégories de performance",
  "eurocode.us, section sizes": "eurocode.us, sections",
  "flat countersunk heads": "têtes plates fraisées",
  "field treatment of cuts and holes": "traitement sur place des coupes et des trous",
};

/** Standards, handbooks and sites that are cited by their own names. */
export const OWN_NAMES: readonly string[] = [
  ...[
    "PS 20-20",
    "PS 1",
    "CSA O141",
    "EN 336",
    "EN 1995-1-1",
    "10.4.5",
    "sizes.com",
    "FPL-RP-489",
    "AWC FAQ",
    "IEC 62368-1",
  ],
  ...[
    "NDS",
    "NDS 2005",
    "NDS 2015",
    "NDS 2018",
    "NDS 12.1.5",
    "NDS 12.1.5.6",
    "NDS 12.2-2",
    "Wood Handbook",
    "Wood Handbook FPL-GTR-190",
  ],
  ...["ASME B18.6.1", "ASME B18.6.1, D = 0.060 + 0.013 n", "ASCE 7", "engineeringtoolbox.com d_1349"],
  ...["EM 385-1-1", "WAC 296-155-370", "29 CFR 1910.95", "16 CFR 1261", "16 CFR 1501", "ANSI Z87.1"],
  ...[
    "NIOSH",
    "ACGIH",
    "AWPA",
    "AWPA M4",
    "AWPA U1",
    "ISPM 15",
    "ASTM D245",
    "IRC",
    "IBC",
    "R312.1.2",
    "1015.3",
  ],
  "APA Panel Design Specification, form D510",
];
