import type { ReactNode } from 'react';
import { Link } from 'wouter';

/** A big row that leads on: mark, words, and a stroke that says so. */
export function RowLink({ to, mark, children }: { to: string; mark?: ReactNode; children: ReactNode }) {
  return (
    <Link href={to} className="row-link">
      {mark}
      <span className="row-words">{children}</span>
      <svg className="row-on" aria-hidden="true" width="10" height="16" viewBox="0 0 10 16">
        <path d="M1.5 1.5L8 8L1.5 14.5" fill="none" stroke="currentColor" strokeWidth="2" />
      </svg>
    </Link>
  );
}

/** Big rows of what has an id and a title, each leading to a sheet under `to`. */
export function RowLinks({
  to,
  rows,
}: {
  to: string;
  rows: readonly { readonly id: string; readonly title: string }[];
}) {
  return (
    <ul className="big-rows">
      {rows.map(({ id, title }) => (
        <li key={id}>
          <RowLink to={`${to}/${id}`}>{title}</RowLink>
        </li>
      ))}
    </ul>
  );
}
