import type { ReactNode } from 'react';
import { Button, Disclosure, DisclosurePanel } from 'react-aria-components';
import './more.css';

export interface MoreProps {
  /** 'More about this leg'. */
  readonly title: string;
  /** What is folded away, in a few words, so that it need not be opened to be known. */
  readonly summary?: string;
  readonly children: ReactNode;
  readonly isOpen?: boolean;
  readonly onOpenChange?: (isOpen: boolean) => void;
}

/** Fields that few need, folded away under words that say what they are. */
export function More({ title, summary, children, isOpen, onOpenChange }: MoreProps) {
  return (
    <Disclosure
      className="more"
      {...(isOpen === undefined ? {} : { isExpanded: isOpen })}
      {...(onOpenChange === undefined ? {} : { onExpandedChange: onOpenChange })}
    >
      <div className="more-head">
        <Button slot="trigger" className="more-trigger">
          <svg className="more-sign" aria-hidden="true" width="14" height="14" viewBox="0 0 14 14">
            <path d="M1 4L7 10L13 4" fill="none" stroke="currentColor" strokeWidth="2" />
          </svg>
          <span>{title}</span>
          {summary !== undefined && <span className="small quiet more-summary">{summary}</span>}
        </Button>
      </div>
      <DisclosurePanel className="more-panel">{children}</DisclosurePanel>
    </Disclosure>
  );
}
