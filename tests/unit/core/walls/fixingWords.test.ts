import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { fixingOf } from '../../../../src/core/walls/fixing.ts';
import { fixingWords } from '../../../../src/core/walls/hangingList.ts';

const frame = { name: 'Oak', width: 700, height: 550, depth: 30, moulding: 20, lip: 6, weight: 0.5 };

test('what a cord on one hook pulls on each ring is said in kg', () => {
	const { settings, problems } = readSettings({ frames: [frame] });
	expect(problems).toEqual([]);
	const typed = { mount: '700 x 550', 'picture width': '456', 'picture height': '306', frame: 'Oak' };
	const fixing = fixingOf(judgeRow({ id: 'a', order: 0, typed }, settings), settings)!;
	const hooks = { fixing, hooks: [], railCord: undefined };
	expect(fixing.pullKg).toBeGreaterThan(1);
	expect(fixingWords({ hooks }, settings)).toBe(
		`cord on one hook, it pulls ${fixing.pullKg!.toFixed(1)} kg on each ring`,
	);
	expect(fixingWords({ hooks: { ...hooks, fixing: { ...fixing, pullKg: undefined } } }, settings)).toBe(
		'cord on one hook',
	);
});
