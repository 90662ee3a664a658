import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Button } from './button.tsx';
import './dialog.css';

export interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A sheet laid over the drawing: the whole screen on a phone, a framed sheet beside the list on a desk. */
export function Dialog({ title, isOpen, onClose, children }: DialogProps) {
  const { t } = useTranslation();
  return (
    <ModalOverlay
      className="over"
      isOpen={isOpen}
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
      isDismissable
    >
      <Modal className="over-sheet">
        <AriaDialog className="over-body">
          <div className="over-head">
            <Heading slot="title" level={2}>
              {title}
            </Heading>
            <Button onPress={onClose}>{t('app.close')}</Button>
          </div>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
