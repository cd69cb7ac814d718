import { expect, test } from 'vitest';
import { toMm } from '../../../../src/core/length/length.ts';
import { withFindingsAcross } from '../../../../src/core/findings/acrossRows.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { print, rowsOf } from './wallOf.ts';

// 500 × 400 framed: a rebate without play, a face no wider than its lip.
const frames = [{ name: 'Plain', clearance: 0, moulding: 20, lip: 20, weight: 0 }];

/** What one framed print on a wall of 4 m hangs by: drop, the hooks from the wall's left and above the floor, in mm. */
function hooks(hanging: unknown, typed: Typed = {}, size = '500x400') {
	const { settings, problems } = readSettings({ frames, hanging, walls: [{ name: 'North', length: 4000 }] });
	expect(problems).toEqual([]);
	const rows = rowsOf([print(size, { frame: 'Plain', ...typed })]);
	const [result] = withFindingsAcross(rows, [judgeRow(rows[0]!, settings)], settings);
	const found = result!.hung?.hooks;
	return (
		found && {
			drop: Number((found.fixing.drop / 1e7).toFixed(3)),
			hooks: found.hooks.map(({ left, height }) => `${toMm(left)}, ${toMm(height)}`),
			...(found.railCord !== undefined && { cord: toMm(found.railCord) }),
		}
	);
}

test('a cord, rings a third down, with 5 % slack', () => {
	// span 440, cord 462: rise √(231² − 220²) = 70.434; drop 400/3 − 70.434 = 62.9; hook 1450 + 200 − 62.9 = 1587.1
	expect(hooks(undefined)).toEqual({ drop: 62.899, hooks: ['2000, 1587'] });
});

test('less slack where the hook would be too near the top', () => {
	// rings 80 − rise 70.434 would be 9.6: 20 instead, 1450 + 200 − 20
	expect(hooks({ rings: '20 %' })).toEqual({ drop: 20, hooks: ['2000, 1630'] });
});

test('rings never below the middle, given as a length too', () => {
	expect(hooks({ rings: '300 mm', slack: 0 })).toEqual({ drop: 200, hooks: ['2000, 1450'] });
	expect(hooks({ rings: '100 mm', slack: 0 })).toEqual({ drop: 100, hooks: ['2000, 1550'] });
});

test('a typed drop counts before all, with every kind', () => {
	expect(hooks(undefined, { drop: '45' })).toEqual({ drop: 45, hooks: ['2000, 1605'] });
	expect(hooks('two hooks', { drop: '45' })?.hooks).toEqual(['1780, 1605', '2220, 1605']);
});

test.each(['cord', 'two hooks', 'rail'])('a drop below the frame is not read, hung by %s', (kind) => {
	const hanging = { kind, nail: '2 m' };
	const { settings } = readSettings({ frames, hanging });
	const unread = (drop: string, typed: Typed = {}) => {
		const row = rowsOf([print('500x400', { frame: 'Plain', drop, ...typed })])[0]!;
		return judgeRow(row, settings)
			.findings.filter(({ code }) => code === 'not-read')
			.map(({ cells, message }) => [...cells, message]);
	};
	const said = 'Drop: more than the frame is high; type how far the hook is below the frame’s top.';
	expect(unread('2000')).toEqual([['drop', said]]);
	expect(unread('401')).toEqual([['drop', said]]);
	expect(unread('400')).toEqual([]);
	expect(unread('2000', { frame: 'none' })).toEqual([]);
	expect(hooks(hanging, { drop: '2000' })).toEqual(hooks(hanging));
});

test('two hooks at the rings', () => {
	expect(hooks({ kind: 'two hooks', rings: '25 %', inset: '50 mm' })).toEqual({
		drop: 100,
		hooks: ['1800, 1550', '2200, 1550'],
	});
});

test('on a rail the cords are said, not the hooks', () => {
	// rings at 1450 + 200 − 100
	expect(hooks({ kind: 'rail', rings: '25 %', nail: '2.6 m' })).toEqual({ drop: 100, hooks: [], cord: 1050 });
});

test('halfway goes up', () => {
	expect(hooks({ rings: '100 mm', slack: 0 }, {}, '500x401')?.hooks).toEqual(['2000, 1551']);
});

test('none without a frame, nor where the rings have no room', () => {
	expect(hooks(undefined, { frame: 'none' })).toBeUndefined();
	expect(hooks({ inset: '250 mm' })).toBeUndefined();
});

test('what a fixing has to hold is the pull of its cord, four times', () => {
	const codes = (hanging: object) => {
		const glass = [{ name: 'Glass', material: 'glass', width: 2000, height: 1000, thickness: 2 }];
		const { settings } = readSettings({ frames, hanging, glazing: glass });
		const [row] = rowsOf([print('500x400', { frame: 'Plain' })]);
		return judgeRow(row!, settings)
			.findings.filter(({ code }) => code === 'heavy')
			.map(({ message }) => message);
	};
	// 0.2 m² × (2·2.5 + 1.4·0.7 + 0.3·0.7 + 3·0.7) = 1.658 kg; the cord pulls 231 / (2 · 70.434) of it a ring: 5.44 kg in all
	expect(codes({ rating: '21.7 kg' })).toEqual([
		'Its hook, or its pair of rings, bears about 5.4 kg; times 4 for safety, more than your rating of 21.7 kg.',
	]);
	expect(codes({ rating: '21.8 kg' })).toEqual([]);
	expect(codes({ kind: 'two hooks', rating: '6.6 kg' })).toHaveLength(1);
	expect(codes({ kind: 'two hooks', rating: '6.7 kg' })).toEqual([]);
});

test('a cord that does not rise to its hook is over every rating', () => {
	const said = (hanging: object, typed: Typed = {}) => {
		const { settings } = readSettings({ frames, hanging: { rating: '1000 kg', ...hanging }, walls: [] });
		const [row] = rowsOf([print('500x400', { frame: 'Plain', ...typed })]);
		return judgeRow(row!, settings)
			.findings.filter(({ code }) => code === 'heavy')
			.map(({ message }) => message);
	};
	const flat = (below: string) => [
		`Its hook is ${below} its rings. A flat cord pulls on them harder than any rating, yours of 1000 kg too. Lower the rings, or let the cord rise further.`,
	];
	expect(said({})).toEqual([]);
	expect(said({ slack: 0 })).toEqual(flat('no higher than'));
	// The hook stays 20 mm below the top, where the rings are.
	expect(said({ rings: '20 mm' })).toEqual(flat('no higher than'));
	expect(said({ rings: '100 mm' }, { drop: '99' })).toHaveLength(1);
	expect(said({ rings: '100 mm' }, { drop: '100' })).toEqual(flat('no higher than'));
	expect(said({ rings: '100 mm' }, { drop: '110' })).toEqual(flat('10 mm below'));
	expect(said({ kind: 'two hooks', rings: '20 mm' })).toEqual([]);
	// A typed drop that makes it flat can be cleared.
	const [row] = rowsOf([print('500x400', { frame: 'Plain', drop: '110' })]);
	const { settings } = readSettings({ frames, hanging: { rating: '1000 kg', rings: '100 mm' }, walls: [] });
	expect(judgeRow(row!, settings).findings.find(({ code }) => code === 'heavy')!.mends).toMatchObject([
		{ change: { drop: '' } },
	]);
	// Without a rating there is nothing to compare it with.
	expect(said({ slack: 0, rating: undefined })).toEqual([]);
});
