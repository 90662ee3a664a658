/** Read when the page is opened, before the places tidy the address. */
let asked = typeof location !== 'undefined' && /[?&]demo\b/.test(location.search + location.hash);

export function isDemoAskedFor(): boolean {
  return asked;
}

/** Asked once: going back to Begin later does not ask again. */
export function forgetDemo(): void {
  asked = false;
}
