import { describe, expect, test } from "vitest";
import { checkXmlManifest } from "../../manifest/check-xml-manifest";
import { xmlManifest } from "../../manifest/xml-manifest";

const GOOD = xmlManifest("https://bars.example.com/tools");

/** The good manifest with one thing broken. */
function broken(change: string | RegExp, to: string): string {
  const xml = GOOD.replace(change, to);
  if (xml === GOOD) throw new Error(`nothing to break at ${change}`);
  return xml;
}

const long = (count: number) => "x".repeat(count);

describe("the XML manifest", () => {
  test("is good for the machine's own address and for a deployment", () => {
    expect(checkXmlManifest(GOOD)).toEqual([]);
    expect(checkXmlManifest(xmlManifest("https://localhost:3000"))).toEqual([]);
  });

  test.each<[string, string, RegExp]>([
    ["no XML", broken("</Hosts>", "</Host>"), /no well-formed XML: line \d+/],
    ["an id that is no GUID", broken(/<Id>.*<\/Id>/, "<Id>barwright</Id>"), /Id holds "barwright"/],
    [
      "a version of three numbers",
      broken(/<Version>.*<\/Version>/, "<Version>1.0.0</Version>"),
      /Version holds/,
    ],
    ["a permission that is none", broken("ReadWriteDocument", "WriteAll"), /Permissions holds "WriteAll"/],
    [
      "elements out of order",
      broken(/(\s*<Version>.*<\/Version>)(\s*<ProviderName>.*<\/ProviderName>)/, "$2$1"),
      /Version must stand before ProviderName/,
    ],
    [
      "the runtime after the form factors",
      broken(/(\s*<Runtimes>[\s\S]*<\/Runtimes>)(\s*<AllFormFactors>[\s\S]*<\/AllFormFactors>)/, "$2$1"),
      /Runtimes must stand before AllFormFactors/,
    ],
    ["no runtime", broken(/<Runtimes>[\s\S]*<\/Runtimes>/, ""), /Host lacks Runtimes/],
    ["a lifetime that is none", broken('lifetime="long"', 'lifetime="forever"'), /lifetime="forever"/],
    [
      "plain http",
      broken('"Page.Url" DefaultValue="https:', '"Page.Url" DefaultValue="http:'),
      /http:.*not allowed/,
    ],
    [
      "a page over plain http",
      broken('SourceLocation DefaultValue="https', 'SourceLocation DefaultValue="http'),
      /SourceLocation DefaultValue="http:/,
    ],
    [
      "a resource that is not there",
      broken('<FunctionFile resid="Page.Url"', '<FunctionFile resid="Pages.Url"'),
      /"Pages.Url" is none of the resources/,
    ],
    [
      "a text where an address is due",
      broken('<LearnMoreUrl resid="Help.Url"', '<LearnMoreUrl resid="Welcome.Text"'),
      /is a LongString: it must be a Url/,
    ],
    [
      "a resource id over 32 characters",
      broken(/Functions\.Metadata\.Url/g, `Functions.${long(30)}`),
      /is not allowed/,
    ],
    [
      "a label over 125 characters",
      broken('DefaultValue="Reinforcement"', `DefaultValue="${long(126)}"`),
      /126 characters/,
    ],
    [
      "a description over 250 characters",
      broken(/<Description DefaultValue="[^"]*"/, `<Description DefaultValue="${long(251)}"`),
      /Description DefaultValue.*251 characters/,
    ],
    ["no image of 80 pixels", broken(/<bt:Image size="80"[^>]*\/>/, ""), /Icon lacks the image of 80 pixels/],
    ["an image size of Excel's that is none", broken('size="16"', 'size="17"'), /size="17"/],
    [
      "two controls of one id",
      broken('id="Barwright.OpenPane"', 'id="Barwright.Group"'),
      /Barwright.Group stands twice/,
    ],
    [
      "two resources of one id",
      broken('bt:String id="Button.Title"', 'bt:String id="Button.Label"'),
      /Button.Label stands twice/,
    ],
    [
      "functions on another page than the runtime's",
      broken(/(<Page>\s*<SourceLocation resid=")Page.Url/, "$1Help.Url"),
      /a shared runtime needs Page.Url/,
    ],
    [
      "no shared runtime asked for",
      broken(/<Set Name="SharedRuntime"[^>]*\/>/, ""),
      /lack the set SharedRuntime/,
    ],
    [
      "a requirement set without a version",
      broken(' MinVersion="1.9"', ""),
      /Set has no attribute MinVersion/,
    ],
    ["another program", broken('<Host Name="Workbook"', '<Host Name="Document"'), /Name="Document"/],
    ["an element of its own", broken("<GetStarted>", "<Extra/><GetStarted>"), /may not hold Extra/],
    [
      "an element twice",
      broken('<Label resid="Group.Label"/>', '<Label resid="Group.Label"/><Label resid="Group.Label"/>'),
      /Label 2 times/,
    ],
    ["another root", broken(/OfficeApp/g, "AddIn"), /root is AddIn/],
  ])("with %s is refused", (_, xml, words) => {
    const problems = checkXmlManifest(xml);
    expect(problems.join("\n")).toMatch(words);
  });
});
