import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatLength } from '../../../../src/core/length/formatLength.ts';
import { inches, length, mm, plus } from '../../../../src/core/length/length.ts';
import { placeOnPaper } from '../../../../src/core/row/paper.ts';
import { shownMargins } from '../../../../src/core/row/shownMargins.ts';

const inTheMiddle = { marginLeft: undefined, marginTop: undefined };
const metric = { unit: 'mm', ruler: mm(1) } as const;

test('9.8 + 309.3 + 9.9 are the 329 of the paper, as they are shown', () => {
	const on = placeOnPaper({ width: mm(483), height: mm(329) }, { width: mm(464), height: mm(309.333333) }, inTheMiddle);
	const { left, right, top, bottom } = shownMargins(on, metric);
	expect([left, right, top, bottom].map((each) => formatLength(each, metric))).toEqual(['9.5', '9.5', '9.8', '9.9']);
});

test.each([
	['mm', mm(1), mm(0.1)],
	['cm', mm(1), mm(0.1)],
	['in', inches(1 / 16), inches(1 / 64)],
] as const)(
	'in %s, margins and picture as they are shown add up, and none is far from what it is',
	(unit, ruler, step) => {
		const scale = { unit, ruler };
		const side = fc.integer({ min: 1_000_000, max: 2_000_000_000 }).map(length);
		/** What a shown figure stands for, in steps: `9.8`, `−3/64`, `12 5/16`. */
		const shown = (text: string) => {
			const size = text
				.replace('−', '')
				.split(' ')
				.map((part) => {
					const [over = 0, under = 1] = part.split('/').map(Number);
					return over / under;
				})
				.reduce((sum, part) => sum + part, 0);
			return (text.startsWith('−') ? -1 : 1) * Math.round(size * { mm: 10, cm: 100, in: 64 }[unit]);
		};
		fc.assert(
			fc.property(side, side, fc.option(side, { nil: undefined }), (picture, more, marginLeft) => {
				const paper = plus(picture, more);
				const on = placeOnPaper(
					{ width: paper, height: paper },
					{ width: picture, height: picture },
					{ marginLeft, marginTop: undefined },
				);
				const margins = shownMargins(on, scale);
				const sum = [margins.left, picture, margins.right].reduce(
					(all, each) => all + shown(formatLength(each, scale)),
					0,
				);
				expect(sum).toBe(shown(formatLength(paper, scale)));
				for (const edge of ['left', 'right', 'top', 'bottom'] as const)
					expect(Math.abs(margins[edge] - on[edge])).toBeLessThanOrEqual(1.5 * step + 1);
			}),
		);
	},
);
