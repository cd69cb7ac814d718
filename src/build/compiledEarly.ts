import type { Plugin, Rolldown } from 'vite';

/**
 * Has a browser compile a script whole while it arrives, beside the page's thread. Else it only skims each function there,
 * and compiles it on the page's thread when it is first called: some two thousand before the first key. Browsers that do
 * not know the comment pass over it. Source: "Explicit JavaScript compile hints", V8 13.6.
 */
export const compileHint = '//# allFunctionsCalledOnLoad\n';

/** The files of the build (`sharedParts.ts`) of which the most is called before the first key. */
const calledEarly = new Set(['core', 'first', 'hands', 'work', 'later']);

const isCalledEarly = ({ name }: { readonly name: string }): boolean => calledEarly.has(name);

/** Writes the hint into those files, first of all: behind any code it is a comment like another. */
export const compiledEarly = (): Plugin => ({
	name: 'evenhang-compiled-early',
	apply: 'build',
	// A file that was built before there was a hint has another name: no copy of it is taken for this one.
	augmentChunkHash: (chunk) => (isCalledEarly(chunk) ? compileHint : undefined),
	generateBundle: {
		order: 'post', // the build writes into the heads of scripts until then
		handler(_options, bundle) {
			const isScript = (built: Rolldown.OutputChunk | Rolldown.OutputAsset) => built.type === 'chunk';
			const early = Object.values(bundle).filter(isScript).filter(isCalledEarly);
			const missing = [...calledEarly].filter((name) => !early.some((chunk) => chunk.name === name));
			if (missing.length > 0) this.error(`no file of the build is called ${missing.join(', ')}`);
			for (const chunk of early) chunk.code = compileHint + chunk.code;
		},
	},
});
