import fc from 'fast-check';
import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { type LevelTally, tallyLevels } from '../../../../src/core/findings/levelTally.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { runs } from '../../../soak.ts';
import { listSteps } from '../values/listSteps.ts';

const { settings } = readSettings({});
const judged = fc
	.constantFrom({}, { 'picture width': '300', 'picture height': '200' }, { side: '300' }, { title: 'Tide', side: '1' })
	.map((typed) => judgeRow({ id: 'r', order: 0, typed }, settings));

test('after each edit the prints are counted by their worst finding as if for the first time', () =>
	fc.assert(
		fc.property(listSteps(judged), (lists) => {
			let tally: LevelTally | undefined;
			for (const results of lists) {
				tally = tallyLevels(results, tally);
				const count = (level: string) => results.filter(({ findings: [worst] }) => worst?.level === level).length;
				expect(tally.counts).toEqual({ stop: count('stop'), look: count('look'), note: count('note') });
			}
		}),
		{ numRuns: runs(60, 2000) },
	));
