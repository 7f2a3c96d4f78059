/** What a hover says of the strength of boards and screws beside its formulas, in every language; in words. */
import type { Language } from "../../checks";
import { de } from "../../checks/french/elision";
import { woodNamed } from "../../checks/french/names";
import { cited } from "../../checks/french/sources";
import { fr } from "../../checks/french/type";
import { type BendingFactor, briefly, cite, type Source } from "../../trade";
import type { Member } from "../../worked";
import { frenchFastener } from "./common";

const ENGLISH = {
  /** Of stresses, moments, section moduli, areas and stiffnesses, in inches and in millimetres. */
  units: {
    stress: ["psi", "N/mm2"],
    moment: ["in-lb", "N m"],
    modulus: ["in3", "cm3"],
    area: ["in2", "cm2"],
    stiffness: ["lb-in2", "N m2"],
  } as Readonly<Record<"stress" | "moment" | "modulus" | "area" | "stiffness", readonly [string, string]>>,
  /** Without who reproduced it: a line is long enough. */
  cite: (source: Source) => briefly(cite(source)),
  perFoot: (strength: string) => `${strength} on each foot of width`,
  perMetre: (strength: string) => `${strength} on each metre of width`,
  shear: (load: string, area: string, is: string, may: string) =>
    `Shear beside what holds it: 1.5 x V ${load} / A ${area} = ${is} of ${may} allowed`,
  bending: (span: string, moment: string, modulus: string, is: string, may: string) =>
    `Bending over ${span}: M ${moment} / S ${modulus} = ${is} of ${may} allowed`,
  panel: (span: string, moment: string, limit: string, of: string, product: string, sources: string) =>
    `Bending over ${span}: M ${moment} of ${limit} allowed: ${of} panel, ${product}; ${sources}`,
  factor: (what: BendingFactor["what"], by: string) =>
    `${
      {
        size: "size",
        "flat use": "laid flat",
        "one in twenty": "the weakest twentieth",
        margin: "ten years and margin",
        knots: "knots",
        dry: "dried",
      }[what]
    } ${by}`,
  wet: (by: string) => `wet ${by}`,
  endGrain: (by: string) => `end grain ${by}`,
  slant: (by: string) => `slant ${by}`,
  lasting: (by: string) => `${by} for a load that stays`,
  allowed: (product: string, sources: string) => `Allowed: ${product}; ${sources}`,
  sag: (
    bend: string,
    limit: string,
    part: number,
    span: string,
    product: string,
    creep: number,
    sources: string,
  ) =>
    `Bends ${bend} of the ${limit} it may, 1/${part} of ${span}: ${product}; what stays counts ${creep} times; ${sources}`,
  woodOf: ({ of, by }: Member) => (by === undefined ? of : `${of}, by the values of ${by}`),
  taken: (kind: Member["kind"], wood: string, knots: boolean, wet: boolean) =>
    `Taken as ${
      {
        graded: `${wood}, as lumber of grade No. 2; no stamp is looked for`,
        "clear wood": knots
          ? `${wood}, as a thin board brought down from clear wood`
          : `${wood}, as a thin board, which bears no more than lumber of its width`,
        panel: `a ${wood} panel`,
      }[kind]
    }${wet ? ", wet in use" : ""}`,

  screw: (size: string, kind: string) => `${size} ${kind}`,
  thickness: (times: number, tip: boolean) => `${times} times its thickness${tip ? " and the tip" : ""}`,
  noClaim: (screw: string, bite: string, least: string, thickness: string) =>
    `${screw}: goes in ${bite}; below ${least}, ${thickness}, no strength is claimed`,
  through: (screw: string, side: string, gravity: number, bite: string, into: number) =>
    `${screw} through ${side} (gravity ${gravity}) ${bite} into gravity ${into}`,
  holds: (through: string, way: string) => `${through}: ${way}`,
  across: (load: string, mode: string) =>
    `${load} across by NDS yield mode ${mode} (NDS 2018, Table 12.3.1A)`,
  pulled: (by: readonly string[]) => `pulled, ${by.join(", ")}`,
  byThread: (load: string) => `${load} by its thread (NDS 12.2)`,
  byHead: (load: string) => `${load} by its head (NDS 2018 12.2.5, from memory)`,
  together: (each: string, screws: string, all: string) => `${each} x ${screws} = ${all}`,
  shared: (each: string, count: number, all: string) =>
    `${each} for this one; the ${count} that share it, each by its own wood, hold ${all}`,
};

