/** How often a child may stand: exactly once, at most once, at least once. */
type Times = "one" | "optional" | "many";

export interface Child {
  readonly name: string;
  readonly times: Times;
  readonly shape: Shape;
}

/** What an element of the manifest may hold, children in the order that Excel reads them in. */
export interface Shape {
  readonly children?: readonly Child[];
  readonly attributes?: Readonly<Record<string, RegExp>>;
  readonly text?: RegExp;
  /** kind of resource that `resid` must name, and its longest text */
  readonly resource?: "Image" | "Url" | "ShortString" | "LongString";
}

const child = (name: string, shape: Shape, times: Times = "one"): Child => ({ name, times, shape });

const ANY = /^[\s\S]+$/;
const HTTPS = /^https:\/\/[^\s/]+(\/\S*)?$/;
const SHORT = /^[\s\S]{1,125}$/;
const LONG = /^[\s\S]{1,250}$/;
const ID = /^[A-Za-z0-9._-]{1,125}$/;
const RESOURCE_ID = /^.{1,32}$/;
const SET_NAME = /^[A-Z][A-Za-z]+$/;
const SET_VERSION = /^\d{1,5}(\.\d{1,5})?$/;

const withValue = (value: RegExp): Shape => ({ attributes: { DefaultValue: value } });
const resource = (kind: NonNullable<Shape["resource"]>): Shape => ({
  attributes: { resid: RESOURCE_ID },
  resource: kind,
});
const source = { children: [child("SourceLocation", resource("Url"))] };
const icon: Shape = {
  children: [
    child(
      "bt:Image",
      { attributes: { size: /^(16|20|24|32|40|48|64|80)$/, resid: RESOURCE_ID }, resource: "Image" },
      "many",
    ),
  ],
};
const listOf = (name: string, value: RegExp): Shape => ({
  children: [child(name, { attributes: { id: RESOURCE_ID, DefaultValue: value } }, "many")],
});

const BUTTON: Shape = {
  attributes: { "xsi:type": /^Button$/, id: ID },
  children: [
    child("Label", resource("ShortString")),
    child("Supertip", {
      children: [child("Title", resource("ShortString")), child("Description", resource("LongString"))],
    }),
    child("Icon", icon),
    child("Action", {
      attributes: { "xsi:type": /^ShowTaskpane$/ },
      children: [child("SourceLocation", resource("Url"))],
    }),
  ],
};

const GROUP: Shape = {
  attributes: { id: ID },
  children: [child("Label", resource("ShortString")), child("Icon", icon), child("Control", BUTTON, "many")],
};

const HOST: Shape = {
  attributes: { "xsi:type": /^Workbook$/ },
  children: [
    child("Runtimes", {
      children: [
        child("Runtime", {
          attributes: { resid: RESOURCE_ID, lifetime: /^(long|short)$/ },
          resource: "Url",
        }),
      ],
    }),
    child("AllFormFactors", {
      children: [
        child("ExtensionPoint", {
          attributes: { "xsi:type": /^CustomFunctions$/ },
          children: [
            child("Script", source),
            child("Page", source),
            child("Metadata", source),
            child("Namespace", resource("ShortString")),
          ],
        }),
      ],
    }),
    child("DesktopFormFactor", {
      children: [
        child(
          "GetStarted",
          {
            children: [
              child("Title", resource("ShortString")),
              child("Description", resource("LongString")),
              child("LearnMoreUrl", resource("Url")),
            ],
          },
          "optional",
        ),
        child("FunctionFile", resource("Url")),
        child("ExtensionPoint", {
          attributes: { "xsi:type": /^PrimaryCommandSurface$/ },
          children: [
            child("OfficeTab", {
              attributes: { id: /^Tab[A-Za-z]+$/ },
              children: [child("Group", GROUP, "many")],
            }),
          ],
        }),
      ],
    }),
  ],
};

/**
 * An add-in-only manifest of a task pane with worksheet functions in a shared runtime, for Excel. Order
 * and limits as Microsoft's "Manifest element ordering" and [MS-OWEMXML] print them; parts that this
 * add-in has no use for are left out, and refused.
 */
export const OFFICE_APP: Shape = {
  attributes: { "xsi:type": /^TaskPaneApp$/ },
  children: [
    child("Id", { text: /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i }),
    child("Version", { text: /^\d{1,5}(\.\d{1,5}){3}$/ }),
    child("ProviderName", { text: SHORT }),
    child("DefaultLocale", { text: /^[a-z]{2,3}(-[A-Z]{2})?$/ }),
    child("DisplayName", withValue(SHORT)),
    child("Description", withValue(LONG)),
    child("IconUrl", withValue(HTTPS)),
    child("HighResolutionIconUrl", withValue(HTTPS)),
    child("SupportUrl", withValue(HTTPS)),
    child("AppDomains", { children: [child("AppDomain", { text: HTTPS }, "many")] }, "optional"),
    child("Hosts", { children: [child("Host", { attributes: { Name: /^Workbook$/ } })] }),
    child("Requirements", {
      children: [
        child("Sets", {
          attributes: { DefaultMinVersion: SET_VERSION },
          children: [child("Set", { attributes: { Name: SET_NAME, MinVersion: SET_VERSION } }, "many")],
        }),
      ],
    }),
    child("DefaultSettings", { children: [child("SourceLocation", withValue(HTTPS))] }),
    child("Permissions", {
      text: /^(Restricted|ReadDocument|ReadAllDocument|WriteDocument|ReadWriteDocument)$/,
    }),
    child("VersionOverrides", {
      attributes: { xmlns: ANY, "xsi:type": /^VersionOverridesV1_0$/ },
      children: [
        child("Hosts", { children: [child("Host", HOST)] }),
        child("Resources", {
          children: [
            child("bt:Images", listOf("bt:Image", HTTPS)),
            child("bt:Urls", listOf("bt:Url", HTTPS)),
            child("bt:ShortStrings", listOf("bt:String", SHORT)),
            child("bt:LongStrings", listOf("bt:String", LONG)),
          ],
        }),
      ],
    }),
  ],
};
