/** The same in French. */
import type { HOLDING_PHRASES } from "../holding-phrases";
import type { Template } from "../telling";

export const FRENCH_HOLDING_PHRASES: Readonly<Record<keyof typeof HOLDING_PHRASES, Template>> = {
  "as graded lumber":
    "{wood}, compté comme du bois de classe n° 2, sans qu’on cherche d’estampille ({source}).",
  "as clear wood":
    "{wood} en planche mince, d’après la résistance du bois sans défaut, puisqu’aucune table n’en donne ({source}).",
  "as a panel": "Un panneau de {wood}, d’après sa capacité en flexion ({source}).",
  "wood by another": "{wood}, d’après les valeurs de {by},",
  "weak when wet": "Elle est mouillée à l’usage, ce qui affaiblit le bois.",
  "somebody on it":
    "Quelqu’un s’y assoit ou y monte : {weight} au pire endroit, puisqu’aucune ligne « load » ne dit autre chose.",
  "hold it once more":
    "Soutenez-la à un endroit de plus, au milieu de sa plus longue portée : il reste alors {span}, et la même planche suffit.",
  "hold it twice more":
    "Soutenez-la à deux endroits de plus sur sa plus longue portée : il reste alors {span}, et la même planche suffit.",
  "one upright more":
    "Fixez-y un montant au milieu de sa plus longue portée, et reliez-le à l’autre côté : il reste alors {span}, et la même planche suffit.",
  "two uprights more":
    "Fixez-y deux montants sur sa plus longue portée, et reliez-les à l’autre côté : il reste alors {span}, et la même planche suffit.",
  "cut from a stronger board": "Coupez plutôt {part} dans du {section}.",
  "cut from a stronger board of the shop": "Coupez plutôt {part} dans du {section} : le magasin en a.",
  "nothing that was tried":
    "Ni deux appuis de plus ni une planche jusqu’à 2,4 fois plus épaisse n’y suffiraient : portez-la autrement.",
};
