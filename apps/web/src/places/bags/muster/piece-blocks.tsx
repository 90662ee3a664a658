import type { MusterRow } from './groups.ts';

/** One small block for each piece, solid when somebody has said what became of it, hatched while it is out. The headline says it in words. */
export function PieceBlocks({ rows }: { rows: readonly MusterRow[] }) {
  return (
    <div className="piece-blocks" aria-hidden="true">
      {rows.flatMap(({ id, out, missing }) =>
        Array.from({ length: out }, (_, n) => (
          <span key={`${id} ${n}`} className={n < out - missing ? 'piece-block' : 'piece-block out'} />
        )),
      )}
    </div>
  );
}
