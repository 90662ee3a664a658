import type { ReactNode } from 'react';
import './sub-head.css';

/** Head of a sheet within the belongings: its name, what it is for, and the ways out of it. */
export function SubHead({ title, how, children }: { title: string; how: string; children: ReactNode }) {
  return (
    <div className="sub-head">
      <div>
        <h1>{title}</h1>
        <p className="quiet">{how}</p>
      </div>
      <div className="acts">{children}</div>
    </div>
  );
}
