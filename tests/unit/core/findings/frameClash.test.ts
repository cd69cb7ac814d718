import { expect, test } from 'vitest';
import { toMm } from '../../../../src/core/length/length.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { codesOf, resultOf, rowOf } from './rowOf.ts';
import { describeRules, type RuleCase } from './ruleCases.ts';

const oak = { name: 'Oak', rebateWidth: '502 mm', rebateHeight: '402 mm' };
const ash = { name: 'Ash', width: '506 mm', height: '406 mm' };
const framed = (...frames: object[]): TypedSettings => ({ frames });
const inch: TypedSettings = { unit: 'in', frames: [{ name: 'Oak', rebateWidth: '20 1/16', rebateHeight: '16 1/16' }] };

const cases: readonly RuleCase[] = [
	{
		code: 'frame-clash',
		level: 'stop',
		told: 'shape 3:2, mount 506 x 406, frame Oak',
		says: 'The mount’s width 506 is 4 mm too large for the rebate of “Oak”',
		mend: 'Set mount to 499 × 399',
		not: 'shape 3:2, mount 500 x 400, frame Oak',
		show: framed(oak, ash),
	},
	{
		code: 'frame-clash',
		level: 'stop',
		told: 'shape 3:2, mount 506 x 406, frame oak',
		says: 'The mount’s height 406 is 4 mm too large for the rebate of',
		mend: 'Set frame to “Ash”',
		not: 'shape 3:2, mount 506 x 406, frame ash',
		show: framed(oak, ash),
	},
	{
		code: 'frame-clash',
		level: 'stop',
		told: 'shape 3:2, mount 480 x 380, frame Oak',
		says: 'The mount’s width 480 has 22 mm of play in “Oak”, and its lip of 6 mm does not hide a gap',
		mend: 'Set mount to 499 × 399',
		not: 'shape 3:2, mount 497 x 397, frame Oak',
		show: framed({ ...oak, lip: '6 mm' }),
	},
	{
		code: 'frame-clash',
		level: 'look',
		told: 'shape 3:2, mount 480 x 380, frame Oak',
		says: 'The mount’s width 480 has 22 mm of play in “Oak”; 1 to 5 mm is usual',
		mend: 'Set mount to 499 × 399',
		not: 'shape 3:2, mount 497 x 397, frame Oak',
		show: framed(oak),
	},
	{
		code: 'frame-clash',
		level: 'look',
		told: 'shape 3:2, mount 501.5 x 400, frame Oak',
		says: 'The mount’s width 501.5 has 0.5 mm of play',
		mend: 'Set mount to',
		not: 'shape 3:2, mount 501 x 401, frame Oak',
		show: framed(oak),
	},
	{
		code: 'frame-clash',
		level: 'stop',
		told: 'picture 510 x 410, mount none, frame Oak',
		says: 'The picture’s width 510 is 8 mm too large for the rebate of “Oak”',
		not: 'picture 500 x 400, mount none, frame Oak',
		show: framed(oak),
	},
	{
		code: 'frame-clash',
		level: 'stop',
		told: 'picture 450 x 350, paper 410 x 510, mount none, frame Oak',
		says: 'The paper’s height 410 is 8 mm too large for the rebate of',
		mend: 'Set frame to “Elm”',
		not: 'picture 450 x 350, paper 400 x 500, mount none, frame Oak',
		show: framed(oak, { name: 'Elm', width: 410, height: 510 }),
	},
	{
		code: 'frame-clash',
		level: 'stop',
		told: 'shape 3:2, frame Oka',
		says: 'There is no frame “Oka” in the show’s list',
		mend: 'Set frame to “Oak”',
		not: 'shape 3:2, frame none',
		show: framed(oak),
	},
	{
		code: 'frame-clash',
		level: 'stop',
		told: 'shape 3:2',
		says: 'There is no frame “Elm” in the show’s list',
		mend: 'Set frame to “Oak”',
		not: 'shape 3:2, frame Oak',
		show: { ...framed(oak), frame: 'Elm' },
	},
	{
		code: 'frame-clash',
		level: 'look',
		told: 'shape 3:2, mount 20 1/16 x 16, frame Oak',
		says: 'has no play in “Oak”; 1/32 to 3/16 in is usual',
		not: 'shape 3:2, mount 20 x 16, frame Oak',
		show: inch,
	},
];

describeRules(cases);

test('a frame takes a mount either way round: the way with no stop', () => {
	const show = framed({ ...oak, lip: '6 mm' });
	expect(codesOf('shape 2:3, frame Oak', show)).not.toContain('frame-clash');
	// Long side along long side there would be no room in 452 × 448 for 449 × 450; the other way round there is.
	const square = framed({ name: 'Elm', rebateWidth: 452, rebateHeight: 448 + 3 });
	expect(codesOf('shape 1:1, mount 449 x 450, frame Elm', square)).not.toContain('frame-clash');
	const narrow = framed({ name: 'Elm', rebateWidth: 452, rebateHeight: 450 });
	expect(codesOf('shape 1:1, mount 449 x 450, frame Elm', narrow)).not.toContain('frame-clash');
});

test('the frame of a row is the one it names, else the show’s, else the first that takes the mount', () => {
	const nameOf = (line: string, show: TypedSettings) => resultOf(rowOf(line), show).frame.frame?.name;
	const show = framed({ name: 'Moulding' }, { name: 'Elm', width: 800, height: 600 }, oak, ash);
	expect(nameOf('shape 3:2', show)).toBe('Oak');
	expect(nameOf('shape 2:3', show)).toBe('Oak');
	expect(nameOf('shape 3:2, frame elm', show)).toBe('Elm');
	expect(nameOf('shape 3:2, frame none', show)).toBeUndefined();
	expect(nameOf('shape 3:2', { ...show, frame: 'ASH' })).toBe('Ash');
	expect(nameOf('shape 3:2, frame oak', { ...show, frame: 'ASH' })).toBe('Oak');
	expect(nameOf('shape 3:2', { ...show, frame: 'none' })).toBeUndefined();
	expect(nameOf('picture 501 x 401, mount none', show)).toBe('Oak');
	expect(nameOf('picture 400 x 300, paper 500 x 400, mount none', show)).toBe('Oak');
	expect(nameOf('picture 300 x 200, mount fit', show)).toBeUndefined();
});

test('a moulding is made to the mount, with its clearance', () => {
	const show = framed({ name: 'Moulding', clearance: '4 mm', lip: '7 mm' });
	expect(codesOf('shape 3:2, frame moulding', show)).not.toContain('frame-clash');
	const { rebate, play } = resultOf(rowOf('shape 3:2, frame moulding'), show).frame.seat!;
	expect([rebate.width, rebate.height].map(toMm)).toEqual([504, 404]);
	expect([play.width, play.height]).toEqual([40_000_000, 40_000_000]);
});
