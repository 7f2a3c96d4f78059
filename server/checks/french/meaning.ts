/** What is said in French about names, counts and values. */
import { counted, type Templates } from "../telling";

export const MEANING: Readonly<Record<string, Templates>> = {
  "cannot-accept": {
    near: "Aucun problème ne s’appelle « {code} ». Vouliez-vous dire « {near} » ?",
    unknown: "Aucun problème ne s’appelle « {code} ».",
    error: "« {code} » est une erreur et ne peut pas s’accepter : ainsi, cela ne pourrait pas se construire.",
    reason: "Dites pourquoi : « accept {code} … because … »",
    gone: "Rien ne signale « {code} »{on} : il n’y a donc rien à accepter.",
    swap: "Écrivez « {to} »",
    out: "Enlevez la ligne",
  },
  "count-differs": {
    ring: counted(
      "rings",
      "La ligne dit {stated} de « {part} », mais {rings} en prend {wanted}.",
      "La ligne dit {stated} de « {part} », mais {rings} en prennent {wanted}.",
    ),
    hands: "La ligne dit {stated} de « {part} », mais {left} à gauche et {right} à droite font {sum}.",
    pairs: "« {part} » se coupe par paires, et {stated} n’est pas un nombre pair.",
    use: "C’est compté ici.",
    write: "Écrivez {to}",
  },
  "count-missing": {
    missing:
      "Combien de « {name} » ? Sa ligne ne le dit pas, et rien d’autre ne les compte. Écrivez par exemple : {example}",
  },
  "cut-never-placed": {
    more: counted(
      "placed",
      "On coupe {stated} « {part} », mais {placed} seulement trouve une place.",
      "On coupe {stated} « {part} », mais {placed} seulement trouvent une place.",
    ),
    none: counted(
      "stated",
      "On coupe {stated} « {part} », mais aucune ligne ne dit où cela se place.",
      "On coupe {stated} « {part} », mais aucune ligne ne les place.",
    ),
    whole: "On assemble « {name} », mais aucune ligne ne dit où cela se place.",
    write: "Écrivez {to}",
    drop: "Enlevez le nombre, pour que ce soient les places qui comptent",
  },
  "declared-twice": {
    same: "« {name} » est déjà {kind} : cette deuxième ligne est laissée de côté.",
    elsewhere:
      "« {name} » est aussi {kind} dans {file} : c’est cette ligne-ci qui compte, et l’autre est laissée de côté.",
    first: "Le premier « {name} » est ici.",
    second: "Il est déclaré une deuxième fois ici.",
    enclosed: "{path} est déjà inclus : ce deuxième texte est laissé de côté.",
  },
  "file-not-found": { missing: "{path} n’a pas été lu : {why}." },
  "impossible-value": {
    "by zero": "« {here} » divise par zéro, et il n’en sort rien.",
    "no value": "« {here} » n’a pas de valeur.",
    nothing: "Il n’en resterait rien : pour {what}, on trouve {found}.",
    "less than nothing": "Il en resterait moins que rien : pour {what}, on trouve {found}.",
    angle: "Une coupe d’about va de 0° à moins de 90° hors d’équerre ; celle-ci est à {found}.",
    "whole number": "Pour {what}, il faut un nombre entier à partir de 1, et non {found}.",
    "not a number": "« {what} » est un nom et non une valeur : on ne peut pas calculer avec.",
    "too long a chain":
      "Trop de valeurs s’appuient ici les unes sur les autres. Donnez à l’une d’elles une valeur qui ne dépende de rien.",
    "too large": "« {here} » donne un nombre bien trop grand.",
    "too few values": "Les valeurs pour « {what} » devraient être au nombre de {most}, et non de {found}.",
    overfilled:
      "{what} serait rempli plus haut que son bord : {found}, alors que {most} est le plus possible.",
    underfilled: "{what} serait rempli sur {found}, ce qui est moins que rien.",
    "underfilled-rim":
      "{what} serait rempli jusqu’à {found} sous son bord, mais n’a que {most} de profondeur.",
    "no inside": "{what} n’a pas d’intérieur de cette taille.",
    uncuttable: "{what} ne peut pas se couper avec ces abouts.",
    "too deep":
      "Cette entaille (« {what} ») entre de {found}, et la pièce n’a là que {most} : elle serait coupée en deux.",
    "too far along":
      "Cette entaille (« {what} ») finit à {found} le long de la pièce, qui n’a que {most} de long.",
    "too long together":
      "Ces deux entailles (« {what} ») prennent ensemble {found} de la longueur, qui n’est que de {most}.",
    lean: "Ce qu’on place penche vers la gauche, la droite, l’avant ou l’arrière, et un cadre aussi vers l’intérieur ou l’extérieur ; « {here} » ne dit rien de cela.",
    "wide face":
      "Le plat d’une planche debout regarde vers l’avant, l’arrière, la gauche ou la droite, jamais vers « {what} ».",
  },
  "in-a-circle": {
    values:
      "« {name} » ramène à son point de départ : {path}. Il faut à l’un d’eux une valeur qui ne dépende de rien.",
    places:
      "Ces lignes s’appuient les unes sur les autres, en rond : {path}. L’une d’elles doit s’appuyer sur autre chose.",
    assemblies:
      "« {name} » se trouverait à l’intérieur de soi-même : {path}. L’une de ces lignes doit placer autre chose.",
    files: "Ce fichier ramène à lui-même : {path}. Enlevez l’une des lignes « bring ».",
    step: "« {name} » est demandé ici.",
    "step-place": "Cette ligne demande {name}.",
  },
  "limit-without-source": {
    floor:
      "Qui dit que le plancher porte {value} ? Écrivez-le après la limite, comme « by l’ingénieur du bâtiment ».",
    foot: "Qui dit qu’un seul pied peut presser le plancher de {value} ? Écrivez-le après la limite, comme « by l’ingénieur du bâtiment ».",
    swallowed:
      "Le nom de qui l’a dit va jusqu’au bout de la ligne : « {text} » est donc pris pour une partie de ce nom, et la limite reste de {value} en entier.",
    "own-line": "Mettez-le sur une ligne à part",
  },
  "measure-out-of-bounds": {
    outside: "« {name} » vaut {value}, mais doit valoir {comparison} {bound}.",
    bound: "La borne est ici.",
  },
  "missing-measure": {
    missing: "« {name} » n’a pas encore de valeur. Mesurez, et écrivez la valeur après un signe =.",
  },
  "must-broken": {
    reason: "« {here} » doit valoir {comparison} {right} ({because}) ; cela vaut {left}.",
    bare: "« {here} » doit valoir {comparison} {right} ; cela vaut {left}.",
  },
  "never-used": {
    unused: "« {name} » est {kind} dont rien ne se sert dans ce plan.",
    out: "Enlevez sa ligne",
  },
  "newer-language": {
    newer: "Ce plan est écrit dans la version {found} du langage, mais ce Sawbuck lit la version {read}.",
  },
  "placed-never-cut": {
    short: "« {part} » se trouve à {placed} endroits, mais on n’en coupe que {stated}.",
    write: "Écrivez {to}",
    drop: "Enlevez le nombre, pour que ce soient les places qui comptent",
  },
  "built-unclear": {
    "wear-early": "Cette usure a été vue le {wear}, avant le jour de la construction, le {built}.",
    "no-length":
      "La ligne de « {name} » ne dit pas de longueur : elle découle d’autre chose, qui est ce qu’il faut relever.",
    "not-measured":
      "« {name} » ne peut pas se relever ici : c’est une mesure par son nom, ou « length of » une pièce.",
    "not-used": "Rien dans ce plan n’est fait en « {name} » : rien n’a donc pu en prendre la place.",
    same: "« {name} » est ce que dit déjà le plan.",
    leave: "Enlevez « {text} »",
  },
  "said-twice": {
    twice: "« {what} » est dit deux fois ; c’est la première fois qui compte.",
    first: "C’est dit une première fois ici.",
    leave: "Enlevez « {text} »",
  },
  "size-missing": {
    length: "Quelle est la longueur de « {name} » ? Sa ligne n’en dit aucune.",
    width: "Quelle est la largeur de « {name} » ? Une pièce tirée d’un panneau dit sa largeur.",
    thickness: "Quelle est l’épaisseur de « {name} » ? Sa ligne ne dit ni « thickness » ni « plywood ».",
    board:
      "Quelles sont l’épaisseur et la largeur de « {name} » ? Sa ligne dit de quoi on le tire, ou « actual » avec les deux.",
    inside: "L’intérieur de « {name} » demande trois côtés : largeur, profondeur et hauteur.",
  },
  "too-many": {
    many: "{What} : {found}, c’est trop ; on en calcule au plus {limit}.",
    files: "Ce plan apporte plus de fichiers que les {limit} qui sont lus ; celui-ci a été laissé de côté.",
  },
  "unit-mismatch": {
    add: "{Left} et {right} ne peuvent pas s’additionner.",
    subtract: "On ne peut pas ôter {right} d’{left}.",
    multiply: "{Left} et {right} ne peuvent pas se multiplier.",
    divide: "{Left} ne peut pas se diviser par {right}.",
    compare: "{Left} et {right} ne peuvent pas se comparer.",
    round: "{Left} ne peut pas s’arrondir à {right}.",
    function:
      "« {here} » ne peut pas se calculer à partir d’{left} : « sin », « cos » et « tan » prennent un angle, comme 30°, et « asin », « acos » et « atan » un nombre sans unité.",
    "put together": "{Left} et {right} ne vont pas ensemble ici.",
    meant: "On ne peut pas ôter {right} d’{left}. Vouliez-vous dire {meant}, sans espaces ?",
    wanted: "Il faut ici {what}, et non {found}.",
    "no-kind": "Il faut ici {what}, et « {text} » donne une valeur d’aucun genre courant.",
    bare: "Il faut ici {what}, mais {text} est sans unité. Est-ce en pouces ou en millimètres ?",
    "bare-measure":
      "« {name} » sert de longueur, mais {text} est sans unité. Est-ce en pouces ou en millimètres ?",
    use: "Cela sert ici de longueur.",
    write: "Écrivez {to}",
  },
  "unknown-name": {
    near: "Rien ne s’appelle « {name} » ici. Vouliez-vous dire {near} ?",
    unknown: "Rien ne s’appelle « {name} » ici ; il faut {wants}.",
    which:
      "« {name} » ne dit pas lesquelles. Écrivez leur taille, comme {size}, ou le nom d’une ligne « fastener ».",
    minus:
      "Rien ne s’appelle « {name} » ici : un trait d’union fait partie du nom. Pour soustraire, mettez une espace de chaque côté du moins : {better}.",
    "wrong-kind": "« {name} » est {found}, mais il faut ici {wants}.",
    swap: "Écrivez « {to} »",
    fits: "Écrivez « {to} », qui convient à cet assemblage",
    "same-here":
      "Votre atelier n’a pas de « {name} ». Dans le fichier d’atelier du plan, c’est {what}. Est-ce {near} chez vous ?",
    "near-here":
      "Votre atelier n’a pas de « {name} ». Dans le fichier d’atelier du plan, c’est {what}. Rien chez vous n’est exactement cela ; le plus proche est {near}.",
    "none-here":
      "Votre atelier n’a pas de « {name} ». Dans le fichier d’atelier du plan, c’est {what}. Rien chez vous n’a cette dimension.",
    here: "Écrivez « {to} » partout où est écrit « {name} »",
    instead: "Écrivez « {name} » partout où est écrit « {old} », malgré la différence : {differs}",
    "own-line": "Donnez à « {name} » sa ligne dans votre propre fichier d’atelier",
  },
  "unknown-section": {
    near: "Aucun marchand ne vend de planche appelée {name}. De nom voisin, il y a {near}.",
    unknown:
      "Aucun marchand ne vend de planche appelée {name}. Dites sa dimension réelle sur une ligne « stock ».",
    swap: "Écrivez {to}",
  },
};
