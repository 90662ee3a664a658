import type { CatalogueBelonging } from '@waymend/catalogue/shape/belonging';
import type { Outline } from './protocol.ts';

const SHAPES: Readonly<Record<string, Outline | undefined>> = {
  socket: 'socket',
  'bit-socket': 'socket',
  'locknut-socket': 'socket',
  'crow-foot': 'socket',
  joint: 'socket',
  adapter: 'socket',
  wrench: 'wrench',
  adjustable: 'wrench',
  handle: 'ratchet',
  extension: 'bar',
  brace: 'bar',
  'lever-tube': 'bar',
  pliers: 'pliers',
  driver: 'driver',
  key: 'bar',
};

/** The outline a thing is known by in a pocket; a plain box for all that has none of its own. */
export function outlineOf(entry: CatalogueBelonging | undefined): Outline {
  for (const { kind } of entry?.offers ?? []) {
    const shape = SHAPES[kind];
    if (shape !== undefined) return shape;
  }
  return 'box';
}
