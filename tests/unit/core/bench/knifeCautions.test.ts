import { expect, test } from 'vitest';
import { knifeCautions } from '../../../../src/core/bench/knifeCautions.ts';

const texts = import.meta.glob<string>(['../../../../src/{ui,pages}/**/*.{svelte,ts}', '../../../../README.md'], {
	query: '?raw',
	import: 'default',
	eager: true,
});

const says = (end: string, words: string) =>
	Object.entries(texts)
		.find(([path]) => path.endsWith(end))![1]
		.replace(/\s+/g, ' ')
		.includes(words);

test('nobody is told to push a blade away from the body: an arm ends before a sheet of 1200 mm does', () => {
	const telling = Object.entries(texts).filter(([, text]) =>
		/away\s+from\s+(yourself|your body|the body|you)\b/i.test(text),
	);
	expect(telling.map(([path]) => path)).toEqual([]);
});

// Sources of what is asked: see knifeCautions.ts.
test.each([
	['stance', /beside the line.*past your side.*No hand and no knee in front/],
	['straightEdge', /longer than the cut.*clamped or held from behind/],
	['strokes', /stroke light/],
	['lifting', /Two people lift/],
	['rules', /local rules.*training come first/],
	['inShort', /beside the line.*past your side.*no hand or knee.*light.*rules and training first/],
] as const)('what is said of %s', (about, words) => expect(knifeCautions[about]).toMatch(words));

test.each([
	['pages/KnifePage.svelte', ['stance', 'straightEdge', 'strokes', 'lifting', 'rules']],
	['pages/CutPage.svelte', ['stance', 'rules']],
	['pages/BenchPage.svelte', ['stance', 'straightEdge', 'strokes', 'lifting', 'rules']],
	['ui/paper/PaperFrame.svelte', ['inShort']],
] as const)('%s says it', (page, all) => {
	for (const about of all) expect(says(page, `knifeCautions.${about}`), about).toBe(true);
});

test('README says it too', () => {
	for (const about of ['stance', 'lifting'] as const) expect(says('README.md', knifeCautions[about]), about).toBe(true);
});
