/** No odometer shows more than this. */
export const MOST_KM = 9_999_999;
