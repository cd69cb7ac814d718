/** An amount in whole minor units of the show's currency, as it is shown: `1250` is `12.50`. */
export const formatMoney = (minorUnits: number): string => (minorUnits / 100).toFixed(2);
