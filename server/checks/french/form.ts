/** What is said in French about the form of the text. */
import type { SYNTAX_TEMPLATES } from "../../../grammar/messages";
import { counted, type Template } from "../telling";

/** The titles of cures, which every code may use. */
const CURES = {
  write: "Écrivez « {text} »",
  insert: "Mettez « {text} » devant « {before} »",
  append: "Mettez « {text} » après « {after} »",
  "leave-out": "Enlevez « {text} »",
  indent: "Commencez la ligne par deux espaces",
  outdent: "Commencez la ligne tout à gauche",
} as const;

type Form = {
  readonly [C in keyof typeof SYNTAX_TEMPLATES]: Readonly<
    Record<keyof (typeof SYNTAX_TEMPLATES)[C], Template>
  >;
};

export const FORM: Form = {
  "unknown-entry": {
    ...CURES,
    unknown:
      "Aucune ligne ne commence par « {word} ». Une ligne commence par un mot qui dit ce qu’elle est, comme {words}.",
    near: "Aucune ligne ne commence par « {word} ». Vouliez-vous dire « {near} » ?",
    "small-letters": "« {found} » s’écrit en minuscules : {better}.",
    "mark-opens":
      "Une ligne commence par un mot qui dit ce qu’elle est, comme {words}, et non par « {word} ».",
    "word-missing":
      "Aucune ligne ne commence par « {word} ». Si c’est une ligne « {near} », écrivez « {near} {word} ».",
    "goes-on":
      "« {word} » continue la ligne « {entry} » du dessus : sa ligne commence donc par deux espaces ; rien n’y a été lu.",
    "note-form": "Une note pour vous-même commence par « # » et une espace.",
  },
  "not-understood": {
    ...CURES,
    "clause-near": "« {word} » ne fait pas partie d’une ligne « {entry} ». Vouliez-vous dire « {near} » ?",
    "clause-begun": "« {word} » se poursuit en {words}, et non en « {found} ».",
    "clause-unknown":
      "« {word} » ne fait pas partie d’une ligne « {entry} ». Elle peut continuer par {words}.",
    "spread-form":
      "Pour répartir une rangée à intervalles égaux, dites entre quoi ou sur quoi : « spread between left legs and right legs », ou « spread over posts ».",
    "assembly-line":
      "Les lignes d’un sous-ensemble commencent par « place », « fasten » ou « glue », et non par « {word} ». Tout le reste se met sur une ligne à part, tout à gauche.",
    "clause-none":
      "Dans une ligne « {entry} », rien ne vient après une virgule, or voici « {word} ». Écrivez par exemple : {example}",
    "word-near": "« {found} » ne va pas ici. Vouliez-vous dire « {near} » ?",
    "small-letters": "« {found} » s’écrit en minuscules : {better}.",
    "more-wanted": "Il manque quelque chose après « {after} ». Écrivez par exemple : {example}",
    "too-much": "« {found} » ne va pas ici. Écrivez par exemple : {example}",
    "comma-missing": "Il manque une virgule avant « {found} » : c’est elle qui ouvre ce qu’on dit ensuite.",
    "word-extra": "« {found} » est de trop ici.",
    "comma-extra": "Il ne faut pas de virgule avant « {found} ».",
    "comma-last": "La ligne finit par une virgule et rien ne la suit.",
    "and-joins": "Une virgule ouvre ce qu’on dit ensuite ; c’est « and » qui joint des noms : {better}.",
    "of-missing": "Il manque « of » avant « {found} » : une pièce dit dans quoi elle est coupée.",
    "equals-missing": "Il manque « = » avant « {found} ».",
    "length-missing": "Rien ne dit ce que mesure « {found} ». Est-ce la longueur ?",
    "close-missing": "Une « ( » est ouverte et n’est pas refermée.",
    "section-size":
      "« {found} » est une dimension, mais une planche va sous le nom auquel elle se vend : {better}, qui est en réalité plus mince et plus étroite. Pour une planche d’exactement cette dimension, écrivez une ligne « stock » avec « actual {size} ».",
    "section-metric":
      "« {found} » est une dimension, mais une planche va sous le nom auquel elle se vend : {better}. Pour toute autre planche, écrivez une ligne « stock » avec « actual {size} ».",
    "section-own":
      "« {found} » est une dimension, mais une planche va sous un nom. Écrivez une ligne comme « stock my-board, actual {found} », et employez ce nom ici.",
    times: "« {found} » se trouve entre deux dimensions. Pour multiplier, écrivez « * ».",
    "minus-glued":
      "« {found} » n’est pas une longueur : un trait d’union fait partie du nom. Pour soustraire, mettez une espace de chaque côté : {better}.",
  },
  "stray-character": {
    ...CURES,
    stray: "« {found} » ne veut rien dire ici. Écrivez par exemple : {example}",
    "mark-extra": "« {found} » est de trop ici.",
    "semicolon-comma": "« {found} » ne veut rien dire ici. C’est une virgule qui ouvre ce qu’on dit ensuite.",
    "equals-wanted": "« {found} » ne veut rien dire ici. Écrivez « = » entre le nom et sa valeur.",
    "lone-mark": '« {found} » n’a pas de nombre devant. Les longueurs s’écrivent comme 36" ou 6\' 2-1/2".',
    "mark-before": "Le signe des pouces se met derrière son nombre : {better}.",
    "marks-around": "Rien ne se met entre guillemets ; ce signe veut dire pouces. Écrivez {better}.",
    "two-marks": "Deux signes de pied ne font pas un signe de pouce. Écrivez {better}.",
    "note-blank": "Une note pour vous-même commence par « # » et une espace.",
  },
  "bad-name": {
    ...CURES,
    "name-form":
      "« {found} » ne peut pas être un nom. Les noms sont faits de minuscules, de chiffres et de traits d’union, et commencent par une lettre, comme {better}.",
    "small-letters": "« {found} » s’écrit en minuscules : {better}.",
    "name-blank": "Un nom tient en un mot : « {found} » s’écrit donc {better}.",
    "name-reserved": "« because » ouvre une raison : rien ne peut donc s’appeler ainsi.",
  },
  "bad-date": {
    ...CURES,
    order: "Une date s’écrit avec l’année d’abord, puis le mois, puis le jour : {better}.",
    either:
      "« {found} » peut être deux jours. Une date s’écrit avec l’année d’abord, puis le mois, puis le jour : {better} ou {other}.",
    "no-month":
      "« {found} » n’est pas une date : une année a 12 mois. L’année vient d’abord, puis le mois, puis le jour.",
    "no-day": "« {found} » n’est pas une date : ce mois-là a {days} jours.",
    missing: "Après « {after} » vient la date, avec l’année d’abord, puis le mois, puis le jour : {example}",
  },
  "bad-number": {
    ...CURES,
    "comma-number":
      "« {found} » a une virgule dans le nombre, et une virgule ouvre ce qu’on dit ensuite. Écrivez {better}.",
    "blank-unit": "« {found} » a une espace devant son unité. Écrivez {better}.",
    "mixed-number": "« {found} » est une seule longueur. Écrivez {better}.",
    "money-behind": "La monnaie se met devant le nombre : {better}.",
    "inches-unmarked":
      "« {found} » ne dit pas ce qu’est son dernier nombre. Si ce sont des pouces, écrivez {better}.",
    "price-unmarked": "« {found} » est sans unité. Si c’est un prix, écrivez {better}.",
    "millimetres-unmarked":
      "« {found} » ne dit pas ce qu’est son dernier nombre. Si ce sont des millimètres, écrivez {better}.",
    "gauge-alone":
      '« {found} » dit la grosseur de la vis, et non sa longueur. Écrivez par exemple : {found} x 1-1/4"',
  },
  "indented-alone": {
    ...CURES,
    indented:
      "Cette ligne est en retrait : elle devrait continuer une ligne du dessus, mais il n’y en a pas.",
    "indented-entry":
      "Cette ligne est en retrait : elle continue donc la ligne « {entry} » du dessus ; mais « {word} » ouvre une ligne à part.",
  },
  "merge-conflict": {
    named:
      "Deux versions des mêmes lignes se trouvent ici, et l’une doit partir. D’ici là, le plan est lu avec la première, « {called} ».",
    unnamed:
      "Deux versions des mêmes lignes se trouvent ici, et l’une doit partir. D’ici là, le plan est lu avec la première.",
    "keep-first": "Garder la première version et enlever l’autre",
  },
  "not-text": {
    "not-text":
      "Ce fichier n’est pas du texte : il a un octet de valeur 0 à la ligne {line}. Rien n’y a été lu.",
  },
  "too-big": {
    "too-big": counted(
      "size",
      "Ce fichier a {size} million de signes ; Sawbuck en lit jusqu’à {limit} million. Rien n’y a été lu.",
      "Ce fichier a {size} millions de signes ; Sawbuck en lit jusqu’à {limit} million. Rien n’y a été lu.",
    ),
  },
  "too-deep": {
    "too-deep":
      "Il y a ici plus de {limit} parenthèses les unes dans les autres. Calculez-en une partie dans une ligne « measure », et employez son nom.",
    "sum-too-long":
      "Plus de {limit} valeurs sont calculées ensemble ici. Calculez-en une partie dans une ligne « measure », et employez son nom.",
  },
};
