/** Names of the packages whose files a bundle's text, source map or list of files names. */
export function packagesNamed(text: string): string[] {
  const names = new Set<string>();
  for (const [, name = ""] of text.matchAll(/node_modules\/((?:@[\w.-]+\/)?[\w.-]+)\//g)) names.add(name);
  return [...names].sort();
}
