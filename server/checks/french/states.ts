/** How what carries something comes out against its limit, in French. */
import { fr } from "./type";

export const STATES = {
  within: "dans la limite",
  tooWeak: "trop faible",
  bendsTooFar: "fléchit trop",
  overloaded: "trop chargé",
  claimsNothing: "rien de garanti",
  overLimit: "au-delà de la limite",
  noLimit: "aucune limite indiquée",
  notKnown: "inconnu",
  heldByNothing: "rien ne le tient",
  heldOnce: fr`tenu à un seul endroit, bascule`,
  tips: "bascule",
  anchor: "à ancrer",
};
