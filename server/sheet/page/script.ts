/** The one script of a sheet's page, as text, and its hash for the page's content policy. */
import SCRIPT from "./main.ts?script";

export const PAGE_SCRIPT = SCRIPT;

/** Held to the text by a test. */
export const PAGE_SCRIPT_HASH = "sha256-Bsj3FowTBaOaEzY0z1A6ywS/i51yJHjCBe95+uY1o/c=";
