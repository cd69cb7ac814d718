import type { Tab } from './tab.ts';

/** Has the page write down what goes wrong from now on. It runs in the page and must stand on its own. */
export function writeDownProblems(): void {
	const page = window as unknown as { problems?: string[] };
	if (page.problems) return;
	const problems: string[] = [];
	page.problems = problems;
	addEventListener('error', ({ message, filename, lineno }) => problems.push(`${message} (${filename}:${lineno})`));
	addEventListener('unhandledrejection', ({ reason }) => problems.push(`not caught: ${String(reason)}`));
	document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
		problems.push(`policy breached: ${violatedDirective} ${blockedURI}`),
	);
}

/** What the page has written down. */
export const problemsWritten = (tab: Pick<Tab, 'ask'>): Promise<readonly string[]> =>
	tab.ask(() => (window as unknown as { problems?: string[] }).problems ?? ['the page wrote nothing down'], undefined);

/** A function and what it is given, as a text that calls it. */
export const called = (work: (given: never) => unknown, given: unknown): string =>
	`(${work.toString()})(${given === undefined ? '' : JSON.stringify(given)})`;
