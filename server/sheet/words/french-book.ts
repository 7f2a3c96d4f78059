/** Ce que dit un recueil de plans. */
import type { ENGLISH_BOOK } from "./english-book";

const CLASSES = {
  error: ["erreur", "erreurs"],
  hazard: ["danger", "dangers"],
  warning: ["avertissement", "avertissements"],
  hint: ["conseil", "conseils"],
} as const;

export const FRENCH_BOOK: typeof ENGLISH_BOOK = {
  title: "Plans",
  under: (plans) => (plans < 2 ? `${plans} plan` : `${plans} plans`),
  care: "Sawbuck trouve les erreurs qu’il sait nommer et dit ce qu’il n’a pas regardé ; il n’approuve jamais un plan. Les poids sont des estimations.",
  columns: {
    plan: "Plan",
    about: "Ce que c’est",
    size: "Taille",
    pieces: "Pièces",
    boards: "Planches à acheter",
    cost: "Coût",
    weight: "Poids, sec",
    problems: "Problèmes ouverts",
    notChecked: "Non regardé",
  },
  headings: {
    figures: "En chiffres",
    madeOf: "Pièces",
    builtWith: "Fait avec",
    accepted: "Dangers acceptés, et pourquoi",
  },
  wide: (width, depth, height) => `${width} de large, ${depth} de profondeur, ${height} de haut`,
  andMore: (cost) => `${cost} et plus`,
  count: (kind, n) => `${n} ${CLASSES[kind][n < 2 ? 0 : 1]}`,
  none: "aucun qu’il sache nommer",
  things: (n) => (n < 2 ? `${n} point` : `${n} points`),
  stock: "Planches et panneaux",
  fasteners: "Fixations",
  tools: "Outils",
  of: (count, what) => `${count} ${what}`,
};
