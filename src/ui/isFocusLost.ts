/** Whether nothing has the focus, as when what had it has gone from the page. */
export const isFocusLost = (): boolean => document.activeElement === null || document.activeElement === document.body;
