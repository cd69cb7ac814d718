import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { aptInstall, onPath, run } from './programs.ts';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/** Chromium without the windows of a browser: the same engine for half the processor time. */
const headlessShell = 'chromium-headless-shell';

const usualPlaces = [
	'/snap/bin/chromium',
	'/Applications/Chromium.app/Contents/MacOS/Chromium',
	'/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** What to do where no Chromium was found and none could be had. */
export const whatToDo =
	'The browser tests need Chromium. Install it (Debian: apt-get install chromium), or run ' +
	'"npx playwright-core install --with-deps chromium", or set CHROME_PATH to the program.';

/** The Chromium that is installed; undefined if there is none in the usual places. */
export const installedChromium = (): string | undefined =>
	onPath(...names) ?? [...usualPlaces, chromium.executablePath()].find((place) => existsSync(place));

/**
 * The Chromium that the tests run in: the one named by CHROME_PATH, else an installed one, else one that is installed
 * now, by the system's package manager (Debian, as root) or by Playwright.
 * @throws Error saying what to do, if none could be had
 */
export function findChromium(): string {
	const named = process.env.CHROME_PATH;
	if (named) {
		if (existsSync(named)) return named;
		throw new Error(`CHROME_PATH is "${named}", and there is no such file. ${whatToDo}`);
	}
	const installed = installedChromium();
	if (installed !== undefined) return installed;
	console.log('No Chromium is installed; getting one.');
	aptInstall('chromium');
	if (installedChromium() !== undefined) aptInstall(headlessShell); // a release without it is none the worse
	if (installedChromium() === undefined) run('npx', 'playwright-core', 'install', 'chromium');
	const got = installedChromium();
	if (got === undefined) throw new Error(whatToDo);
	return got;
}

/**
 * The Chromium for plays that need no browser around the page: its headless shell, where one is installed, else what
 * {@link findChromium} finds.
 * @throws Error as findChromium does
 */
export function findShell(): string {
	return (process.env.CHROME_PATH ? undefined : onPath(headlessShell)) ?? findChromium();
}
