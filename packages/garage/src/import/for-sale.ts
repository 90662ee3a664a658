/** Headings and words under which a list names what is not owned yet. */
const TO_BUY = /\b(?:to buy|for sale|shopping list|wish ?list|still to get|in the shop)\b/iu;
const CURRENCY = String.raw`(?:EUR|USD|AUD|NZD|CAD|GBP|ZAR|CHF|euros?|dollars?|pounds?|rand|€|\$|£)`;
const AMOUNT = String.raw`(\d{1,6}(?:[.,]\d{1,2})?)`;
/** A price stands last on its line and says its currency: '..., EUR 29', '... - 29 euro', '... ($7.50)'. */
const PRICES = [
  new RegExp(String.raw`[\s,;:(\u2013\u2014-]*(?<![\p{L}\d])${CURRENCY} ?${AMOUNT}\)?\s*$`, 'iu'),
  new RegExp(String.raw`[\s,;:(\u2013\u2014-]+${AMOUNT} ?${CURRENCY}(?![\p{L}\d])\)?\s*$`, 'iu'),
];

/** A line without what it says about money. */
export interface Priced {
  readonly text: string;
  /** Price of one, in the garage's currency: other currencies are taken as they stand. */
  readonly price?: number;
  readonly forSale: boolean;
}

/** Whether a heading says that what stands below it is to be bought. */
export function isShoppingHeading(heading: string): boolean {
  return TO_BUY.test(heading);
}

/** Takes the price off the end of a line, and 'for sale' out of it. */
export function pricedLine(text: string): Priced {
  const forSale = TO_BUY.test(text);
  let rest = text;
  let price: number | undefined;
  for (const pattern of PRICES) {
    const found = pattern.exec(rest);
    if (found === null || found.index === 0) continue;
    price = Number((found[1] ?? '').replace(',', '.'));
    rest = rest.slice(0, found.index);
    break;
  }
  if (forSale) rest = rest.replace(TO_BUY, ' ').replace(/[\s,;:(\u2013\u2014-]+\)?\s*$/u, '');
  return { text: rest.trim(), forSale, ...(price === undefined ? {} : { price }) };
}
