import { expect, test } from 'vitest';
import { choosePaper } from '../harness/screens.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { openFirstShow, showOf } from '../harness/openShow.ts';
import { type Line, linesOf, pagesOf, pastMargins } from '../harness/pdfPages.ts';
import { oneStage } from '../screens/oneStage.ts';

const onPaper = oneStage({ reducedMotion: 'reduce' });

// 500 × 400 framed: a rebate without play, a face no wider than its lip.
const frames = [{ name: 'Plain', clearance: 0, moulding: 20, lip: 20, weight: 0 }];
const show = (hanging: object) =>
	showOf(
		'Low water',
		{ unit: 'mm', frames, hanging, walls: [{ name: 'North', length: 4000, height: 2600 }] },
		['Ebb', 'Quay'].map((title) => ({ title, 'mount width': '500', 'mount height': '400', frame: 'Plain' })),
	);

const lengthOf = ({ from, to }: Line) => Math.hypot(to[0] - from[0], to[1] - from[1]);
const isLevel = ({ from, to }: Line) => Math.abs(from[1] - to[1]) < 0.01;

/** The mark of a page, and the frame's edges, as they come out, in mm from the lower left corner. */
function drawnOn(lines: readonly Line[]) {
	const [upright] = lines.filter((line) => !isLevel(line) && Math.abs(lengthOf(line) - 20) < 0.3) as [Line];
	const edges = lines.filter((line) => lengthOf(line) > 105);
	const top = edges.find(isLevel)!;
	const sides = edges.filter((line) => !isLevel(line) && Math.abs(line.from[1] - top.from[1]) < 0.3);
	return {
		x: upright.from[0],
		y: (upright.from[1] + upright.to[1]) / 2,
		top: top.from[1],
		sides: sides.map(({ from }) => from[0]),
	};
}

test.each([
	// a third down less the rise of a cord with 5 % slack: 400/3 − √(231² − 220²)
	{
		hanging: {},
		paper: 'A4',
		pages: 1,
		drop: 62.9,
		sides: [[]],
		isPlanned: true,
		said: ['Hook above the floor about 1587 mm', 'From the wall’s left 1250 mm'],
	},
	{
		hanging: { kind: 'two hooks', rings: '80 mm' },
		paper: 'Letter',
		pages: 2,
		drop: 80,
		sides: [[-30], [30]],
		isPlanned: false,
		said: [
			...['Ring 1 above the floor 1570 mm', 'Ring 1 from the wall’s left 1030 mm'],
			...['Ring 2 above the floor 1570 mm', 'Ring 2 from the wall’s left 1470 mm'],
		],
	},
])(
	'marks lie on $paper as far under the frame’s top as on the wall: $drop mm',
	({ hanging, paper, pages: count, drop, sides, isPlanned, said }) =>
		onPaper(async (page) => {
			await openFirstShow(page, show(hanging));
			// Of two prints on 4 m, the first hangs 1000 mm from the left end, its middle 1450 mm above the floor.
			await goByAddress(page, 'wall');
			await page.getByRole('button', { name: /^Ebb, on / }).click();
			const figures = page.getByRole('region', { name: 'Ebb' }).locator('dl > div');
			await figures.first().waitFor();
			const words = await figures.allInnerTexts();
			expect(words.slice(0, said.length).map((each) => each.replaceAll(/\s+/g, ' '))).toEqual(said);
			await goByAddress(page, 'paper');
			await choosePaper(page, 'Hook marks, true to size');
			await page.getByRole('radio', { name: paper }).check();
			await page
				.getByRole('img', { name: /below the frame’s top/ })
				.first()
				.waitFor();
			const pages = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
			expect(pages).toHaveLength(count);
			const { width, height } = pages[0]!;
			expect(pastMargins(pages, { width, height })).toEqual([]);
			for (const [at, each] of pages.entries()) {
				const lines = await linesOf(each);
				// The line to check by.
				expect(lines.filter((line) => isLevel(line) && Math.abs(lengthOf(line) - 100) < 0.3)).toHaveLength(1);
				const drawn = drawnOn(lines);
				expect(Math.abs(drawn.top - drawn.y - drop)).toBeLessThanOrEqual(0.3);
				expect(drawn.sides).toHaveLength(sides[at]!.length);
				for (const [place, side] of sides[at]!.entries())
					expect(Math.abs(drawn.sides[place]! - drawn.x - side)).toBeLessThanOrEqual(0.3);
				const printed = each.texts.map(({ text }) => text).join(' ');
				expect(printed).toContain('Ebb');
				expect(printed).toContain('Quay');
				// A cord is never as it was reckoned.
				expect(printed.includes('only right for a cord that measures 63')).toBe(isPlanned);
			}
		}),
);
