/** The program that an editor starts: dist/server.js. */
import { serve } from "./node";

serve();
