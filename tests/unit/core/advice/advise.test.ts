import fc from 'fast-check';
import { expect, test } from 'vitest';
import { advise } from '../../../../src/core/advice/advise.ts';
import { inches, mm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { withCells } from '../../../../src/core/show/withCells.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';
import { randomCells, randomSettings } from '../row/randomRows.ts';
import { rowOfCells } from '../row/rowOfCells.ts';
import { runs } from '../../../soak.ts';

const sizes = [
	{ name: 'Small', width: '400 mm', height: '300 mm' },
	{ name: 'Square', width: '500 mm', height: '500 mm' },
];
const { settings } = readSettings({ ...wideShow, sizes });
const adviceFor = (line: string) => {
	const row = rowOf(line);
	return advise(row, judgeRow(row, settings), settings);
};

test.each([
	[
		'shape 1:1',
		'Keep the border and crop to 466 × 308 mm: 33.9 % of the height is cut off; side 70, top 70, bottom 78 mm.',
	],
	['shape 1:1', 'Use the size Square: side 74, top 70, bottom 78 mm, picture 358 × 358 mm.'],
	['shape 1:1', 'Cut a mount of 442 × 450 mm to fit: side 70, top 70, bottom 78 mm, picture 308 × 308 mm.'],
	['shape 1:1', 'Print it at 308 × 308 mm, the largest that keeps your border: side 149, top 70, bottom 78 mm.'],
	['shape 16:9', 'Print it at 374 × 210.4 mm for even borders: side 116, top 116, bottom 130 mm.'],
	['picture 640 x 480', 'Cut a mount of 774 × 622 mm to fit: side 70, top 70, bottom 78 mm, picture 640 × 480 mm.'],
])('%s: %s', (line, message) => expect(adviceFor(line).advice.map((advice) => advice.message)).toContain(message));

test('says where a shape cannot have even borders', () => {
	expect(adviceFor('shape 1:1').cannotBeEven).toBe(
		'A picture of this shape cannot have even borders in a mount of 600 × 450 mm.',
	);
	expect(adviceFor('shape 16:9').cannotBeEven).toBeUndefined();
});

test('a row in order is advised nothing', () => expect(adviceFor('shape 3:2').advice).toEqual([]));

test('what comes out even stands first', () => {
	const even = adviceFor('shape 1:1').advice.map(({ saysEven }) => saysEven);
	expect(even).toEqual([...even].sort((a, b) => Number(b) - Number(a)));
});

test('advice, taken, gives the figures it promised, no conflict, no new stop, and no uneven where it said even', () =>
	fc.assert(
		fc.property(randomCells, randomSettings, (cells, random) => {
			const show = {
				...random,
				sizes: [
					{ name: 'Small', width: mm(400), height: mm(300) },
					{ name: 'Inches', width: inches(20), height: inches(16) },
				],
			};
			const row = rowOfCells(cells);
			const before = judgeRow(row, show);
			const stops = before.findings.filter(({ level }) => level === 'stop').map(({ code }) => code);
			for (const { change, promised, saysEven } of advise(row, before, show).advice) {
				const after = judgeRow(withCells(row, change, show), show);
				const codes = after.findings.map(({ code }) => code);
				expect(after.solved).toEqual(promised);
				expect(codes).not.toContain('adds-up');
				expect(codes).not.toContain('does-not-fit');
				for (const { code, level } of after.findings) if (level === 'stop') expect(stops).toContain(code);
				if (saysEven) expect(codes).not.toContain('uneven');
			}
		}),
		{ numRuns: runs(40, 20_000) },
	));
