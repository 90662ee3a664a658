import type { DragEvent, ReactNode } from 'react';
import { useState } from 'react';
import './drop-area.css';

/**
 * A frame that takes a file dropped on it; the button inside it is the way for a keyboard and for a thumb. The browser's
 * own events: the component library's drag and drop would be a tenth of the page for this one act.
 */
export function DropArea({
  onFile,
  className = '',
  children,
}: {
  readonly onFile: (file: File) => void;
  readonly className?: string;
  readonly children: ReactNode;
}) {
  const [over, setOver] = useState(false);
  const drag = (event: DragEvent, isOver: boolean): void => {
    if (!event.dataTransfer.types.includes('Files')) return;
    event.preventDefault();
    setOver(isOver);
  };
  return (
    <div
      className={`drop-area ${className} ${over ? 'over-it' : ''}`.trim()}
      onDragEnter={(event) => drag(event, true)}
      onDragOver={(event) => drag(event, true)}
      onDragLeave={(event) => event.currentTarget === event.target && setOver(false)}
      onDrop={(event) => {
        drag(event, false);
        const [file] = event.dataTransfer.files;
        if (file !== undefined) onFile(file);
      }}
    >
      {children}
    </div>
  );
}
