import * as functions from "./functions";

/** Tells Excel which code stands behind each id of functions.json: the export's name in capitals. */
for (const [name, code] of Object.entries(functions)) {
  CustomFunctions.associate(name.toUpperCase(), code);
}
