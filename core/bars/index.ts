export { nominalArea } from "./nominal-area";
export { nominalMass } from "./nominal-mass";
