/** What is said in French about the steps of the work. */
import { counted, type Templates } from "../telling";

export const STEPS: Readonly<Record<string, Templates>> = {
  "cannot-reach": {
    brush:
      "Entre {piece} et {other}, il y a {gap} au moment d’enduire ces pièces{more}, et un pinceau demande {needs}.",
    driver:
      "{Screw} dans {into}{more} se pose à {depth} sous le bord de {box}, déjà fermé à ce moment : un bras avec une visseuse va jusqu’à {reach}.",
    closed: "Ses parois et son fond sont là à partir de cette étape.",
    there: "Les deux sont aussi près à partir de cette étape.",
    move: "Mettez cette étape avant {first}",
    before: "Enduisez ces pièces avant {first}, ou laissez plus de vide entre elles.",
    earlier: "Vissez avant que {closed} ferme le bac.",
  },
  "finish-after-cover": {
    covered:
      "Sur {pieces} à enduire ici, il y a déjà {area} de bois caché, par exemple là où {by} porte contre {piece} : dehors, ce bois reste nu.",
    first: "C’est ici que la première partie en est couverte.",
    move: "Mettez cette étape avant {first}",
    before: "Enduisez ces pièces avant {first}.",
  },
  "heavy-to-lift": {
    piece: "{what} pèse {weight}, à soulever ici par {people} : on compte au plus {limit} pour {each}.",
    unit: "Ce qu’on a assemblé avant, {count} pièces dont {what}, pèse {weight}, à soulever ici par {people} : on compte au plus {limit} pour {each}.",
    assembly:
      "Le sous-ensemble dont {what} fait partie pèse {weight}, à mettre en place ici par {people} : on compte au plus {limit} pour {each}.",
    alone: "L’étape ne dit pas combien de personnes sont là : on en compte une.",
    wood: "Seul le bois est pesé : les vis, la finition et l’eau s’y ajoutent.",
    write: "Écrivez « {people} people »",
    parts: "Assemblez l’ouvrage là où il restera, en parties plus légères, ou levez-le avec un palan.",
  },
  "never-assembled": {
    some: counted(
      "count",
      "{count} des {all} pièces « {part} » n’est employée à aucune étape.",
      "{count} des {all} pièces « {part} » ne sont employées à aucune étape.",
    ),
    all: "Aucune étape n’emploie « {part} ».",
    prose: "Les étapes ne disent pas ce qu’elles emploient : on ne sait donc pas ce qui s’ajoute quand.",
    none: "Le plan ne dit pas dans quel ordre ses {count} pièces s’assemblent.",
    there: "Ce à quoi cela s’assemble est en place à cette étape.",
    add: "Employez aussi {part} à {step}",
    step: "Employez {part} à l’étape où cela s’ajoute.",
    name: "Écrivez sous chaque étape ce qui s’y ajoute : « uses {names} ».",
    propose: "Écrivez à la fin un ordre de montage.",
  },
  "step-uses-later": {
    early:
      "On emploie ici « {thing} », mais tout ce à quoi cela s’assemble vient plus tard : {needs} n’arrive qu’à {later}, et jusque-là rien ne retient « {thing} ».",
    lined:
      "On pose ici la doublure de {box}, mais {needs} n’arrive qu’à {later} : le bac est donc encore ouvert.",
    taken:
      "« {thing} » fait partie de {ring}, que {before} a déjà employé : il n’en reste rien pour cette étape.",
    there: "{piece} arrive à cette étape.",
    used: "C’est cette étape qui l’emploie.",
    move: "Mettez cette étape après {later}",
    line: "Ne posez la doublure de {box} que lorsque {needs} est là, à {later} ou après.",
    give: "Employez plutôt {thing} à {later}",
    wait: "N’employez {thing} que là où {needs} est déjà, ou amenez {needs} d’abord.",
    leave: "Enlevez {thing} d’ici, ou employez une à une les pièces de {ring}.",
  },
  "wait-missing": {
    coat: "{finish} sur « {thing} » demande {needs} de séchage{coats}, et {later} y touche {has}.",
    glue: "{piece} ne tient ici que par la colle, et {later} y travaille {has} : la colle demande au moins {needs}.",
    handled: "On y touche à cette étape.",
    wait: "Écrivez « {to} »",
  },
};
