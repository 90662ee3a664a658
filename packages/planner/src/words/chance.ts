/**
 * Chances in words a person can weigh. Never more figures than the rates deserve: "about 1 in 8", not 12.47 %.
 */
export function aboutOneIn(probability: number): string {
  if (!(probability > 0)) return 'never, by this model';
  if (probability < 1e-4) return 'less than 1 in 10,000';
  if (probability >= 0.375) return `about ${Math.round(probability * 10)} in 10`;
  return `about 1 in ${grouped(twoFigures(1 / probability))}`;
}

/** A chance as a percentage with two or three figures, for columns: 3.1 %, 12 %, 0.45 %. */
export function percent(probability: number): string {
  const value = probability * 100;
  if (value === 0) return '0 %';
  const digits = value >= 10 ? 0 : value >= 1 ? 1 : value >= 0.1 ? 2 : 3;
  return `${value.toFixed(digits)} %`;
}

function twoFigures(n: number): number {
  if (n < 10) return Math.round(n);
  const scale = 10 ** (Math.floor(Math.log10(n)) - 1);
  return Math.round(n / scale) * scale;
}

/** Thousands set apart with commas, as the plates and maps here do. */
export function grouped(n: number): string {
  const [whole = '0', fraction] = String(n).split('.');
  const marked = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return fraction === undefined ? marked : `${marked}.${fraction}`;
}
