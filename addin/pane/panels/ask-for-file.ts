/** Opens the file input that stands beside the button that was clicked. */
export function askForFile({ currentTarget }: Event): void {
  (currentTarget as HTMLElement).parentElement?.querySelector<HTMLInputElement>("input[type=file]")?.click();
}
