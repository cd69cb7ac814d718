import { expect, test } from 'vitest';
import { knifeCautions } from '../../../../src/core/bench/knifeCautions.ts';
import { windowCautions } from '../../../../src/core/bench/windowCautions.ts';

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
	['marking', /sheet’s number on the back.*the back of each blank.*print’s number.*arrow pointing at its bottom/],
	['atStep', /longer than the cut.*hand off the line/],
	['inShort', /beside the line.*past your side.*no hand or knee.*light.*rules and training first/],
] as const)('what is said of %s', (about, words) => expect(knifeCautions[about]).toMatch(words));

// Common practice at the bench: see windowCautions.ts.
test.each([
	['marking', /number on the back.*arrow pointing at the bottom/],
	['laying', /face down on a waste strip.*how deep.*test cut in an offcut of the same board/],
	['stroke', /one steady stroke/],
	['hands', /behind the blade, away from the edge that it runs along/],
	['blade', /Cover the blade when you put it down/],
	['rules', /local rules.*training come first/],
	['atStep', /^Face down, a waste strip under it, your hand behind the blade/],
	['inShort', /face down.*depth.*offcut.*one steady stroke.*behind the blade.*cover.*rules and training first/i],
] as const)('what is said of windows, %s', (about, words) => expect(windowCautions[about]).toMatch(words));

test('where nothing lies under the mount, no waste strip is asked for', () => {
	for (const words of [windowCautions.layingBare, windowCautions.atStepBare])
		expect(words).toMatch(/face down(?!.*strip)/i);
});

test('windows are not cut as sheets are: upright, in several light strokes', () => {
	expect(Object.values(windowCautions).join(' ')).not.toMatch(/upright|light stroke|two or three/i);
	for (const page of ['pages/BenchPage.svelte', 'pages/CutPage.svelte'])
		expect(says(page, 'knifeCautions'), page).toBe(false);
});

test.each([
	['pages/KnifePage.svelte', ['marking', 'stance', 'straightEdge', 'strokes', 'lifting', 'rules', 'atStep']],
	['ui/paper/PaperFrame.svelte', ['inShort']],
] as const)('%s says it', (page, all) => {
	for (const about of all) expect(says(page, `knifeCautions.${about}`), about).toBe(true);
});

test.each([
	['pages/BenchPage.svelte', ['marking', 'laying', 'layingBare', 'stroke', 'hands', 'blade', 'rules']],
	['pages/CutPage.svelte', ['stroke', 'hands', 'blade', 'rules', 'atStep', 'atStepBare']],
	['paper/listDocument.ts', ['inShort']],
	['ui/paper/ListPaper.svelte', ['marking']],
	['paper/marksDocument.ts', ['inShort']],
	['paper/templatesDocument.ts', ['inShort']],
] as const)('%s says it of windows', (page, all) => {
	for (const about of all) expect(says(page, `windowCautions.${about}`), about).toBe(true);
});

test('README says it too', () => {
	for (const about of ['laying', 'stroke', 'hands', 'blade'] as const)
		expect(says('README.md', windowCautions[about]), about).toBe(true);
	for (const about of ['stance', 'lifting'] as const) expect(says('README.md', knifeCautions[about]), about).toBe(true);
});
