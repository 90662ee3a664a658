declare const unit: unique symbol;

/** A number that carries its unit in its type, so that a length cannot be passed for a mass. */
export type Quantity<U extends string> = number & { readonly [unit]: U };
