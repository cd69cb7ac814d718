import { vi } from 'vitest';

/** What a browser keeps beside its database, in memory: notes and caches, as a page sees them. */
export interface OutsideDatabase {
	readonly notes: Map<string, string>;
	/** The texts of all caches, by their addresses. */
	readonly kept: Map<string, string>;
}

/** Gives the page a browser that keeps notes and caches; they live as long as what is returned. */
export function keepOutside(outside: OutsideDatabase = { notes: new Map(), kept: new Map() }): OutsideDatabase {
	const { notes, kept } = outside;
	vi.stubGlobal('localStorage', {
		getItem: (key: string) => notes.get(key) ?? null,
		setItem: (key: string, text: string) => void notes.set(key, text),
		removeItem: (key: string) => void notes.delete(key),
	});
	const cache = (name: string) => ({
		keys: () => {
			const ours = [...kept.keys()].filter((key) => key.startsWith(`${name} `));
			return Promise.resolve(ours.map((key) => ({ url: key.slice(name.length + 1) })));
		},
		match: (url: string) => {
			const text = kept.get(`${name} ${url}`);
			return Promise.resolve(text === undefined ? undefined : new Response(text));
		},
		put: async (url: string, response: Response) => void kept.set(`${name} ${url}`, await response.text()),
		delete: (url: string) => Promise.resolve(kept.delete(`${name} ${url}`)),
	});
	vi.stubGlobal('caches', {
		has: (name: string) => Promise.resolve([...kept.keys()].some((key) => key.startsWith(`${name} `))),
		open: (name: string) => Promise.resolve(cache(name)),
	});
	return outside;
}
