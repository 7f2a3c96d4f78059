/** Bending of beams: a beam with its loads, and the same with a load that moves. */
export { type Beam, type BeamLoad, type Bending, bend, type Greatest, type Sag } from "./beam-bend";
export { type Worst, worstPlace } from "./beam-worst";
