import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { isSoak } from '../../soak.ts';

/** What axe looks at and for. */
export interface AxeOptions {
	/** The only rules to look for. Default: all that are on. */
	readonly rules?: readonly string[];
	/** A selector of what is not looked at. */
	readonly without?: string | undefined;
	/**
	 * Whether contrast is looked at too, which takes as long as all other rules together. Default: in the soak; in `npm test` on
	 * each screen (`axe/onScreens.ts`), which has the colours that are used within plays.
	 */
	readonly hasContrast?: boolean;
}

/** What axe finds wrong in the page as it stands, one line each; empty if nothing. */
export async function axeProblems(
	page: Page,
	{ rules, without, hasContrast = isSoak || rules !== undefined }: AxeOptions = {},
): Promise<string[]> {
	// Sent as the debugger's own code, which the page's policy does not concern; a script tag would breach it.
	// No rule that is on asks for the style sheets and the media again, which takes as long as all the rules.
	const options = {
		resultTypes: ['violations'],
		preload: false,
		...(rules && { runOnly: rules }),
		...(!hasContrast && { rules: { 'color-contrast': { enabled: false } } }),
	};
	const context = { include: [['html']], exclude: without === undefined ? [] : [[without]] };
	const debug = await page.context().newCDPSession(page);
	try {
		const { result: isThere } = await debug.send('Runtime.evaluate', { expression: "typeof axe === 'object'" });
		if (isThere.value !== true) await debug.send('Runtime.evaluate', { expression: `${axe.source};0` });
		const { result, exceptionDetails } = await debug.send('Runtime.evaluate', {
			expression: `axe.run(${JSON.stringify(context)}, ${JSON.stringify(options)}).then(({ violations }) =>
				violations.flatMap(({ id, help, nodes }) =>
					nodes.map(({ target, failureSummary }) => id + ': ' + help + ' at ' + target.join(' ') + ' - ' + failureSummary)))`,
			awaitPromise: true,
			returnByValue: true,
		});
		if (exceptionDetails) throw new Error(`axe failed: ${exceptionDetails.text}`);
		return result.value as string[];
	} finally {
		await debug.detach();
	}
}
