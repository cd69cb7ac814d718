/** A file as the build made it. */
export interface BuiltFile {
	/** Where it lies in the folder of the app. */
	readonly url: string;
	/** Its content type. */
	readonly type: string;
	/** The SHA-256 of its bytes, as a page says it of its scripts. */
	readonly integrity: string;
}

declare const self: { readonly __WB_MANIFEST: readonly BuiltFile[] };

/** What was built, but for the service worker itself; the build puts the list in the place of this name (src/build/keptApp.ts). */
export const files = self.__WB_MANIFEST;
