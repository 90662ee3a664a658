import type { ReactNode } from 'react';
import { Button as AriaButton } from 'react-aria-components';
import './button.css';

export interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress: () => void;
  /** The one main act of a screen: 2 px and bold. */
  readonly main?: boolean;
  readonly isDisabled?: boolean;
  /** Said instead of the words when they do not stand alone: 'Remove ratchet 1/2'. */
  readonly label?: string;
}

/** Red-pencil outline, words that name the act; at least 48 px to touch. */
export function Button({ children, onPress, main = false, isDisabled = false, label }: ButtonProps) {
  return (
    <AriaButton
      className={main ? 'act main' : 'act'}
      onPress={onPress}
      isDisabled={isDisabled}
      {...(label === undefined ? {} : { 'aria-label': label })}
    >
      {children}
    </AriaButton>
  );
}
