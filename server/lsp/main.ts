/** The program that an editor starts, dist/server.js: one for Node and for a browser's worker, which loads only its own side. */
import { IN_NODE } from "./in-node";

void (IN_NODE ? import("./node") : import("./browser")).then(({ serve }) => serve());
