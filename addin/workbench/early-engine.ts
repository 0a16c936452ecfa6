import { startEngine } from "../pane/engine/start-engine";

/** Made before the grid's code runs, so that it is at hand by the time that there is something to check. */
export const engine = startEngine();
