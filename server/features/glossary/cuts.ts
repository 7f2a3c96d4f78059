/** Words of sawing: what a cut is called, where it is measured, and what is left over. */
import { type Term, term } from "./term";

/** Where no source is named, what a sentence says is common practice. */
export const CUTS: readonly Term[] = [
  term(
    "kerf",
    "kerf",
    { en: "kerf, kerfs, saw cut, saw cuts", fr: "trait de scie, traits de scie" },
    {
      en: "A saw leaves a slot as wide as its teeth, and the wood of that slot is gone. Keep the blade on the waste side of the line, or the piece comes out too short.",
      fr: "La scie laisse une fente large comme ses dents, et le bois de cette fente est perdu. Gardez la lame du côté de la chute, sinon la pièce sera trop courte.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "miter",
    "miter",
    { en: "miter, miters, mitered, mitre, mitres, mitred", fr: "onglet, onglets, coupe d’onglet" },
    {
      en: "A miter is an end cut at a slant across the wide face, like the corners of a picture frame. The saw turns to one side while its blade stays upright.",
      fr: "Un onglet est un bout coupé en biais en travers de la grande face, comme aux coins d’un cadre. La scie pivote de côté, sa lame reste droite.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "bevel",
    "bevel",
    { en: "bevel, bevels, beveled, bevelled", fr: "biseau, biseaux, biseauté, biseautée" },
    {
      en: "A bevel is a cut at a slant through the thickness, so that the end leans when you look at the edge. The blade tilts over while the saw stays square to the board.",
      fr: "Un biseau est une coupe en biais dans l’épaisseur, si bien que le bout penche vu de chant. La lame s’incline, la scie reste d’équerre avec la planche.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "long point",
    "points",
    { en: "long point, long points", fr: "pointe longue, pointes longues" },
    {
      en: "The long point is the far tip of a slanted end, where the board is longest. Hook the tape on one tip and measure along that edge to the other.",
      fr: "La pointe longue est l’extrémité d’un bout en biais, là où la planche est la plus longue. Accrochez le ruban à une pointe et mesurez le long de ce chant.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "short point",
    "points",
    { en: "short point, short points", fr: "pointe courte, pointes courtes" },
    {
      en: "The short point is the near corner of a slanted end, where the board is shortest. A length between short points is less than one between long points, so say which you mean.",
      fr: "La pointe courte est le coin rentrant d’un bout en biais, là où la planche est la plus courte. Dites toujours entre quelles pointes vous mesurez.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "overall",
    "overall",
    { en: "overall", fr: "hors tout" },
    {
      en: "Overall is the whole size, from one outermost tip to the other. Measure it straight across, not along a slanted side.",
      fr: "Hors tout est la cote entière, d’une extrémité à l’autre. Mesurez-la tout droit, pas le long d’un côté en biais.",
    },
  ),
  term(
    "square",
    "square",
    { en: "square", fr: "d’équerre" },
    {
      en: "A square end stands at a right angle to the edges. Hold a try square against the edge and look for light between its blade and the end.",
      fr: "Un bout d’équerre fait un angle droit avec les chants. Tenez une équerre contre le chant et cherchez un jour entre sa lame et le bout.",
    },
  ),
  term(
    "off square",
    "off-square",
    { en: "off square", fr: "angle de coupe" },
    {
      en: "A saw counts angles from a square cut, so 0° goes straight across the board. Four corners of a frame take 45° on every end, which is half a right angle.",
      fr: "Une scie compte les angles depuis la coupe droite, et 0° traverse tout droit. Les quatre coins d’un cadre demandent 45° à chaque bout, la moitié d’un angle droit.",
    },
  ),
  term(
    "end trim",
    "end-trim",
    { en: "end trim", fr: "affranchissage" },
    {
      en: "Bought boards often have a rough, cracked or crooked end, and a little is sawn off first. Every length is then measured from that clean end.",
      fr: "Les planches achetées ont souvent un bout abîmé ou de travers, et on en scie d’abord un peu. Toutes les longueurs partent ensuite de ce bout net.",
    },
    "prose",
  ),
  term(
    "rip",
    "rip",
    { en: "rip, rips, ripped, ripping", fr: "déligner, délignage, délignée, délignées" },
    {
      en: "To rip is to saw a board along its grain, to make it narrower. Wood can bind on the blade and be thrown back, so use a riving knife, a fence, a guard and a push stick.",
      fr: "Déligner, c’est scier une planche dans le sens du fil pour la rendre plus étroite. Le bois peut coincer la lame et être rejeté, alors couteau diviseur, guide, protecteur et poussoir sont de rigueur.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "crosscut",
    "rip",
    { en: "crosscut, crosscuts, crosscutting", fr: "coupe en travers, tronçonner, tronçonnage" },
    {
      en: "To crosscut is to saw across the grain, to make a board shorter. Hold the board down on one side and let the other fall free, so that the blade does not bind.",
      fr: "Tronçonner, c’est scier en travers du fil pour raccourcir une planche. Tenez un côté et laissez tomber l’autre librement, pour que la lame ne coince pas.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "notch",
    "notch",
    { en: "notch, notches, notched", fr: "entaille, entailles, entaillée" },
    {
      en: "A notch is wood taken out of a corner or an edge so that another piece sits in it. Mark it from that piece itself, and saw on the waste side of the lines.",
      fr: "Une entaille est du bois ôté à un coin ou à un chant pour y loger une autre pièce. Tracez-la d’après cette pièce même, et sciez du côté de la chute.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "dado",
    "dado",
    { en: "dado, dados, dadoes, dadoed", fr: "rainure, rainures" },
    {
      en: "A dado is a groove with a flat bottom across the grain, into which another board slides. Measure that board first, since the groove must be just as wide.",
      fr: "Cette rainure à fond plat traverse le fil, et une autre planche vient s’y glisser. Mesurez d’abord cette planche, car la rainure doit être exactement aussi large.",
    },
    "prose",
    "prose fr",
  ),
  term(
    "offcut",
    "offcut",
    { en: "offcut, offcuts", fr: "chute, chutes" },
    {
      en: "An offcut is what is left of a board when its pieces are cut. Write its length on it and keep the long ones for short pieces of the next job.",
      fr: "Une chute est ce qui reste d’une planche une fois ses pièces coupées. Notez-y sa longueur et gardez les longues pour de petites pièces plus tard.",
    },
    "prose",
  ),
  term(
    "salvage",
    "salvage",
    {
      en: "salvage, salvaged, reclaimed, on hand",
      fr: "récupération, bois de récupération, sous la main, en réserve",
    },
    {
      en: "Wood on hand has often been something else before. Pull every nail before you saw, and have old paint tested, since it may hold lead.",
      fr: "Le bois qu’on a déjà a souvent servi à autre chose. Arrachez tous les clous avant de scier, et faites analyser la vieille peinture, qui peut contenir du plomb.",
    },
  ),
  term(
    "ring",
    "ring",
    { en: "ring, rings", fr: "cadre" },
    {
      en: "The slanted ends of these boards meet all the way round, as in a picture frame. Small errors of each corner add up, so lay it out without screws first.",
      fr: "Les bouts en biais de ces planches se rejoignent tout autour, comme un cadre. Les petits écarts de chaque coin s’ajoutent, donc posez tout à blanc d’abord.",
    },
  ),
  term(
    "cut to fit",
    "fit",
    { en: "cut to fit", fr: "coupé sur place" },
    {
      en: "Such a piece stays a little long until the rest stands. Hold it in its place, mark it there, and saw to the marks instead of to a number.",
      fr: "Cette pièce reste un peu longue jusqu’à ce que le reste soit debout. Présentez-la à sa place, tracez-la là, et sciez au trait plutôt qu’à une cote.",
    },
    "prose",
  ),
  term(
    "dry fit",
    "fit",
    { en: "dry fit, dry-fit, dry fitted", fr: "à blanc, montage à blanc" },
    {
      en: "A dry fit puts pieces together without glue or screws. It shows gaps and mistakes while they can still be mended.",
      fr: "Monter à blanc, c’est assembler sans colle ni vis. On voit ainsi les jours et les erreurs tant qu’on peut encore les corriger.",
    },
    "prose",
  ),
  term(
    "mark",
    "mark",
    { en: "tape’s mark", fr: "trait du ruban" },
    {
      en: "The marks are the finest lines of the tape that the plan counts in. A length that falls between two of them is shown at the nearer one.",
      fr: "Ce sont les traits les plus fins du ruban que le plan compte. Une longueur qui tombe entre deux est donnée au plus proche.",
    },
  ),
];
