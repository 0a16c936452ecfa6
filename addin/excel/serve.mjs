/** `npm run excel`: the add-in over https on this machine, and how to put it into Excel. */
import { existsSync, readFileSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import webpack from "webpack";
import WebpackDevServer from "webpack-dev-server";
import { LOCALHOST, taskpaneConfig } from "../webpack/taskpane.mjs";

const CERTIFICATES = join(homedir(), ".office-addin-dev-certs");
const files = { key: "localhost.key", cert: "localhost.crt", ca: "ca.crt" };

const missing = Object.values(files).filter((name) => !existsSync(join(CERTIFICATES, name)));
if (missing.length > 0) {
  console.error(
    `Excel takes add-ins over https only, and ${missing.join(", ")} is not in ${CERTIFICATES}: type "npx office-addin-dev-certs install" (it asks to trust a certificate of this machine), then "npm run excel" again`,
  );
  process.exit(2);
}

const config = taskpaneConfig({ mode: "development", env: {} });
const compiler = webpack({ ...config, output: { ...config.output, publicPath: "/taskpane/" } });
const server = new WebpackDevServer(
  {
    host: "localhost",
    port: Number(new URL(LOCALHOST).port),
    server: {
      type: "https",
      options: Object.fromEntries(
        Object.entries(files).map(([option, name]) => [option, readFileSync(join(CERTIFICATES, name))]),
      ),
    },
    headers: { "Access-Control-Allow-Origin": "*" },
    // A reloaded page would not register its functions again, so nothing is swapped in place.
    hot: false,
    liveReload: false,
    client: false,
    static: false,
  },
  compiler,
);
await server.start();

console.log(`
Barwright is at ${LOCALHOST}/taskpane/taskpane.html; the manifest is addin/dist/manifest-localhost.xml.

Windows  npx office-addin-debugging start addin/dist/manifest-localhost.xml desktop
         or share a folder, put the manifest in it, and add the folder in Excel under File, Options,
         Trust Center, Trusted Add-in Catalogs; then Home, Add-ins, Shared Folder
Mac      copy the manifest to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef
         and start Excel again; then Home, Add-ins
Web      open a workbook in Excel on the web: Home, Add-ins, More Add-ins, My Add-ins,
         Upload My Add-in, and choose the manifest

After a change of a worksheet function start Excel again: it reads functions.json once.
Stop with Ctrl+C.`);
