import { expect, test } from 'vitest';
import { afterCollected, afterSold, type FormerStages } from '../../../../src/core/record/stageAfter.ts';

/** The stages that a print goes through, tap by tap. */
function tapped(stage: string, taps: readonly ('sold' | 'collected')[]): readonly string[] {
	let now = { stage, former: {} as FormerStages };
	return taps.map((tap) => {
		const isCollected = now.stage === 'collected';
		const isSold = isCollected || now.stage === 'sold';
		now =
			tap === 'sold'
				? afterSold(now.stage, isSold, now.former)
				: afterCollected(now.stage, { isSold, isCollected }, now.former);
		return now.stage;
	});
}

test.each<[stage: string, taps: ('sold' | 'collected')[], stages: string[]]>([
	['hung', ['sold', 'sold'], ['sold', 'hung']],
	['', ['sold', 'sold'], ['sold', '']],
	['at the printer’s', ['sold', 'collected', 'collected', 'sold'], ['sold', 'collected', 'sold', 'at the printer’s']],
	['hung', ['collected', 'collected'], ['collected', 'hung']],
	['hung', ['collected', 'sold'], ['collected', 'hung']],
	['hung', ['sold', 'collected', 'sold'], ['sold', 'collected', 'hung']],
	['sold', ['sold'], ['']], // what it was before nobody knows
	['collected', ['collected', 'sold'], ['sold', '']],
])('%j tapped %j is %j', (stage, taps, stages) => expect(tapped(stage, taps)).toEqual(stages));
