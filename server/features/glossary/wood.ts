/** Words of wood: the sides of a board, how it grew, how it is sold and what becomes of it. */
import { section } from "../../trade";
import { type Term, term } from "./term";

const TWO_BY_FOUR = section("2x4", "ps20-dry")!;

/** Where no source is named, what a sentence says is common practice. */
export const WOOD: readonly Term[] = [
  term(
    "face",
    "faces",
    { en: "face, faces, wide face, wide faces", fr: "grande face, face" },
    {
      en: "The face is one of a board’s two wide sides. It is what you look down on when the board lies flat.",
      fr: "La face est un des deux grands côtés d’une planche. C’est elle qu’on voit d’en haut quand la planche est à plat.",
    },
  ),
  term(
    "edge",
    "faces",
    { en: "edge, edges", fr: "chant, chants" },
    {
      en: "The edge is one of the two narrow sides that run the whole length of a board. A screw driven into it must keep to the middle, away from both faces.",
      fr: "Le chant est un des deux côtés étroits, sur toute la longueur de la planche. Une vis qui y entre doit rester au milieu, loin des deux faces.",
    },
  ),
  term(
    "end",
    "faces",
    { en: "end, ends", fr: "bout, bouts, about" },
    {
      en: "The end is where a board was sawn across, so it shows the cut fibers. Screws hold poorly in it, since they run along the grain.",
      fr: "Le bout est là où la planche a été sciée en travers, et il montre les fibres coupées. Une vis y tient mal, car elle suit le fil.",
    },
  ),
  term(
    "end grain",
    "grain",
    { en: "end grain", fr: "bois de bout" },
    {
      en: "End grain is the sawn end of a board, its fibers cut like a bundle of straws. It drinks water and paint, and screws pull out of it easily.",
      fr: "Le bois de bout est le bout scié d’une planche, ses fibres coupées comme un fagot de pailles. Il boit l’eau et la peinture, et les vis s’en arrachent.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "grain",
    "grain",
    { en: "grain, long grain, face grain, with the grain, across the grain", fr: "fil, fil du bois" },
    {
      en: "Grain is the run of the fibers, along the length of a board. Wood is strong along it, splits along it, and swells across it.",
      fr: "Le fil est la direction des fibres, dans la longueur de la planche. Le bois est fort dans le fil, se fend dans le fil et gonfle en travers.",
    },
  ),
  term(
    "nominal",
    "nominal",
    { en: "nominal size, nominal", fr: "cote nominale, cote commerciale" },
    {
      en: `In inches, the name is the size before drying and planing. A 2x4 bought dry is really ${TWO_BY_FOUR.thickness}" x ${TWO_BY_FOUR.width}", so measure before you rely on a name.`,
      fr: `En pouces, le nom est la cote avant séchage et rabotage. Un 2x4 acheté sec fait en réalité ${TWO_BY_FOUR.thickness}" x ${TWO_BY_FOUR.width}", mesurez donc avant de vous fier au nom.`,
    },
    "prose",
  ),
  term(
    "actual",
    "nominal",
    { en: "actual size, actual", fr: "cote réelle" },
    {
      en: "The actual size is what a rule shows on the board in your hand. Planed inch lumber is smaller than its name, while planed metric boards are sold by their finished size, and both change a little as they dry.",
      fr: "La cote réelle est celle que montre la règle sur la planche en main. Raboté en pouces, le bois est plus petit que son nom, raboté en métrique il se vend à sa cote finie, et tous deux varient un peu en séchant.",
    },
  ),
  term(
    "rough",
    "dressed",
    { en: "rough, rough-sawn, rough sawn", fr: "brut de sciage, bois brut" },
    {
      en: "Rough lumber comes straight from the saw, furry and uneven in size. Measure each board before you cut it, and wear gloves against splinters.",
      fr: "Le bois brut sort de la scie, pelucheux et de cotes inégales. Mesurez chaque planche avant de couper, et portez des gants contre les échardes.",
    },
  ),
  term(
    "dressed",
    "dressed",
    { en: "dressed, planed, surfaced", fr: "raboté, rabotée, rabotées" },
    {
      en: "Dressed lumber has been planed smooth, which leaves it thinner than it was sawn. Its boards are alike enough that one can stand in for another.",
      fr: "Le bois raboté est lisse, et donc plus mince qu’à la sortie de la scie. Ses planches se ressemblent assez pour que l’une remplace l’autre.",
    },
  ),
  term(
    "heartwood",
    "heartwood",
    { en: "heartwood", fr: "bois de cœur, duramen" },
    {
      en: "Heartwood is the older and often darker wood in the middle of the log. In some kinds, such as cedar, it resists rot.",
      fr: "Le bois de cœur est le bois plus vieux, souvent plus sombre, au milieu du tronc. Chez certaines essences, comme le cèdre, il résiste à la pourriture.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "sapwood",
    "heartwood",
    { en: "sapwood", fr: "aubier" },
    {
      en: "Sapwood is the younger, often paler wood under the bark. Where it stays wet it rots, whatever the kind of tree.",
      fr: "L’aubier est le bois plus jeune, souvent plus pâle, sous l’écorce. Là où il reste mouillé il pourrit, quelle que soit l’essence.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "treated",
    "treated",
    { en: "treated, pressure-treated, untreated", fr: "traité, traitée, traités, bois traité" },
    {
      en: "Treated wood has a preservative pressed into it against rot and insects. Wear a dust mask when you saw it, wash your hands, and never burn the scraps.",
      fr: "Le bois traité contient un produit contre la pourriture et les insectes. Portez un masque en le sciant, lavez-vous les mains, et ne brûlez jamais les chutes.",
    },
  ),
  term(
    "moisture",
    "moisture",
    { en: "moisture", fr: "humidité" },
    {
      en: "Wood takes up water from damp air and gives it off in dry air. It swells and shrinks across the grain as it does, and hardly at all along it.",
      fr: "Le bois prend l’eau de l’air humide et la rend à l’air sec. Il gonfle et se retire alors en travers du fil, et presque pas dans sa longueur.",
    },
  ),
  term(
    "green",
    "moisture",
    { en: "green", fr: "bois vert" },
    {
      en: "Green wood still holds much of the water of the tree. It shrinks as it dries, so gaps open and boards may twist.",
      fr: "Le bois vert contient encore une bonne part de l’eau de l’arbre. Il se retire en séchant, les jours s’ouvrent et les planches peuvent vriller.",
    },
  ),
  term(
    "stock",
    "stock",
    { en: "stock", fr: "bois du marchand" },
    {
      en: "The yard sells boards in a few fixed lengths. Every piece has to come out of one of them, saw cuts included.",
      fr: "Le marchand vend les planches en quelques longueurs fixes. Chaque pièce doit sortir de l’une d’elles, traits de scie compris.",
    },
  ),
  term(
    "sheet",
    "plywood",
    { en: "sheet goods, sheet, sheets", fr: "panneau, panneaux" },
    {
      en: "Panels are sold wide and large, and are cut from edge to edge. A full one is heavy and catches the wind, so have the first cuts made at the yard.",
      fr: "Les panneaux sont vendus larges et grands, et se coupent de bord à bord. Entiers ils sont lourds, faites donc faire les premières coupes au magasin.",
    },
  ),
  term(
    "plywood",
    "plywood",
    { en: "plywood, ply", fr: "contreplaqué" },
    {
      en: "Plywood is thin layers of wood, glued with their grain crossed. It stays flat and hardly swells in width, but its edges soak up water.",
      fr: "Le contreplaqué est fait de feuilles de bois collées à fil croisé. Il reste plan et gonfle peu en largeur, mais ses chants boivent l’eau.",
    },
    "prose",
    "piece",
    "prose fr",
  ),
  term(
    "cup",
    "cup",
    { en: "cupping, cupped", fr: "tuilage, tuilée" },
    {
      en: "A board cups when one face dries or swells more than the other, and it turns hollow across its width. Wide, thin boards do it most.",
      fr: "Une planche tuile quand une face sèche ou gonfle plus que l’autre, et se creuse sur sa largeur. Les planches larges et minces tuilent le plus.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "split",
    "split",
    { en: "split, splits, splitting", fr: "fente, fendre" },
    {
      en: "Wood splits along its grain when a screw wedges the fibers apart, most of all near an end. A pilot hole makes room for the screw.",
      fr: "Le bois se fend dans le fil quand une vis écarte les fibres, surtout près d’un bout. Un avant-trou fait de la place à la vis.",
    },
  ),
];
