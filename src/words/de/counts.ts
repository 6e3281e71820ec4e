/** Zahlen mit dem, was gezählt wird. */

export const orders = (count: number): string => (count === 1 ? '1 Bestellung' : `${count} Bestellungen`);
