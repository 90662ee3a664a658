import { createHash } from 'node:crypto';

/** A large text that carries the sum of its own body, so that half of it, or a mixture of two, shows. */
export function sealed(generation: number): string {
  const letter = String.fromCharCode(97 + (generation % 26));
  const body = `${String(generation).padStart(8, '0')}${letter.repeat(1_000_000)}`;
  return `${sumOf(body)}\n${body}`;
}

/** The number of a sealed text; null when it is not whole. */
export function generationOf(text: string): number | null {
  const [sum, body = ''] = text.split('\n');
  return sumOf(body) === sum ? Number(body.slice(0, 8)) : null;
}

function sumOf(body: string): string {
  return createHash('sha256').update(body).digest('hex');
}
