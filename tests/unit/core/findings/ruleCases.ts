import { describe, expect, test } from 'vitest';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { CellTexts } from '../../../../src/core/show/row.ts';
import { codesOf, resultOf, rowOf, withChange } from './rowOf.ts';

/** A rule by a row that it speaks of, and one of which it just does not. */
export interface RuleCase {
	readonly code: string;
	readonly level: 'stop' | 'look' | 'note';
	/** A row that is told so. */
	readonly told: string;
	/** What its sentence has in it. */
	readonly says: string;
	/** The mend that is offered, or none where no single change mends it. */
	readonly mend?: string;
	/** A row that is just not told so. */
	readonly not: string;
	readonly show?: TypedSettings;
}

/** The label of a mend says what it does to which cell: what it clears and what comes of that, what it types, or which size was meant. */
function expectSaid(label: string, change: CellTexts): void {
	const isClearing = Object.values(change).every((text) => text === '');
	expect(label).toMatch(isClearing ? /^(Clear |Set .+ to (the show’s$|\d))/ : /^(Set|Swap) /);
	if (label.startsWith('Set to ')) return;
	const heads = Object.keys(change).map((column) => (column === 'signed on' ? 'signed where' : column));
	expect(
		heads.some((head) => label.includes(head) || (label.startsWith('Swap') && head.includes(label.split(' ')[1]!))),
	).toBe(true);
}

/** Tries each rule: what is said, that every mend offered mends it and brings no other `stop`, and where it is not said. */
export function describeRules(cases: readonly RuleCase[]): void {
	describe.each(cases)('$code: $told', ({ code, level, told, says, mend, not, show }) => {
		const result = resultOf(rowOf(told), show);
		const finding = result.findings.find((one) => one.code === code && one.message.includes(says));

		test(`is told: ${says}`, () => {
			expect(result.findings.map((one) => `${one.code} ${one.message}`).join('\n')).toContain(says);
			expect(finding).toMatchObject({ level });
		});

		test(mend === undefined ? 'is offered nothing that does not mend it' : `is mended: ${mend}`, () => {
			const mends = finding?.mends ?? [];
			if (mend !== undefined) expect(mends.map(({ label }) => label).join('\n')).toContain(mend);
			const stops = result.findings.filter((one) => one.level === 'stop').map((one) => one.code);
			for (const { label, change } of mends) {
				expectSaid(label, change);
				const after = resultOf(withChange(rowOf(told), change), show).findings;
				expect(after.filter((one) => one.code === code && one.cells.join() === finding!.cells.join())).toEqual([]);
				for (const one of after.filter((each) => each.level === 'stop')) expect(stops).toContain(one.code);
			}
		});

		test(`is not told to: ${not}`, () => expect(codesOf(not, show)).not.toContain(code));
	});
}