const FACTORS: Readonly<Record<BendingFactor["what"], string>> = {
  size: "dimension",
  "flat use": "à plat",
  "one in twenty": "le vingtième le plus faible",
  margin: "dix ans et marge",
  knots: "nœuds",
  dry: "séché",
};

const FRENCH: typeof ENGLISH = {
  units: {
    stress: ["psi", "N/mm²"],
    moment: ["lb-po", "N m"],
    modulus: ["po³", "cm³"],
    area: ["po²", "cm²"],
    stiffness: ["lb-po²", "N m²"],
  },
  cite: cited,
  perFoot: (strength) => `${strength} par pied de largeur`,
  perMetre: (strength) => `${strength} par mètre de largeur`,
  shear: (load, area, is, may) =>
    fr`Cisaillement au ras de ses appuis : 1.5 x V ${load} / A ${area} = ${is} sur ${may} admis`,
  bending: (span, moment, modulus, is, may) =>
    fr`Flexion sur ${span} : M ${moment} / S ${modulus} = ${is} sur ${may} admis`,
  panel: (span, moment, limit, of, product, sources) =>
    fr`Flexion sur ${span} : M ${moment} sur ${limit} admis : panneau de ${of}, ${product} ; ${sources}`,
  factor: (what, by) => `${FACTORS[what]} ${by}`,
  wet: (by) => `mouillé ${by}`,
  endGrain: (by) => `bois de bout ${by}`,
  slant: (by) => `biais ${by}`,
  lasting: (by) => `${by} pour une charge qui reste`,
  allowed: (product, sources) => fr`Admis : ${product} ; ${sources}`,
  sag: (bend, limit, part, span, product, creep, sources) =>
    fr`Fléchit de ${bend} sur les ${limit} admis, 1/${part} de ${span} : ${product} ; ce qui reste compte ${creep} fois ; ${sources}`,
  woodOf: ({ of, by, species }) => {
    const wood = species ? woodNamed(species.of, of) : of;
    if (by === undefined || species?.by === undefined) return wood;
    return fr`${wood}, d'après les valeurs de : ${woodNamed(species.by, by)}`;
  },
  taken: (kind, wood, knots, wet) =>
    fr`Compté comme ${
      {
        graded: fr`bois de classe n° 2, sans qu'on cherche d'estampille : ${wood}`,
        "clear wood": knots
          ? fr`planche mince, d'après la résistance du bois sans défaut : ${wood}`
          : fr`planche mince, qui ne porte pas plus que du bois de charpente de cette largeur : ${wood}`,
        panel: `panneau de ${wood}`,
      }[kind]
    }${wet ? fr`, mouillé à l'usage` : ""}`,

  screw: (size, kind) => `${frenchFastener(kind, 1)} ${size}`,
  thickness: (times, tip) => fr`${times} fois l'épaisseur${tip ? " et la pointe" : ""}`,
  noClaim: (screw, bite, least, thickness) =>
    fr`${screw} : la prise est ${de(bite)} ; en dessous ${de(least)}, ${thickness}, on ne compte aucune force`,
  through: (screw, side, gravity, bite, into) =>
    fr`${screw} à travers ${side} (densité ${gravity}), prise de ${bite} dans une densité de ${into}`,
  holds: (through, way) => fr`${through} : ${way}`,
  across: (load, mode) =>
    `${load} en travers, mode de plastification ${mode} de NDS (NDS 2018, table 12.3.1A)`,
  pulled: (by) => fr`à l'arrachement, ${by.join(", ")}`,
  byThread: (load) => `${load} par le filet (NDS 12.2)`,
  byHead: (load) => `${load} par la tête (NDS 2018 12.2.5, de mémoire)`,
  together: (each, screws, all) => `${each} x ${screws} = ${all}`,
  shared: (each, count, all) =>
    fr`${each} pour celle-ci ; les ${count} qui se partagent la charge, chacune selon son bois, tiennent ${all}`,
};

export const STRENGTH: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
