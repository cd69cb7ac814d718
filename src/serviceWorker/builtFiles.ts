/** A file as the build made it. */
export interface BuiltFile {
	/** Where it lies in the folder of the app. */
	readonly path: string;
	/** Its content type. */
	readonly type: string;
	/** The SHA-256 of its bytes, in hexadecimal. */
	readonly sha256: string;
}

/** What was built, but for the service worker itself; the build puts it in the place of this name (vite/offlineFiles.ts). */
declare const builtApp: {
	/** Another one for every build that differs in a byte. */
	readonly version: string;
	readonly files: readonly BuiltFile[];
};

export const { version, files } = builtApp;
