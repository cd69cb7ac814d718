/** The part of the Trusted Types interface that is used; not every browser has it, and TypeScript does not know it. */
interface TrustedTypesFactory {
	createPolicy(name: string, rules: { createScriptURL: (url: string) => string }): unknown;
}

/**
 * Whether a script at `url` belongs to the app that the page at `page` is: same origin, same folder or below it.
 * @throws TypeError if `url` is no address
 */
export function isOwnScript(url: string, page: string): boolean {
	const { origin, pathname } = new URL(url, page);
	return `${origin}${pathname}`.startsWith(new URL('.', page).href);
}

/**
 * Lets the app's own service worker and workers be started. The page's policy takes no plain text for the address of a
 * script; this hands out addresses inside the app's folder and refuses all others. Call it once, before anything else.
 */
export function trustOwnScripts(): void {
	const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypesFactory };
	trustedTypes?.createPolicy('default', {
		createScriptURL(url) {
			if (isOwnScript(url, document.baseURI)) return url;
			throw new TypeError(`not a script of this app: ${url}`);
		},
	});
}
