/** What tools, bits and joints are called, in French. */
import { de } from "../../checks/french/elision";
import { JOINT } from "../../checks/french/joints";
import { woodTitle } from "../../checks/french/names";
import { cited } from "../../checks/french/sources";
import { et, FRENCH_NUMBERS, fr } from "../../checks/french/type";
import type { ShopWords } from "../../worked";
import { jointTitle } from "../../worked";
import { CARE, CAUTIONS, RULES, TOOLS } from "./french-trade";

const NOTCHES = { notch: "entailles", dado: "rainures" } as const;
const comma = (number: number): string => String(number).replace(".", FRENCH_NUMBERS.decimal);

export const FRENCH_SHOP: ShopWords = {
  listed: et,
  joint: JOINT,
  titleOf: ({ entry }) => jointTitle(entry, JOINT),
  tool: ({ value }) => TOOLS[value.key],
  caution: ({ key, value }) => CAUTIONS[key] ?? value.text,
  care: ({ key, value }) => CARE[key] ?? value.text,
  wood: woodTitle,
  cite: cited,

  uses: {
    working: "scier, percer et visser",
    machine: "scier à la machine",
    dust: "scier et poncer",
    nailsIn: (stock) => `vieux clous dans ${stock}`,
    cuts: "toutes les coupes",
    squareEnds: fr`bouts d'équerre`,
    corners: "angles",
    ripped: (part, width) => `${part}, largeur ${width}`,
    ends: { both: "les deux bouts", left: "bout gauche", right: "bout droit" },
    notches: (kinds, part) => `${et(kinds.map((kind) => NOTCHES[kind]))} ${de(part)}`,
    drains: (box) => fr`trous d'écoulement ${de(box)}`,
    slants: (kind, parts, miter, bevel) => {
      const of = de(et(parts));
      if (kind === "compound") return `bouts inclinés ${of}, onglet ${miter} et biseau ${bevel}`;
      return kind === "miter" ? `onglets ${of}, ${miter}` : `biseaux ${of}, ${bevel}`;
    },
    ring: (ring) => fr`${ring} pendant l'assemblage`,
    sawing: (parts) => `sciage ${de(et(parts))}`,
    uprights: "les montants",
    coat: (finish, things) => `${finish} sur ${et(things)}`,
    liner: (liner, things) => `${liner} dans ${et(things)}`,
  },

  bits: {
    headless: "un clou sans sa tête",
    toFit: "selon la tête",
    orWider: (size) => `${size} ou plus large`,
    thePlan: "le plan",
    rule: (rule, source) => fr`${RULES[rule] ?? rule} : ${source}`,
    through: "de part en part",
    near: "dans la pièce du dessus, pour que les planches se serrent",
    splits: fr`la résistance seule n'en demande pas ; percer évite de fendre le bois`,
    thinner: (least, most) => fr`plus fin que toute règle : les règles publiées vont de ${least} à ${most}`,
    wider: (least, most) => fr`plus large que toute règle : les règles publiées vont de ${least} à ${most}`,
    drainsSize: "le plan ne dit pas leur diamètre",
    bottom: "à travers le fond",
    flatHeads: "têtes plates",
    countersink: fr`là où une tête ne s'enfonce pas seule à fleur du bois`,
    cross: (bit) => fr`une tête cruciforme de ce calibre prend en général un embout nº ${bit}`,
    assumed: (by, gauge) =>
      by === "nail"
        ? fr`aucune mèche courante n'est assez fine : percer avec un de ces clous, tête coupée`
        : fr`aucune table ne donne le noyau d'une nº ${gauge ?? "?"} : compté d'après son diamètre`,
  },

  taken: {
    gravity: (gravity) => `densité ${comma(gravity)} admise`,
    noGravity: (wood, gravity) => fr`aucune table ne donne la densité ${de(wood)} : ${comma(gravity)} admise`,
    wood: (part, wood) => fr`${part} compté comme ${wood}, faute d'indication dans le plan`,
  },
};
