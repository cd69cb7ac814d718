import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { length, mm } from '../../../../src/core/length/length.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { fixingOf, hooksOf } from '../../../../src/core/walls/fixing.ts';
import {
	bearingWords,
	cordSum,
	cordWords,
	dropLabel,
	dropWords,
	hookHeightWords,
	ifCordWords,
	ratingReason,
	ratingsOf,
	ratingWords,
	ringPlaceWords,
} from '../../../../src/core/walls/holdWords.ts';
import { print, rowsOf } from './wallOf.ts';

// 500 × 400 framed, the weight known.
const frames = [{ name: 'Plain', clearance: 0, moulding: 20, lip: 20, weight: 0 }];
const glazing = [{ name: 'Glass', material: 'glass', width: 2000, height: 1000, thickness: 2 }];

function heldBy(hanging: object, typed: Typed = {}) {
	const { settings, problems } = readSettings({ frames, glazing, hanging });
	expect(problems).toEqual([]);
	const result = judgeRow(rowsOf([print('500x400', { frame: 'Plain', ...typed })])[0]!, settings);
	const fixing = fixingOf(result, settings)!;
	return { settings, result, fixing, rating: ratingWords(result.framed.weightKg, fixing, settings) };
}

test('where rings go, how long the cord is, and where it stops pulled up: whole millimetres', () => {
	// rings 400/3, span 440, cord 462, rise √(231² − 220²) = 70.4; drop 62.9
	const { settings, result, fixing } = heldBy({});
	expect(ringPlaceWords(result, settings)).toBe(
		'eyes 133 mm below the frame’s top, 30 mm in from each outer edge; screws in the wood',
	);
	expect(cordWords(fixing, settings)).toBe(
		'462 mm from ring to ring, more for the knots; rings 440 mm apart. Pulled up, 63 mm below the frame’s top',
	);
	expect(cordWords(fixing, settings, mm(700))).toMatch(
		/^cut 700 mm\. 462 mm from ring to ring, the rest for knots; rings 440/,
	);
	expect([dropLabel(settings), dropWords(fixing, settings)]).toEqual([
		'Cord pulled up, below the frame’s top',
		'Cord pulled up, 63 mm below the frame’s top',
	]);
});

test('a cord that is not measured has its sum, which gives the mark as it is shown; else there is none', () => {
	const sumOf = ({ result, settings }: ReturnType<typeof heldBy>) => {
		const hooks = hooksOf(result, { left: mm(0), centre: mm(1450) }, settings);
		const [hook] = hooks!.hooks;
		const { nail } = settings.hanging;
		const mark = { what: nail ? 'nail' : 'hook', left: mm(0), height: length(hook!.height + nail) } as const;
		return cordSum({ mark, hooks }, settings);
	};
	// top 1450 + 400 / 2; its drop of 62.9 leaves 1587.1
	expect(sumOf(heldBy({}))).toBe('Frame’s top 1650 − cord ________ (63 planned) = hook ________');
	expect(sumOf(heldBy({ nail: 12 }))).toBe('Frame’s top 1650 − cord ________ (63 planned) + 12 = nail ________');
	expect(sumOf(heldBy({}, { drop: '45' }))).toBeUndefined();
	expect(sumOf(heldBy({ kind: 'two hooks' }))).toBeUndefined();
});

test('a typed drop, with every kind; two hooks and a rail have no cord of the frame’s own', () => {
	const typed = heldBy({}, { drop: '45' });
	expect(dropWords(typed.fixing, typed.settings)).toBe('Cord pulled up, 45 mm below the frame’s top');
	const wordsOf = ({ fixing, settings }: ReturnType<typeof heldBy>) => ifCordWords(fixing, settings);
	expect([typed, heldBy({}), heldBy({ kind: 'two hooks' })].map(wordsOf)).toEqual([
		...['', ', if the cord is at 63', ''],
	]);
	// Only what is measured is said as settled.
	expect(
		[typed, heldBy({}), heldBy({ kind: 'two hooks' })].map((each) => hookHeightWords('1652', each.fixing)),
	).toEqual([...['1652', 'about 1652', '1652']]);
	const hooks = heldBy({ kind: 'two hooks', rings: '100 mm' });
	expect(dropWords(hooks.fixing, hooks.settings)).toBe('Hooks 100 mm below the frame’s top');
	expect(cordWords(hooks.fixing, hooks.settings)).toBeUndefined();
	const rail = heldBy({ kind: 'rail', nail: '2 m', rings: '100 mm' });
	expect(dropWords(rail.fixing, rail.settings)).toBe('Rings 100 mm below the frame’s top');
});

test('what hook or rings are rated for is what raises no “heavy”, and a kilogram less on each does', () => {
	for (const kind of ['cord', 'two hooks'] as const) {
		const { rating } = heldBy({ kind });
		// By a cord the two rings have to hold more than the hook.
		const [, each] = /(?:each ring|fixing) (\d+) kg/.exec(rating!)!;
		const count = kind === 'cord' ? 2 : 1;
		const isHeavy = (kg: number) =>
			heldBy({ kind, rating: `${kg} kg` }).result.findings.some(({ code }) => code === 'heavy');
		expect([kind, isHeavy(count * Number(each)), isHeavy(count * (Number(each) - 1))]).toEqual([kind, false, true]);
	}
});

test('it says which is which: the hook by the weight, cord and rings by the pull', () => {
	const { result, fixing, rating, settings } = heldBy({});
	const pull = fixing.pullKg!;
	const weight = result.framed.weightKg!;
	expect(2 * pull).toBeGreaterThan(weight);
	expect(ratingsOf(weight, fixing, settings)).toEqual([
		{ word: 'Must hold: hook', figure: `${Math.ceil(4 * weight)} kg or more` },
		{ word: 'each ring', figure: `${Math.ceil(4 * pull)} kg` },
		{ word: 'cord', figure: `${Math.ceil(4 * pull)} kg` },
	]);
	expect(rating).toBe(
		`Must hold: hook ${Math.ceil(4 * weight)} kg, each ring ${Math.ceil(4 * pull)} kg, cord ${Math.ceil(4 * pull)} kg (4 × that pull)`,
	);
	expect(heldBy({ kind: 'two hooks' }).rating).toMatch(/^Must hold: each hook and its fixing \d+ kg$/);
});

test('asked why, it says by how many times and of what', () => {
	const { result, fixing, settings } = heldBy({});
	const weight = result.framed.weightKg!;
	expect(ratingReason(weight, fixing, settings)).toBe(
		`What holds it is rated for 4 times what it bears, 4 × ${weight.toFixed(1)} kg. Rings and cord: 4 × the pull of ` +
			`${fixing.pullKg!.toFixed(1)} kg on each ring, larger the flatter the cord.`,
	);
	expect(ratingReason(undefined, fixing, settings)).toBeUndefined();
});

test('of a flat cord and of a weight that is not known nothing is said', () => {
	expect(heldBy({ slack: 0 }).rating).toBeUndefined();
	const { fixing, settings } = heldBy({});
	expect(ratingWords(undefined, fixing, settings)).toBeUndefined();
});

test('up to where a hook’s height is measured: where the cord sits, or the ring', () => {
	const words = (kind: string) => bearingWords(heldBy({ kind }).settings);
	expect(words('cord')).toBe('Measure to where the cord sits in the hook, not to the nail.');
	expect(words('two hooks')).toContain('where the ring sits');
});
