import type { InputSource } from './inputs.ts';

/** Browsers other than the one of `npm test`, by the engine that their pages run in. */
export type Engine = 'Firefox' | 'WebKit';

/** A window of some browser, as much of it as the plays need. What a person does is made of this in `person.ts`. */
export interface Tab {
	/** Opens an address and waits until it is loaded. */
	go(address: string): Promise<void>;
	/** Loads the page once more and waits until it is loaded. */
	reload(): Promise<void>;
	/**
	 * Runs a function in the page. It must stand on its own: it sees the page and what it is given, and nothing else.
	 * @returns what it gives or resolves with, as JSON holds it
	 */
	ask<Result, Given>(work: (given: Given) => Result | Promise<Result>, given: Given): Promise<Result>;
	/** Has the mouse or the keyboard do something, as a person's hand would, and lets go of everything. */
	perform(source: InputSource): Promise<void>;
	/** What went wrong in the page so far: errors that nothing caught, breaches of its policy. */
	problems(): Promise<readonly string[]>;
	/** Ends the browser, and everything that was started for it. */
	close(): Promise<void>;
}

/** Where a browser may put things; the caller makes the folders and removes them. */
export interface Folders {
	/** For its own files. */
	readonly profile: string;
	/** For what is downloaded. */
	readonly downloads: string;
}

/** The size of the window: a tablet, lying. */
export const windowSize = { width: 1180, height: 820 };
