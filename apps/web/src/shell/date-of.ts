/** The day on this device's clock, '2026-07-04', as records write it. */
export function dateOf(today: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${today.getFullYear()}-${two(today.getMonth() + 1)}-${two(today.getDate())}`;
}
