// How much of an icon's square stays empty around the mark.

/**
 * The largest one stands in the stores, on a plate among others: 96 px of it are drawn, with 16 px around them (Chromium's store asks for this; from
 * memory). The smaller ones stand in the browser's own bars and lists, where every pixel is needed.
 */
export const marginOf = (side: number): number => (side === 128 ? 16 : 0);
