// What turns the pounds and inches of the timber tables into newtons and millimetres.

export const MM_PER_INCH = 25.4;
export const MM_PER_FOOT = 304.8;
/** By definition of the pound (0.45359237 kg, 1959) and of standard gravity (9.80665 m/s2, CGPM 1901). */
export const NEWTONS_PER_POUND = 0.45359237 * 9.80665;
export const MPA_PER_PSI = NEWTONS_PER_POUND / MM_PER_INCH ** 2;
