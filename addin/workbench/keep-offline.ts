/** Lets the built page be opened again without its server; a page in development keeps nothing. */
export function keepOffline(): void {
  const worker = document.querySelector<HTMLMetaElement>('meta[name="offline"]')?.content;
  if (worker === undefined || !("serviceWorker" in navigator)) return;
  // without it the page works all the same, as long as its server answers
  navigator.serviceWorker.register(worker).catch(() => {});
}
