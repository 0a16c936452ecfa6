import { readXml, type XmlElement } from "./xml-element";
import { type Child, OFFICE_APP, type Shape } from "./xml-shapes";

const NEEDED_ICONS = ["16", "32", "80"];

/** Everything that Excel would refuse an add-in-only manifest for, one line each; empty where it is good. */
export function checkXmlManifest(xml: string): string[] {
  const root = readXml(xml);
  if ("problem" in root) return [`no well-formed XML: ${root.problem}`];
  if (root.name !== "OfficeApp") return [`the root is ${root.name}: it must be OfficeApp`];
  const problems: string[] = [];
  const resources = resourcesOf(root, problems);
  checkElement(root, OFFICE_APP, root.name, resources, problems);
  checkIds(root, problems);
  checkSharedRuntime(root, problems);
  return problems;
}

interface Resource {
  readonly kind: NonNullable<Shape["resource"]>;
  readonly value: string;
}

function checkElement(
  element: XmlElement,
  shape: Shape,
  path: string,
  resources: ReadonlyMap<string, Resource>,
  problems: string[],
): void {
  for (const [name, pattern] of Object.entries(shape.attributes ?? {})) {
    const value = element.attributes[name];
    if (value === undefined) problems.push(`${path} has no attribute ${name}`);
    else if (!pattern.test(value)) problems.push(`${path} ${name}="${shortened(value)}" is not allowed`);
  }
  if (shape.text !== undefined && !shape.text.test(element.text)) {
    problems.push(`${path} holds "${shortened(element.text)}", which is not allowed`);
  }
  if (shape.resource !== undefined) checkReference(element, shape.resource, path, resources, problems);
  if (element.name === "Icon") checkIcon(element, path, problems);
  checkChildren(element, shape.children ?? [], path, problems);
  for (const one of element.children) {
    const known = shape.children?.find((child) => child.name === one.name);
    if (known !== undefined) checkElement(one, known.shape, `${path}/${one.name}`, resources, problems);
  }
}

function checkChildren(
  element: XmlElement,
  wanted: readonly Child[],
  path: string,
  problems: string[],
): void {
  const order = wanted.map((child) => child.name);
  let reached = 0;
  for (const { name } of element.children) {
    const place = order.indexOf(name);
    if (place < 0) problems.push(`${path} may not hold ${name}`);
    else if (place < reached) problems.push(`${path}: ${name} must stand before ${order[reached]}`);
    else reached = place;
  }
  for (const { name, times } of wanted) {
    const count = element.children.filter((one) => one.name === name).length;
    if (count === 0 && times !== "optional") problems.push(`${path} lacks ${name}`);
    if (count > 1 && times !== "many") problems.push(`${path} holds ${name} ${count} times`);
  }
}

function checkReference(
  element: XmlElement,
  kind: Resource["kind"],
  path: string,
  resources: ReadonlyMap<string, Resource>,
  problems: string[],
): void {
  const id = element.attributes["resid"] ?? "";
  const named = resources.get(id);
  if (named === undefined) problems.push(`${path} resid="${id}" is none of the resources`);
  else if (named.kind !== kind)
    problems.push(`${path} resid="${id}" is a ${named.kind}: it must be a ${kind}`);
}

function checkIcon(element: XmlElement, path: string, problems: string[]): void {
  const sizes = element.children.map((image) => image.attributes["size"]);
  for (const size of NEEDED_ICONS) {
    if (!sizes.includes(size)) problems.push(`${path} lacks the image of ${size} pixels`);
  }
}

function resourcesOf(root: XmlElement, problems: string[]): ReadonlyMap<string, Resource> {
  const kinds = {
    "bt:Images": "Image",
    "bt:Urls": "Url",
    "bt:ShortStrings": "ShortString",
    "bt:LongStrings": "LongString",
  } as const;
  const found = new Map<string, Resource>();
  for (const [list, kind] of Object.entries(kinds)) {
    for (const item of descendants(root, list).flatMap((one) => one.children)) {
      const id = item.attributes["id"] ?? "";
      if (found.has(id)) problems.push(`the resource ${id} stands twice`);
      found.set(id, { kind, value: item.attributes["DefaultValue"] ?? "" });
    }
  }
  return found;
}

function checkIds(root: XmlElement, problems: string[]): void {
  const seen = new Set<string>();
  for (const element of [...descendants(root, "Group"), ...descendants(root, "Control")]) {
    const id = element.attributes["id"] ?? "";
    if (seen.has(id)) problems.push(`the id ${id} stands twice on the ribbon`);
    seen.add(id);
  }
}

/** The runtime is shared only if everything that opens the page names it by the same resource. */
function checkSharedRuntime(root: XmlElement, problems: string[]): void {
  const [runtime] = descendants(root, "Runtime");
  const page = runtime?.attributes["resid"];
  const places = [
    ...descendants(root, "Page").flatMap((one) => one.children),
    ...descendants(root, "FunctionFile"),
    ...descendants(root, "Action").flatMap((one) => one.children),
  ];
  for (const place of places) {
    if (place.attributes["resid"] !== page) {
      problems.push(`${place.name} names ${place.attributes["resid"]}: a shared runtime needs ${page} there`);
    }
  }
  const sets = descendants(root, "Set").map((set) => set.attributes["Name"]);
  if (!sets.includes("SharedRuntime")) problems.push("Requirements lack the set SharedRuntime");
}

function descendants(element: XmlElement, name: string): XmlElement[] {
  const below = element.children.flatMap((child) => descendants(child, name));
  return element.name === name ? [element, ...below] : below;
}

function shortened(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}... (${text.length} characters)` : text;
}
