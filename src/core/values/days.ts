import { onceMade } from './onceMade.ts';

// Made once: a format made for each date takes longer than all the rest of a long list.
const day = onceMade(() => new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }));
const time = onceMade(() => new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' }));

/**
 * A day in words, the same on every screen and on paper: `5 November 2026`.
 * @param at milliseconds since 1970, as `Date.now` has them
 */
export const dayWords = (at: number): string => day().format(at);

/** A day and the time of it: `5 November 2026, 14:05`. */
export const momentWords = (at: number): string => `${day().format(at)}, ${time().format(at)}`;
