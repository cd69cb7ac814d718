import { expect, test } from 'vitest';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { cordCaution } from '../../../../src/core/walls/cordCaution.ts';
import { fixingOf } from '../../../../src/core/walls/fixing.ts';
import { print, rowsOf } from './wallOf.ts';

// 500 × 400 framed, the weight known.
const frames = [{ name: 'Plain', clearance: 0, moulding: 20, lip: 20, weight: 0 }];
const glazing = [{ name: 'Glass', material: 'glass', width: 2000, height: 1000, thickness: 2 }];

function caution(hanging: object, typed: Typed = {}) {
	const { settings, problems } = readSettings({ frames, glazing, hanging });
	expect(problems).toEqual([]);
	const worked = workOut(rowsOf([print('500x400', { frame: 'Plain', ...typed })])[0]!, settings);
	expect(worked.framed.weightKg).toBeGreaterThan(0);
	return cordCaution(worked, fixingOf(worked, settings)!, settings);
}
const flat = (help: string) =>
	`Its cord is flat. The pull on each ring has no limit, and the hook may not hold it. ${help}.`;

test('a flat cord is said without a rating too, with what keeps it from rising', () => {
	expect(caution({})).toBeUndefined();
	expect(caution({ slack: 0 })).toBe(flat('Give the cord more slack'));
	expect(caution({ rings: '20 mm' })).toBe(flat('Lower the rings'));
	expect(caution({ rings: '100 mm' }, { drop: '100' })).toBe(flat('Type a smaller drop, or lower the rings'));
	expect(caution({ kind: 'two hooks', rings: '20 mm' })).toBeUndefined();
});

test('nearly flat is from twice the weight on each ring: a rise of the 220 mm to the hook by √15, 56.8 mm', () => {
	expect(caution({ rings: '100 mm' }, { drop: '43' })).toBeUndefined();
	// rise 56 mm, half a cord 227.02: 227.02 / (2 · 56)
	expect(caution({ rings: '100 mm' }, { drop: '44' })).toBe(
		'Its cord is nearly flat. Each ring is pulled by 2.0 times its weight. Type a smaller drop, or lower the rings.',
	);
	// the rings 25 mm below a hook that stays 20 mm down: rise 5, half a cord 220.06
	expect(caution({ rings: '25 mm' })).toBe(
		'Its cord is nearly flat. Each ring is pulled by 22.0 times its weight. Lower the rings.',
	);
	// slack of 1 %: 1.01 / (2 · √(1.01² − 1)) = 3.56
	expect(caution({ slack: '1 %' })).toBe(
		'Its cord is nearly flat. Each ring is pulled by 3.6 times its weight. Give the cord more slack.',
	);
});
