/** What Enter does on a cell that is not open: opens it, or goes to the cell below. */
export type EnterHabit = 'open' | 'down';
