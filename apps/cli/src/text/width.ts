/** Accents, joiners and marks that a terminal draws onto the letter before. */
const NONE = /[\p{Mn}\p{Me}\p{Cf}]/u;
/** Letters that take two columns: East Asian wide ones and emoji (Unicode Standard Annex 11; whole blocks, so never too few). */
const TWO =
  /[\u1100-\u115f\u231a\u231b\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97c\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1f64f}\u{1f680}-\u{1f6ff}\u{1f900}-\u{1faff}\u{20000}-\u{3fffd}]/u;
const ASCII = /^[\x20-\x7e]*$/;

/** Columns a text takes on a terminal. */
export function widthOf(text: string): number {
  if (ASCII.test(text)) return text.length;
  let width = 0;
  for (const letter of text) width += columnsOf(letter);
  return width;
}

/** As much of the start of a text as fits so many columns; never half a letter. */
export function cutTo(text: string, most: number): string {
  if (ASCII.test(text)) return text.slice(0, most);
  let width = 0;
  let kept = '';
  for (const letter of text) {
    width += columnsOf(letter);
    if (width > most) break;
    kept += letter;
  }
  return kept;
}

function columnsOf(letter: string): number {
  return NONE.test(letter) ? 0 : TWO.test(letter) ? 2 : 1;
}
