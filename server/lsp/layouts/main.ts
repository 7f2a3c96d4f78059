/** The program that looks for layouts, dist/layouts.js: one for a thread of Node's and for a browser's worker. */
import { IN_NODE } from "../in-node";

void (IN_NODE ? import("./in-thread") : import("./in-web-worker"));
