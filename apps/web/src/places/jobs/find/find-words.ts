/** Whether a title (or an id) has every word that was typed, however it is written. */
export function hasWords(text: string, typed: string): boolean {
  const plain = text.toLowerCase();
  return typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => plain.includes(word));
}
