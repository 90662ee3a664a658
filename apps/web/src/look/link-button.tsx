import type { ReactNode } from 'react';
import { Link } from 'wouter';
import './button.css';

/** Goes to another sheet and looks like the act it is. */
export function LinkButton({
  to,
  children,
  main = false,
}: {
  to: string;
  children: ReactNode;
  main?: boolean;
}) {
  return (
    <Link href={to} className={main ? 'act main as-link' : 'act as-link'}>
      {children}
    </Link>
  );
}
