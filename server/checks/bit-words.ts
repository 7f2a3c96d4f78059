/** How checks speak of drill bits, and write them into a line. */
import type { Bit } from "../trade";
import {
  type Display,
  exactly,
  fraction,
  INCH,
  LENGTH,
  lengthInFull,
  type Quantity,
  readNumber,
} from "../units";
import type { Slot } from "./check";

export const bitLength = ({ size, unit }: Bit): Quantity =>
  unit === "mm"
    ? exactly(LENGTH, fraction.fromDecimal(String(size))!)
    : exactly(LENGTH, fraction.multiply(readNumber(size)!, INCH));

/** As it is sold, never rounded to the plan's marks. */
export const bitSlot = (bit: Bit): Slot => ({ full: bitLength(bit) });

/** As a line writes it: `7/64"`, `2.5mm`. */
export const bitWritten = (bit: Bit, display: Display): string =>
  lengthInFull(bitLength(bit), display).replace(" mm", "mm");
