import { encodeXml } from "../core/units/encode-xml";
import { ADDIN, PLACES } from "./addin-description";
import { iconName } from "./icons";
import { RELEASED } from "./released-functions";

const RIBBON_ICONS = [16, 32, 80] as const;

/** The add-in-only manifest, which every version of Excel reads that can run the add-in. */
export function xmlManifest(base: string): string {
  const { ribbon, welcome } = ADDIN;
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<OfficeApp xmlns="http://schemas.microsoft.com/office/appforoffice/1.1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xmlns:bt="http://schemas.microsoft.com/office/officeappbasictypes/1.0" xsi:type="TaskPaneApp">
  <Id>${ADDIN.id}</Id>
  <Version>${RELEASED.version}.0</Version>
  <ProviderName>${encodeXml(ADDIN.provider)}</ProviderName>
  <DefaultLocale>${ADDIN.locale}</DefaultLocale>
  <DisplayName DefaultValue="${encodeXml(ADDIN.name)}"/>
  <Description DefaultValue="${encodeXml(ADDIN.description)}"/>
  <IconUrl DefaultValue="${base}/${PLACES.icons}/${iconName(32)}"/>
  <HighResolutionIconUrl DefaultValue="${base}/${PLACES.icons}/${iconName(64)}"/>
  <SupportUrl DefaultValue="${base}/${PLACES.help}"/>
  <AppDomains>
    <AppDomain>${new URL(base).origin}</AppDomain>
  </AppDomains>
  <Hosts>
    <Host Name="Workbook"/>
  </Hosts>
  <Requirements>
    <Sets DefaultMinVersion="1.1">
${ADDIN.requirements.map(({ set, version }) => `      <Set Name="${set}" MinVersion="${version}"/>`).join("\n")}
    </Sets>
  </Requirements>
  <DefaultSettings>
    <SourceLocation DefaultValue="${base}/${PLACES.page}"/>
  </DefaultSettings>
  <Permissions>ReadWriteDocument</Permissions>
  <VersionOverrides xmlns="http://schemas.microsoft.com/office/taskpaneappversionoverrides" xsi:type="VersionOverridesV1_0">
    <Hosts>
      <Host xsi:type="Workbook">
        <Runtimes>
          <Runtime resid="Page.Url" lifetime="long"/>
        </Runtimes>
        <AllFormFactors>
          <ExtensionPoint xsi:type="CustomFunctions">
            <Script>
              <SourceLocation resid="Functions.Script.Url"/>
            </Script>
            <Page>
              <SourceLocation resid="Page.Url"/>
            </Page>
            <Metadata>
              <SourceLocation resid="Functions.Metadata.Url"/>
            </Metadata>
            <Namespace resid="Functions.Namespace"/>
          </ExtensionPoint>
        </AllFormFactors>
        <DesktopFormFactor>
          <GetStarted>
            <Title resid="Welcome.Title"/>
            <Description resid="Welcome.Text"/>
            <LearnMoreUrl resid="Help.Url"/>
          </GetStarted>
          <FunctionFile resid="Page.Url"/>
          <ExtensionPoint xsi:type="PrimaryCommandSurface">
            <OfficeTab id="TabHome">
              <Group id="Barwright.Group">
                <Label resid="Group.Label"/>
                ${icon()}
                <Control xsi:type="Button" id="Barwright.OpenPane">
                  <Label resid="Button.Label"/>
                  <Supertip>
                    <Title resid="Button.Title"/>
                    <Description resid="Button.Tip"/>
                  </Supertip>
                  ${icon()}
                  <Action xsi:type="ShowTaskpane">
                    <SourceLocation resid="Page.Url"/>
                  </Action>
                </Control>
              </Group>
            </OfficeTab>
          </ExtensionPoint>
        </DesktopFormFactor>
      </Host>
    </Hosts>
    <Resources>
      <bt:Images>
${RIBBON_ICONS.map((size) => resource("Image", `Icon.${size}`, `${base}/${PLACES.icons}/${iconName(size)}`)).join("\n")}
      </bt:Images>
      <bt:Urls>
${resource("Url", "Page.Url", `${base}/${PLACES.page}`)}
${resource("Url", "Functions.Script.Url", `${base}/${PLACES.script}`)}
${resource("Url", "Functions.Metadata.Url", `${base}/${PLACES.metadata}`)}
${resource("Url", "Help.Url", `${base}/${PLACES.help}`)}
      </bt:Urls>
      <bt:ShortStrings>
${resource("String", "Functions.Namespace", ADDIN.namespace)}
${resource("String", "Group.Label", ribbon.group)}
${resource("String", "Button.Label", ribbon.button)}
${resource("String", "Button.Title", ribbon.title)}
${resource("String", "Welcome.Title", welcome.title)}
      </bt:ShortStrings>
      <bt:LongStrings>
${resource("String", "Button.Tip", ribbon.tip)}
${resource("String", "Welcome.Text", welcome.text)}
      </bt:LongStrings>
    </Resources>
  </VersionOverrides>
</OfficeApp>
`;
}

function icon(): string {
  return `<Icon>${RIBBON_ICONS.map((size) => `<bt:Image size="${size}" resid="Icon.${size}"/>`).join("")}</Icon>`;
}

function resource(kind: "Image" | "Url" | "String", id: string, value: string): string {
  return `        <bt:${kind} id="${id}" DefaultValue="${encodeXml(value)}"/>`;
}
