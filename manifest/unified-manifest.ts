import type { FunctionsMetadata } from "../addin/functions/functions-metadata";
import { ADDIN, PLACES } from "./addin-description";
import { iconName, OUTLINE_NAME } from "./icons";
import { RELEASED } from "./released-functions";

const SCHEMA_VERSION = "1.24";
const OPEN_PANE = "OpenPane";

/** The unified manifest of the same add-in, for firms whose Microsoft 365 takes it. */
export function unifiedManifest(base: string, metadata: FunctionsMetadata): object {
  const { ribbon } = ADDIN;
  const at = (place: string) => `${base}/${place}`;
  const icons = [16, 32, 80].map((size) => ({ size, url: at(`${PLACES.icons}/${iconName(size)}`) }));
  return {
    $schema: `https://developer.microsoft.com/json-schemas/teams/v${SCHEMA_VERSION}/MicrosoftTeams.schema.json`,
    manifestVersion: SCHEMA_VERSION,
    id: ADDIN.id,
    version: RELEASED.version,
    name: { short: ADDIN.name, full: ADDIN.name },
    description: { short: ADDIN.shortDescription, full: ADDIN.description },
    developer: {
      name: ADDIN.provider,
      websiteUrl: at(PLACES.help),
      privacyUrl: at(PLACES.help),
      termsOfUseUrl: at(PLACES.help),
    },
    icons: { outline: `${PLACES.icons}/${OUTLINE_NAME}`, color: `${PLACES.icons}/${iconName(192)}` },
    accentColor: ADDIN.accent,
    localizationInfo: { defaultLanguageTag: ADDIN.locale.toLowerCase(), additionalLanguages: [] },
    authorization: {
      permissions: { resourceSpecific: [{ name: "Document.ReadWrite.User", type: "Delegated" }] },
    },
    validDomains: [new URL(base).host],
    extensions: [
      {
        requirements: { scopes: ["workbook"], capabilities: ADDIN.requirements.map(capability) },
        runtimes: [
          {
            id: "SharedRuntime",
            type: "general",
            code: { page: at(PLACES.page) },
            lifetime: "long",
            actions: [{ id: OPEN_PANE, type: "openPage" }],
            customFunctions: {
              namespace: { id: ADDIN.namespace, name: ADDIN.namespace },
              metadataUrl: at(PLACES.metadata),
              functions: metadata.functions,
            },
          },
        ],
        ribbons: [
          {
            contexts: ["default"],
            tabs: [
              {
                builtInTabId: "TabHome",
                groups: [
                  {
                    id: "Barwright.Group",
                    label: ribbon.group,
                    icons,
                    controls: [
                      {
                        id: "Barwright.OpenPane",
                        type: "button",
                        label: ribbon.button,
                        icons,
                        supertip: { title: ribbon.title, description: ribbon.tip },
                        actionId: OPEN_PANE,
                      },
                    ],
                  },
                ],
              },
            ],
          },
        ],
      },
    ],
  };
}

function capability({ set, version }: { readonly set: string; readonly version: string }) {
  return { name: set, minVersion: version };
}
