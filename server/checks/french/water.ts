/** What is said in French about water, and about wood that swells. */
import { counted, type Templates } from "../telling";

export const WATER: Readonly<Record<string, Templates>> = {
  "gap-closes": {
    tight:
      "{n} planches ({parts}) se touchent entre {first} et {last}, et gonflent ensemble de {swelling} {wet} : elles se bombent, ou écartent ce qui les tient.",
    pushes:
      "{n} planches ({parts}) ont {room} de jeu entre {first} et {last}, et gonflent ensemble de {swelling} {wet} : elles se bombent, ou écartent ce qui les tient.",
    drains:
      "L’eau de {box} sort par des jours de {gap}, mais chaque planche du fond gonfle de {swelling} {wet} : les jours se ferment, et l’eau reste.",
    closes:
      "Les jours de {gap} dans cette rangée de {n} planches ({parts}) se ferment {wet}, quand chaque planche gonfle de {swelling}.",
    end: "{piece} tient la rangée à un bout.",
    moisture: "On prend les planches à {from} d’humidité quand on les pose, et à {to} {wet}.",
    grain:
      "{wood} se rétracte de {percent} en travers d’une planche sur dosse, de {below} d’humidité à l’anhydre, et regonfle en proportion ; une planche sur quartier bouge moins.",
    member: "{wood} désigne plusieurs bois : on prend celui des tables qui bouge le plus, {member}.",
    unsaid: "Le plan ne dit pas de quel bois il s’agit : on prend {wood}.",
    gap: "Laissez des jours de {gap} : {left} restent ouverts au plus humide.",
    fewer:
      "Ôtez une planche : des jours égaux de {gap} laissent {room} de jeu aux {count} autres, qui gonflent ensemble de {swelling}.",
    narrower:
      "Délignez les {count} planches à {width} : des jours égaux de {gap} leur laissent {room} de jeu, et elles gonflent ensemble de {swelling}.",
    wider: "Élargissez de {more} la place entre {first} et {last}, et répartissez-la entre les planches.",
  },
  "no-drain": {
    said: "{box} est rempli de {fill} et n’a pas de sortie d’eau : {water} y reste, le bac s’alourdit et pourrit.",
    liner:
      "{roll}, dans {box}, retient l’eau, et rien ne dit par où le bac se vide : la doublure n’est donc ouverte nulle part, et {water} y reste.",
    tight:
      "Le plan ne dit pas par où l’eau sort de {box}, et son fond ne laisse aucun jour de {least} : {water} y reste, le bac s’alourdit et pourrit.",
    fewer:
      "Ôtez une planche : {count} dans la même place laissent des jours de {gap}, par où l’eau sort même quand les planches sont mouillées.",
    narrower:
      "Délignez les {count} planches à {width} et répartissez la place : des jours de {gap} laissent sortir l’eau même quand les planches sont mouillées.",
    holes: "Percez des trous : écrivez « {clause} ».",
    gaps: "Écrivez « drains through the gaps » : la feuille dit alors où ouvrir la doublure.",
  },
  "water-stays": {
    tight:
      "L’eau de {box} doit sortir par les jours, mais les planches du fond se touchent : le bois mouillé gonfle, et rien ne passe.",
    narrow:
      "L’eau de {box} doit sortir par les jours, mais le plus large du fond fait {gap} : au-dessous de {least} ils se ferment en gonflant, et l’eau reste.",
    few: counted(
      "n",
      "{box} se vide par {n} trou : il en faut au moins quatre, et un tous les {apart} d’un long fond, ici {needed}.",
      "{box} se vide par {n} trous : il en faut au moins quatre, et un tous les {apart} d’un long fond, ici {needed}.",
    ),
    small:
      "Les trous d’écoulement de {box} font {size} : au-dessous de {least} la terre les bouche, et l’eau reste.",
    floor:
      "Le fond de {box} est à plat sur le sol, qui ferme {drain} : l’eau ne peut pas sortir par-dessous.",
    flat: "{piece} est du contreplaqué de niveau sous la pluie{more} : l’eau y reste, et entre par ses chants.",
    holes: "Écrivez « {clause} ».",
    fewer:
      "Ôtez une planche : {count} dans la même place laissent des jours de {gap}, par où l’eau sort même quand les planches sont mouillées.",
    narrower:
      "Délignez les {count} planches à {width} et répartissez la place : des jours de {gap} laissent sortir l’eau même quand les planches sont mouillées.",
    feet: "Posez le bac sur deux tasseaux ou sur des pieds, pour que l’eau s’écoule par-dessous.",
    bare: "S’il est sur la terre nue, dites-le : « accept water-stays on {box} because it stands on bare earth ».",
    slope:
      "Donnez-lui {fall} de pente sur ses {across}, soit 1 pour 50, ou mettez à sa place des planches avec des jours.",
  },
};
