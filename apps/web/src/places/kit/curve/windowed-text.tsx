import type { ReactNode } from 'react';

/** Text in a window of paper, so that no line or hatch runs behind it. The window is cut a little wider than the words. */
export function WindowedText({
  x,
  y,
  words,
  anchor = 'start',
  bold = false,
  size = 13,
}: {
  x: number;
  y: number;
  words: string;
  anchor?: 'start' | 'middle' | 'end';
  bold?: boolean;
  size?: number;
}): ReactNode {
  const wide = widthOf(words, size, bold) + 8;
  const left = anchor === 'start' ? x - 4 : anchor === 'end' ? x - wide + 4 : x - wide / 2;
  return (
    <g>
      <rect x={left} y={y - size} width={wide} height={size + 5} fill="var(--paper)" />
      <text x={x} y={y} fontSize={size} textAnchor={anchor} fontWeight={bold ? 700 : 400}>
        {words}
      </text>
    </g>
  );
}

/** About how wide words are drawn; the face has wide, even letters. */
export function widthOf(words: string, size: number, bold = false): number {
  return words.length * size * (bold ? 0.61 : 0.57);
}
