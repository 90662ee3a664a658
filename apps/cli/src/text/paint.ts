import pc from 'picocolors';

/** Weight, never colour: the answer is bold where the terminal can do that. */
export interface Paint {
  readonly strong: (text: string) => string;
}

export function paintFor(colour: boolean): Paint {
  const { bold } = pc.createColors(colour);
  return { strong: (text) => (text === '' ? text : bold(text)) };
}
