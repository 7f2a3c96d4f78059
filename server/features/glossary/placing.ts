/** Words for how pieces lie and stand to each other, and for what makes a frame true. */
import { type Term, term } from "./term";

/** Where no source is named, what a sentence says is common practice. */
export const PLACING: readonly Term[] = [
  term(
    "flat",
    "lies",
    { en: "flat", fr: "à plat" },
    {
      en: "A board lies flat like a tabletop, with its thickness up and down. That way it bends easily under a load.",
      fr: "Une planche est à plat comme un dessus de table, son épaisseur dans la hauteur. Ainsi elle plie facilement sous une charge.",
    },
  ),
  term(
    "on edge",
    "lies",
    { en: "on edge", fr: "sur chant" },
    {
      en: "A board on edge stands on its narrow side, like a book on a shelf. It bends far less than lying flat, but something must keep it from falling over.",
      fr: "Une planche sur chant repose sur son côté étroit, comme un livre. Elle plie bien moins qu’à plat, mais il faut l’empêcher de basculer.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "upright",
    "lies",
    { en: "upright", fr: "debout" },
    {
      en: "An upright board stands on its end, as a leg does. The load then goes down along its grain, where wood is strong.",
      fr: "Une planche debout repose sur son bout, comme un pied. La charge descend alors dans le sens du fil, où le bois est fort.",
    },
  ),
  term(
    "on center",
    "on-center",
    { en: "on center, on centre", fr: "entraxe" },
    {
      en: "On center is counted from the middle of one piece to the middle of the next. The clear gap between them is less by the width of one piece.",
      fr: "L’entraxe se compte du milieu d’une pièce au milieu de la suivante. Le jour entre elles est moindre, de la largeur d’une pièce.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "apart",
    "on-center",
    { en: "apart, gap, gaps", fr: "jour, jours" },
    {
      en: "A gap is the clear room between two pieces, from side to side. A block cut to that width and set between them makes all gaps alike.",
      fr: "Un jour est l’espace libre entre deux pièces, de côté à côté. Une cale coupée à cette largeur, mise entre elles, rend tous les jours pareils.",
    },
  ),
  term(
    "spread",
    "spread",
    { en: "spread", fr: "réparti, répartis, réparties" },
    {
      en: "Spread pieces have the same gap everywhere along a length, and a spread load the same weight. Set out all the pieces before you fasten the first.",
      fr: "Ce qui est réparti laisse le même jour, ou le même poids, partout sur une longueur. Posez toutes les pièces avant de fixer la première.",
    },
  ),
  term(
    "tight",
    "tight",
    { en: "tight", fr: "serré, jointif" },
    {
      en: "Tight pieces touch, with no light between them. Boards that get wet swell, so out of doors a tight row may push itself out of shape.",
      fr: "Des pièces jointives se touchent, sans jour entre elles. Mouillées, les planches gonflent, et dehors une rangée jointive peut se déformer.",
    },
  ),
  term(
    "flush",
    "flush",
    { en: "flush", fr: "affleurant, affleurante, au même nu" },
    {
      en: "Two faces are flush when they lie in one plane, so that a fingertip feels no step. Hold something straight across both to check.",
      fr: "Deux faces affleurent quand elles sont dans un même plan, sans ressaut sous le doigt. Posez une règle en travers pour le vérifier.",
    },
    "prose",
  ),
  term(
    "inset",
    "flush",
    { en: "inset, in from", fr: "en retrait" },
    {
      en: "An inset face lies a little further in than the one beside it. A small step on purpose hides errors that a flush joint would show.",
      fr: "Une face en retrait est un peu plus en dedans que sa voisine. Un petit ressaut voulu cache des écarts qu’un joint affleurant montrerait.",
    },
  ),
  term(
    "overhang",
    "flush",
    { en: "overhang, overhangs, past", fr: "débord, porte-à-faux" },
    {
      en: "An overhang is what reaches out past the piece under it. A little of it sheds water, but leaning on a long one can tip or break the top.",
      fr: "Un débord est ce qui dépasse de la pièce du dessous. Un peu chasse l’eau, mais s’appuyer sur un long débord peut faire basculer ou casser le dessus.",
    },
    "prose",
  ),
  term(
    "proud",
    "proud",
    { en: "proud", fr: "en saillie" },
    {
      en: "Something proud stands out a little from the face around it. A proud screw or edge catches skin and clothes, so drive it deeper or plane it off.",
      fr: "Ce qui est en saillie dépasse un peu de la face autour. Une vis ou une arête en saillie accroche la peau et les habits, il faut l’enfoncer ou la raboter.",
    },
  ),
  term(
    "centered",
    "centered",
    { en: "centered, centred", fr: "centré, centrée" },
    {
      en: "A centered piece has the same room on both sides. Mark the middle of both pieces, and lay mark on mark.",
      fr: "Une pièce centrée a la même place des deux côtés. Tracez le milieu des deux pièces, et posez trait sur trait.",
    },
  ),
  term(
    "diagonal",
    "diagonals",
    { en: "diagonal, diagonals, diagonally", fr: "diagonale, diagonales" },
    {
      en: "Diagonals run from corner to opposite corner. A frame whose opposite sides match is square when its two diagonals are equal.",
      fr: "Les diagonales vont d’un coin au coin opposé. Un cadre aux côtés opposés égaux est d’équerre quand ses deux diagonales sont égales.",
    },
    "prose",
  ),
  term(
    "out of square",
    "diagonals",
    { en: "out of square", fr: "hors d’équerre, faux équerre" },
    {
      en: "A frame is out of square when its corners are not right angles. Measure both diagonals, and push together the two corners of the longer one.",
      fr: "Un cadre est hors d’équerre quand ses coins ne sont pas droits. Mesurez les deux diagonales, et rapprochez les deux coins de la plus longue.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "plumb",
    "plumb",
    { en: "plumb, spirit level", fr: "d’aplomb, aplomb, niveau à bulle" },
    {
      en: "Plumb is straight up and down, as a string with a weight hangs; level is straight across. A spirit level shows both.",
      fr: "D’aplomb veut dire tout droit de haut en bas, comme pend un fil à plomb, et de niveau tout droit en travers. Un niveau à bulle montre les deux.",
    },
    "prose",
  ),
  term(
    "pairs",
    "pairs",
    { en: "in pairs, mirrored, left and right, mirror images, mirror image", fr: "en paires, symétriques" },
    {
      en: "Left and right pieces are mirror images, like a pair of gloves. Mark each before you cut it, since two of one hand cannot stand in for a pair.",
      fr: "Pièces gauches et droites sont symétriques, comme des gants. Marquez chacune avant de couper, car deux d’une même main ne font pas une paire.",
    },
  ),
  term(
    "crossing",
    "crossing",
    { en: "crossing, crossings, each crossing", fr: "croisement, croisements" },
    {
      en: "A crossing is the patch where two pieces lie on each other. Its screws stand well inside of it, so that each one meets wood in both.",
      fr: "Un croisement est la surface où deux pièces se touchent. Ses vis sont bien en dedans, pour que chacune trouve du bois dans les deux.",
    },
  ),
];
