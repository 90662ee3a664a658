import type { ReactNode } from 'react';
import './parts.css';

/** A block of a sheet: bold heading, a quiet remark at its end, a wide line under both. */
export function Block({
  title,
  aside,
  children,
  level = 2,
}: {
  title: string;
  aside?: ReactNode;
  children: ReactNode;
  level?: 2 | 3;
}) {
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <section className="block">
      <div className="block-head">
        <Heading>{title}</Heading>
        {aside !== undefined && <p className="quiet">{aside}</p>}
      </div>
      {children}
    </section>
  );
}

/** A circled number that ties a place in a picture to a row of a list. */
export function Balloon({ number }: { number: number }) {
  return (
    <span className="balloon" aria-hidden="true">
      {number}
    </span>
  );
}

/** A danger: the first sentence names it, the second says what to do. Never folded away. */
export function Caution({ children }: { children: ReactNode }) {
  return (
    <div className="caution" role="note">
      <svg className="caution-sign" aria-hidden="true" width="32" height="32" viewBox="0 0 32 32">
        <path d="M16 3L30 28H2Z" fill="none" stroke="currentColor" strokeWidth="2" />
        <path d="M16 11V20M16 23V25.5" stroke="currentColor" strokeWidth="3" />
      </svg>
      <div>{children}</div>
    </div>
  );
}

/** What, where, and what was kept: one sentence each. */
export function Sentence({ children, strong = false }: { children: ReactNode; strong?: boolean }) {
  return <p className={strong ? 'sentence decides' : 'sentence'}>{children}</p>;
}
