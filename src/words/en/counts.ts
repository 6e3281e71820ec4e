/** Numbers with what is counted. */

export const orders = (count: number): string => (count === 1 ? '1 order' : `${count} orders`);
