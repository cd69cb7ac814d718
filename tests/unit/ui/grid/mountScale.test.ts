import fc from 'fast-check';
import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { type MountScale, mountScale } from '../../../../src/ui/grid/mountScale.ts';
import { mountRoom } from '../../../../src/ui/grid/slots.ts';
import { runs } from '../../../soak.ts';
import { listSteps } from '../../core/values/listSteps.ts';

const { settings } = readSettings({ mountSize: '500 x 400 mm' });
const resultOf = (width: number, height: number) =>
	judgeRow({ id: 'r', order: 0, typed: { 'mount width': `${width}`, 'mount height': `${height}` } }, settings);
const sides = fc.constantFrom(300, 400, 500, 600);
const result = fc.tuple(sides, sides).map(([width, height]) => ({ width, height, result: resultOf(width, height) }));

test('the largest mount fits in beside its title, after each edit', () =>
	fc.assert(
		fc.property(listSteps(result), (lists) => {
			let former: MountScale | undefined;
			for (const list of lists) {
				former = mountScale(
					list.map((each) => each.result),
					former,
				);
				const width = Math.max(1, ...list.map((each) => each.width));
				const height = Math.max(1, ...list.map((each) => each.height));
				expect(former.scale).toBeCloseTo(Math.min(mountRoom.width / width, mountRoom.height / height), 12);
			}
		}),
		{ numRuns: runs(30, 2000) },
	));
