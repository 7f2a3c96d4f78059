/** What grammar/forms.ts says of every entry and clause, in French; clauses by their opening words. */
export interface FrenchEntry {
  readonly doc: string;
  readonly clauses: Readonly<Record<string, string>>;
}

const ON_HAND = "Ce qui est déjà là";
const SPECIES = "L’essence du bois.";

export const FORMS_IN_FRENCH: Readonly<Record<string, FrenchEntry>> = {
  plan: {
    doc: "Donne un nom au plan et dit ce qui vaut pour tout le plan.",
    clauses: {
      language: "La version du langage dans laquelle ce fichier est écrit.",
      units:
        "Comment les longueurs sont montrées\u00a0: en pouces ou en millimètres, et la plus fine graduation du mètre.",
      outdoors: "Il reste dehors, par tous les temps.",
      indoors: "Il reste à l’intérieur.",
      "near children": "Des enfants jouent à sa portée.",
      "near a guard": "Il se trouve à moins de 4 pi (1,2 m) d’un garde-corps ou d’un vide.",
      "anchored to": "Il est fixé par le haut et ne peut donc pas basculer\u00a0; à quoi, en toutes lettres.",
      space: "La place dont il dispose.",
      "way in": "La porte ou le portail le plus étroit sur le chemin.",
      "floor limit": "Ce que le sol peut porter, et qui l’a dit.",
      "foot limit": "La charge qu’un seul pied peut exercer sur le sol, et qui l’a dit.",
      "of which": "La part de la charge admise du sol que d’autres choses prennent déjà.",
      budget: "Ce que tous les achats peuvent coûter.",
      tax: "La taxe sur les ventes, ajoutée à la liste d’achats.",
      spare: "Les pièces à couper en plus, pour les nœuds et les erreurs.",
      kerf: "La largeur de bois que chaque trait de scie réduit en sciure.",
      make: "En combien d’exemplaires le tout est construit.",
      lumber:
        "Quelles sections le marchand vend\u00a0: dry (PS 20, raboté sec), green (PS 20, raboté vert) ou planed metric (raboté, métrique).",
      "written by": "Qui a écrit le plan.",
      licence: "Ce que d’autres ont le droit de faire du plan.",
    },
  },
  shop: {
    doc: "Nomme le fichier des bois, des vis et des prix\u00a0; chaque lecteur met le sien à la place.",
    clauses: {},
  },
  bring: { doc: "Apporte les mesures, les pièces et les ensembles d’un autre fichier de plan.", clauses: {} },
  enclosed: {
    doc: "Le texte d’un autre fichier, dans celui-ci : toutes les lignes d’ici à la prochaine ligne de ce genre, ou à la fin.",
    clauses: {},
  },
  measure: {
    doc: "Donne un nom à une mesure, ou à une longueur qui découle d’autres.",
    clauses: { "at least": "Le moins qu’elle puisse valoir.", "at most": "Le plus qu’elle puisse valoir." },
  },
  stock: {
    doc: "Une sorte de planche\u00a0: ce qui est vendu, et ce qui est déjà là.",
    clauses: {
      actual: "L’épaisseur et la largeur réelles, quand ce ne sont pas celles de la table.",
      measured: "L’épaisseur et la largeur mesurées sur le bois que l’on a.",
      species: SPECIES,
      moisture:
        "L’humidité du bois\u00a0: dry (sec), green (vert), ou un pourcentage comme 12\u00a0%, écrit 12%.",
      treated: "Bois traité sous pression.",
      untreated: "Bois que l’on sait non traité.",
      heartwood: "Tout en bois de cœur, sans aubier.",
      rough: "Non raboté.",
      painted: "Couvert de vieille peinture.",
      sold: "Les longueurs que le marchand vend, chacune avec son prix.",
      "on hand": `${ON_HAND}, avec les parties inutilisables.`,
      "end trim": "Ce que l’on coupe au bout d’une planche achetée pour la mettre d’équerre.",
      "use up": "Utiliser d’abord le bois que l’on a.",
      keep: "Garder le bois que l’on a pour ce qu’aucune planche vendue ne permet.",
    },
  },
  sheet: {
    doc: "Une sorte de panneau.",
    clauses: {
      thickness: "L’épaisseur réelle du panneau.",
      plywood: "Contreplaqué, par sa catégorie selon PS 1.",
      species: SPECIES,
      sold: "Les formats que le marchand vend, chacun avec son prix.",
      "on hand": "Les panneaux et les chutes qui sont déjà là.",
      "grain along": "Le fil de la face suit la longueur (ou la largeur) du panneau.",
      "no grain": "Les pièces peuvent être tournées dans les deux sens.",
    },
  },
  roll: {
    doc: "Bâche, toile ou grillage, achetés au mètre.",
    clauses: {
      width: "La largeur du rouleau.",
      price: "Ce qu’en coûte une longueur.",
      "food safe": "D’après le fabricant, il peut toucher la terre où l’on cultive de quoi manger.",
      "not food safe": "Il ne doit pas toucher la terre où l’on cultive de quoi manger.",
    },
  },
  fastener: {
    doc: "Une vis, un clou ou un boulon que le magasin vend.",
    clauses: {
      "": "Numéro ou diamètre, longueur, et ce que c’est\u00a0: screw (vis), nail (clou) ou bolt (boulon).",
      nail: "Un clou, par son diamètre et sa longueur.",
      bolt: "Un boulon, par son diamètre et sa longueur.",
      thread: "La longueur filetée.",
      coating:
        "Ce qui le garde de la rouille\u00a0: stainless (inox), galvanized (galvanisé), coated (revêtu) ou plain (nu).",
      "box of": "Comment il est vendu.",
      "on hand": "Combien il y en a déjà.",
    },
  },
  finish: {
    doc: "Huile, lasure ou peinture.",
    clauses: {
      covers: "La surface qu’elle couvre.",
      "": "Le nombre de couches.",
      dries: "Le temps de séchage d’une couche.",
      "tin of": "Comment elle est vendue.",
    },
  },
  fill: {
    doc: "Ce que l’on met dans un bac, et son poids.",
    clauses: {
      dry: "Son poids quand il est sec.",
      moist: "Son poids quand il est arrosé et égoutté.",
      saturated: "Son poids quand il ne peut pas retenir davantage d’eau.",
    },
  },
  tools: {
    doc: "Ce que le constructeur a pour couper.",
    clauses: {
      kerf: "La largeur du trait de scie.",
      "miters to": "Le plus grand angle que la scie coupe en onglet, par rapport à l’équerre.",
      "bevels to": "La plus grande inclinaison de la lame, par rapport à l’équerre.",
      rips: "Les planches peuvent être délignées.",
      "no ripping": "Les planches ne peuvent pas être délignées.",
      has: "Les autres outils que l’on a.",
    },
  },
  yard: {
    doc: "Où l’on achète le bois, et ce qui vaut pour tout ce qui y est acheté.",
    clauses: { tax: "La taxe sur les ventes qui y est due, pour les plans qui n’en disent pas." },
  },
  part: {
    doc: "Une pièce à couper\u00a0: combien, dans quoi, de quelle longueur.",
    clauses: {
      length: "Sa longueur\u00a0; `long point to long point` et autres peuvent suivre.",
      overall: "La longueur se prend de pointe à pointe.",
      "long point to long point": "La longueur se prend entre les pointes longues des onglets.",
      "short point to short point": "La longueur se prend entre les pointes courtes des onglets.",
      "long point to short point":
        "La longueur se prend le long d’un même chant, entre des bouts coupés de la même façon.",
      "cut to fit": "La laisser trop longue et la couper une fois le reste debout.",
      width: "La planche est délignée à cette largeur.",
      ends: "Les deux bouts\u00a0: mitered (en onglet, en travers de la largeur), beveled (en biseau, dans l’épaisseur) ou les deux, par rapport à l’équerre.",
      "left end": "La coupe du bout gauche.",
      "right end": "La coupe du bout droit.",
      "long points on": "Si les pointes longues sont sur un même chant ou sur des chants opposés.",
      notch:
        "Du bois enlevé à un bout ou à un chant\u00a0: d’abord le long de la planche, puis en profondeur.",
      dado: "Une rainure en travers\u00a0: d’abord le long de la planche, puis sa profondeur.",
      "in pairs": "La moitié des pièces est coupée en miroir.",
      "": "Combien de pièces gauches et de pièces droites.",
    },
  },
  assembly: {
    doc: "Des pièces placées une fois et utilisées plusieurs fois\u00a0; ses propres lignes `place` suivent, en retrait.",
    clauses: {},
  },
  ring: { doc: "Des pièces en onglet, dans l’ordre, qui doivent se refermer.", clauses: {} },
  box: {
    doc: "Des parois et un fond qui contiennent quelque chose.",
    clauses: {
      walls: "Les pièces qui retiennent le contenu.",
      bottom: "Les pièces sur lesquelles le contenu repose.",
      inside: "L’intérieur\u00a0: longueur, profondeur, hauteur.",
      "tapering to": "L’intérieur au fond, quand les côtés sont inclinés.",
      outline: "Le contour extérieur au sol.",
      "filled with": "Ce qu’il contient, et jusqu’où.",
      "carried by": "Ce sur quoi le fond repose.",
      "drains through": "L’eau s’écoule par les fentes entre les planches du fond.",
      "drains by": "L’eau s’écoule par des trous percés.",
      "no drain": "L’eau ne s’écoule pas.",
      grows: "Ce qui y est planté.",
      weighs: "Son propre poids, quand il ne se calcule pas d’après ses pièces.",
    },
  },
  place: {
    doc: "Met une pièce à sa place, par ce qu’elle touche.",
    clauses: {
      upright: "La longueur va vers le haut.",
      across: "La longueur va de gauche à droite.",
      "front to back": "La longueur va de l’avant à l’arrière.",
      flat: "La grande face est horizontale.",
      "on edge": "La grande face est debout.",
      "wide face": "De quel côté regarde la grande face d’une planche debout.",
      "long points":
        "Le côté où se trouve le long chant (de bouts en onglet) ou la longue face (de bouts en biseau).",
      leaning:
        "Penché par rapport à la verticale\u00a0; un cadre peut pencher tout autour, `out` (dehors) ou `in` (dedans).",
      sloping: "Penché par rapport à l’horizontale.",
      on: "Posé dessus.",
      under: "Touche le dessous.",
      "left of": "Touche le côté gauche.",
      "right of": "Touche le côté droit.",
      "in front of": "Touche l’avant.",
      behind: "Touche l’arrière.",
      "flush with": "À fleur de cette face.",
      between: "Touche les deux.",
      centered: "Au milieu, dans les directions qui restent à dire.",
      "at each corner of": "Quatre, un dans chaque coin, mesuré de bord extérieur à bord extérieur.",
      "diagonally on": "Une écharpe en travers, avec `from … to …`.",
      from: "De quel coin à quel coin va une diagonale.",
      "": 'À telle distance de cette face\u00a0; ou `1" in from left of T`, `1" past front of T`, `10" from left`, `14" up`, `2 high`, `3" apart`, `16" on center`.',
      tight: "Les répétitions se touchent.",
      "spread between": "Des répétitions à intervalles égaux entre les deux.",
      "spread over": "Des répétitions à intervalles égaux d’un côté à l’autre.",
      "with a gap at each end": "Une rangée répartie commence et finit par un intervalle.",
      "as many as fit": "Autant de répétitions que la place le permet.",
      "at most": "Le plus grand intervalle entre les répétitions.",
      mirrored: "Son image en miroir en plus.",
    },
  },
  fasten: {
    doc: "Assemble des pièces\u00a0: à travers la première, dans la seconde.",
    clauses: {
      "": 'Combien, de quoi, et où\u00a0: at each crossing, at each end, at 8 crossings, along it, in all\u00a0; ou `6" on center`.',
      pilot: "Le trou percé pour le filetage.",
      clearance: "Le trou percé dans la première pièce pour le fût.",
      angled: "Vissé en biais\u00a0; l’angle se compte depuis la perpendiculaire à la face.",
    },
  },
  glue: { doc: "Colle des pièces ensemble.", clauses: { with: "Quelle colle." } },
  coat: {
    doc: "Quelles pièces reçoivent une finition, et laquelle.",
    clauses: { "": "Le nombre de couches." },
  },
  line: {
    doc: "Quel bac est doublé, et de quoi.",
    clauses: {
      fold: "Ce qui est rabattu sur le bord.",
      overlap: "De combien deux largeurs se recouvrent.",
    },
  },
  load: { doc: "Un poids que quelque chose porte.", clauses: {} },
  must: { doc: "Votre propre règle, et pourquoi.", clauses: {} },
  accept: {
    doc: "Admet un avertissement ou un danger\u00a0; la raison est imprimée sur la feuille.",
    clauses: {},
  },
  note: { doc: "Une ligne pour qui lit la feuille.", clauses: {} },
  built: {
    doc: "Qu’il a été construit, quand et par qui\u00a0; suivent ce qui est venu autrement et l’usure constatée. Rien du plan n’en est changé.",
    clauses: {
      measured: "Une mesure, ou la longueur (`length of`) d’une pièce, telle qu’elle est venue.",
      used: "Une planche ou un panneau qui a pris la place d’un autre.",
      changed: "Ce qui a été fait autrement par ailleurs, en mots.",
      wear: "L’usure constatée, et quand.",
    },
  },
  step: {
    doc: "Une étape du travail, dans l’ordre.",
    clauses: {
      uses: "Les pièces que l’on pose.",
      coats: "Les pièces qui reçoivent la finition.",
      lines: "Le bac que l’on double.",
      takes: "La durée du travail.",
      "then wait": "L’attente qui suit.",
      wait: "L’attente qui suit.",
      "": "Combien de personnes il faut.",
    },
  },
};
