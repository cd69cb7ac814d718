import type { BuiltFile } from './builtFiles.ts';

/** The ways in which a file is asked for, one after the other: what the browser has kept may be what is wrong. */
const tries: readonly { readonly cache: RequestCache; readonly afterMs: number }[] = [
	{ cache: 'default', afterMs: 0 },
	{ cache: 'reload', afterMs: 0 },
	{ cache: 'reload', afterMs: 1000 },
];

/** How long one try may take. A network that has gone silent would hold up all others. */
const longestMs = 120_000;

/** What bytes are known by: their SHA-256, as a page says it of its scripts. */
export async function integrityOf(bytes: ArrayBuffer | Uint8Array<ArrayBuffer>): Promise<string> {
	const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
	return `sha256-${btoa(String.fromCharCode(...digest))}`;
}

/**
 * Fetches a file from the host. What a network puts in its place, and what arrives in part, is not accepted as the file.
 * @returns rejects, naming the file, where it does not come exactly as it was built
 */
export async function fetchBuilt(file: BuiltFile, address: string): Promise<ArrayBuffer> {
	let problem = '';
	for (const { cache, afterMs } of tries) {
		if (afterMs > 0) await new Promise((resolve) => setTimeout(resolve, afterMs));
		try {
			const signal = AbortSignal.timeout(longestMs);
			const response = await fetch(address, { cache, mode: 'same-origin', signal });
			const bytes = await response.arrayBuffer();
			if (response.ok && (await integrityOf(bytes)) === file.integrity) return bytes;
			problem = response.ok ? 'what came is not what was built' : `status ${response.status}`;
		} catch (cause) {
			problem = (cause as Error).message;
		}
	}
	throw new Error(`${file.url} is not kept: ${problem}`);
}
