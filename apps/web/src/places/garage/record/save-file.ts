/** Hands a text to the browser to be saved as a file. */
export function saveFile(text: string, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken it over by then; held any longer it would only fill memory.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** 'Old Bess & trailer' on 25 November 2026 -> 'old-bess-trailer-2026-11-25': safe on every system, sorts by day. */
export function fileName(name: string, day: Date, usual: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '');
  const two = (n: number): string => String(n).padStart(2, '0');
  const date = `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
  return `${plain === '' ? usual : plain}-${date}`;
}
