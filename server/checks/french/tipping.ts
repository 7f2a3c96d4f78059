/** What is said in French about things that tip over, and of room for roots. */
import type { Templates } from "../telling";

export const TIPPING: Readonly<Record<string, Templates>> = {
  "tips-over": {
    push: "Une poussée de {force}, à {height} au-dessus du sol, renverse l’ouvrage {way} autour de {foot}, {state} ; il doit y résister à {wanted}, avec un coefficient de {margin}, ou glisser d’abord.",
    seat: "{force} au bord de {on}, à {over} en dehors des pieds, renversent l’ouvrage {way} autour de {foot}, {state} ; une personne de {wanted} peut s’y asseoir ou y monter, à quoi il faut résister avec un coefficient de {margin}.",
    load: "{force} sur {on}, à {over} en dehors des pieds, renversent l’ouvrage {way} autour de {foot}, {state} ; le plan y met {wanted}, à quoi il faut résister avec un coefficient de {margin}.",
    wind: "Une rafale de {mph} mph y exerce {wanted}, et {force} à cet endroit renversent l’ouvrage {way} autour de {foot}, {state} ; il doit résister à la rafale avec un coefficient de {margin}.",
    itself:
      "L’ouvrage se renverse {way} autour de {foot} de lui-même, {state} : son milieu est à {over} en dehors des pieds.",
    "itself-edge":
      "L’ouvrage se renverse {way} autour de {foot} de lui-même, {state} : son milieu est juste au-dessus du bord des pieds.",
    leaned:
      "Penché de {lean} {way}, comme il peut l’être quand on le dresse ou le déplace, l’ouvrage ne revient plus, {state} : il se renverse autour de {foot}. Il doit revenir de {least}.",
    narrow:
      "L’ouvrage a {high} de haut sur une base de {base} : ce qui est plus haut que {times} fois sa base se fixe toujours. Une poussée de {force}, à {height} au-dessus du sol, le renverse {way} autour de {foot}.",
    tall: "L’ouvrage a {high} de haut : ce qui dépasse {limit} se fixe toujours. Une poussée de {force}, à {height} au-dessus du sol, le renverse {way} autour de {foot}.",
    weight: "L’ouvrage pèse {weight}, {state} ; les vis ne sont pas comptées.",
    slides: "Ce que l’on pousse avec plus de {share} fois son poids glisse, et ne se renverse pas.",
    filled: "Plein et sec, l’ouvrage résiste à une poussée de {force}.",
    caution: "{caution}",
    anchor:
      "Fixez l’ouvrage par le haut à ce qui tient bon, et dites à quoi sous « plan » : « anchored to … ».",
    wider: "Écartez ses pieds {way} : {base} d’un dehors à l’autre, soit {more} de plus, à poids égal.",
    both: "Écartez ses pieds de {more}, de gauche à droite comme d’avant en arrière, à poids égal.",
    lower: "Ne le faites pas plus haut que {high}.",
    less: "Ne laissez pas {on} dépasser de plus de {reach} ses pieds.",
  },
  "roots-cramped": {
    shallow: "{box} offre {depth} de profondeur à « {crop} », qui en demande au moins {least} en bac.",
    little: "{box} offre {volume} à « {crop} », qui en demande au moins {least} en bac.",
    also: "{crop} n’y trouve pas assez de place non plus.",
    source: "Ce que demande un bac est repris de {source}.",
    ground:
      "En pleine terre, ses racines descendent de {least} à {most} : c’est autre chose, et on ne le compare pas.",
    higher: "Remplissez de {more} de plus.",
    deeper: "Donnez à {box} {more} de plus en profondeur.",
  },
};
