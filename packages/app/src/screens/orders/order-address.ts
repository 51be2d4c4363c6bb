/** Where a work order is shown. */
export const orderAddress = (order: string): string => `/order/${encodeURIComponent(order)}`;
