import { expect, test } from 'vitest';
import { timesOf } from '../../bench/timesOf.ts';

const node = (id: number, functionName: string, children: readonly number[] = []) => ({
	id,
	callFrame: { functionName, url: functionName.startsWith('(') ? '' : 'http://host/assets/app.js', lineNumber: id },
	children,
});

test('a function has its own time and that of what it calls, once where it calls itself; waiting is no work', () => {
	const nodes = [
		node(1, '(root)', [2, 5]),
		node(2, 'outer', [3]),
		node(3, 'inner', [4]),
		{ ...node(4, 'outer'), callFrame: node(2, 'outer').callFrame },
		node(5, '(idle)'),
	];
	const times = timesOf({ nodes, samples: [2, 3, 4, 5, 5], timeDeltas: [0, 1000, 2000, 3000, 50_000] });
	expect(times).toEqual([
		{ name: 'outer app.js:3', selfMs: 4, totalMs: 6 },
		{ name: 'inner app.js:4', selfMs: 2, totalMs: 5 },
	]);
});
