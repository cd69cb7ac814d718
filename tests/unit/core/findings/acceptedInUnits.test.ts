import { describe, expect, test } from 'vitest';
import { accept, withdraw } from '../../../../src/core/findings/accepted.ts';
import type { Unit } from '../../../../src/core/length/reading.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { changeSettings } from '../../../../src/core/commands/changeSettings.ts';
import { apply } from '../../../../src/core/show/edit.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { rowOf, wideShow, withChange } from './rowOf.ts';

const inCm: TypedSettings = { ...wideShow, unit: 'cm' };
const framed: TypedSettings = { ...wideShow, frames: [{ name: 'Oak 30', width: 601, height: 451, lip: 6 }] };
const guided: TypedSettings = { ...wideShow, bench: { greatest: '90 mm', least: '50 mm' } };
const inInches: TypedSettings = { unit: 'in', mountSize: '20 x 16 in', border: '2 1/2 in' };
const guidedInInches: TypedSettings = { ...inInches, bench: { greatest: '3 in' } };

/** Looks as they were accepted by the figures of their sentences, before they were known by lengths: written by that program. */
const formerly: readonly (readonly [string, TypedSettings, ...string[]])[] = [
	['title Tide', wideShow, 'needs-size(466/308)'],
	['picture width 456', wideShow, 'needs-size(308)'],
	['window width 13 1/3 in', inInches, 'needs-size(13/37/64/11)', 'uneven(3/21/64/2½/53/64/33/15)'],
	['picture 528 x 339, mount width 620', wideShow, 'own-size(620/481/600/450)', 'uneven(49/70/21/43/15)'],
	['shape 4:5, picture 360 x 240', wideShow, 'shape-clash(360/240/4:5/46.7)', 'uneven(123/102/21/21/15)'],
	[
		'picture 300 x 200, mount width 400, mount height 500',
		wideShow,
		'own-size(400/500/600/450)',
		'turned(300/200/400/500)',
		'uneven(53/144/91/172/15)',
	],
	['picture 308 x 308', wideShow, 'uneven(149/70/79/113/15)'],
	['picture 30.8 x 30.8', inCm, 'uneven(14.9/7/7.9/113/15)'],
	['picture 8 5/16 x 8 5/16', inInches, 'uneven(6/3¾/2¼/60/15)'],
	['picture 528 x 339', wideShow, 'uneven(39/55/16/41/15)', 'thin-border(39/40)'],
	['picture 18 1/3 x 10', inInches, 'uneven(1/3/2/200/15)', 'thin-border(1/1½)'],
	['picture 520 x 340', framed, 'uneven(43/55/12/28/15)', 'lip-shrinks(30/37.6/43/40)'],
	['picture 456 x 306, top 80, bottom 70', wideShow, 'top-heavy(70/10/80)'],
	['picture 456 x 306, top 40', wideShow, 'uneven(75/40/35/88/15)', 'bottom-heavy(110/70/40)'],
	['picture 456 x 306, window 462 x 310, paper A3', wideShow, 'bare-paper(462/456/3)', 'bare-paper(310/306/2)'],
	['picture 456 x 306, overlap 1', wideShow, 'thin-overlap(1/2)'],
	['picture 456 x 306, overlap 0, paper A2', wideShow, 'thin-overlap(2)', 'paper-crowds(3/5)'],
	['picture 456 x 306, reveal 6, paper 470 x 325', wideShow, 'paper-short(1/5)', 'paper-short(3.5/5)'],
	['picture 456 x 306, reveal 6, paper 468 x 340', wideShow, 'paper-short(5)'],
	['picture 12 x 8, reveal 1/8, paper 12 3/8 x 9', inInches, 'paper-short(1/16/¼)'],
	['mount none, picture 300 x 200, glazing acrylic, surface matt', wideShow, 'touches-glass()'],
	['picture 456 x 306, signed on margin', wideShow, 'signature-covered(3)'],
	['picture 456 x 306, signed on mount', wideShow, 'signed-on-mount()'],
	['picture 456 x 306, edition 3/25, copies 2', wideShow, 'edition-clash(3/25/2)'],
	['picture 400 x 306', guided, 'uneven(103/71/32/45/15)', 'past-guide(103/50/90)'],
	['picture 12 x 8, side 3 5/16, mount fit', guidedInInches, 'past-guide(3/5/16/3)', 'past-guide(3/5/16/3⅝/3)'],
];

const looksOf = (row: Row, settings: TypedSettings) =>
	judgeRow(row, readSettings(settings).settings).findings.filter(({ level }) => level === 'look');
const codes = (row: Row, settings: TypedSettings) => looksOf(row, settings).map(({ code }) => code);

/** The row and the settings of a show that changes its unit. */
function inUnit(row: Row, settings: TypedSettings, unit: Unit): readonly [Row, TypedSettings] {
	const show = { id: 'show', name: 'Spring', rows: [row], settings };
	const after = apply(show, changeSettings(show, { unit }, 'unit'));
	return [after.rows[0]!, after.settings];
}

const cases = formerly.map(([line, settings, ...texts]) => ({ line, settings, texts }));

describe.each(cases)('$line', ({ line, settings, texts }) => {
	const row = rowOf(line);
	const units = (['mm', 'cm', 'in'] as const).filter((unit) => unit !== settings.unit);

	test('what is accepted stays accepted in another unit', () => {
		let accepted = row;
		for (const look of looksOf(row, settings)) accepted = withChange(accepted, accept([look], accepted));
		expect(codes(accepted, settings)).toEqual([]);
		for (const unit of units) expect(codes(...inUnit(accepted, settings, unit))).toEqual([]);
	});

	test('what was accepted by the figures of a sentence is accepted, in that unit and in another', () => {
		const before = codes(row, settings);
		for (const text of texts) {
			const accepted = withChange(row, { accepted: text });
			const code = text.slice(0, text.indexOf('('));
			const after = codes(accepted, settings);
			expect(after.length).toBeLessThan(before.length);
			expect(after.filter((each) => each !== code)).toEqual(before.filter((each) => each !== code));
			for (const unit of units) expect(codes(...inUnit(accepted, settings, unit))).toEqual(after);
		}
	});

	test('it is told again where any of those figures is another', () => {
		for (const text of texts) {
			const figures = text.match(/\d+/g) ?? [];
			figures.forEach((_, place) => {
				let i = 0;
				const other = text.replace(/\d+/g, (figure) => (i++ === place ? `${3 * Number(figure) + 1}` : figure));
				expect(codes(withChange(row, { accepted: other }), settings)).toEqual(codes(row, settings));
			});
		}
	});
});

test('taken back, the former text goes too; accepted again, the new one stands alone', () => {
	const row = rowOf('picture 308 x 308');
	const formerlyAccepted = withChange(row, { accepted: 'uneven(149/70/79/113/15)' });
	const [look] = looksOf(row, wideShow);
	expect(withdraw([look!], formerlyAccepted)).toEqual({ accepted: '' });
	expect(accept([look!], formerlyAccepted)).toEqual(accept([look!], row));
});

test('the same figures elsewhere are another finding', () => {
	const atSide = rowOf('picture 456 x 306, overlap 1');
	const [first, second] = looksOf(atSide, wideShow).filter(({ code }) => code === 'thin-overlap');
	expect(accept([first!], atSide)).not.toEqual(accept([second!], atSide));
});
