import { expect, test } from 'vitest';
import { toInches, toMm } from '../../src/core/length/length.ts';
import type { SolvedKey } from '../../src/core/row/solvedRow.ts';
import { judgeRow } from '../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import type { Typed } from '../../src/core/show/row.ts';
import type { TypedSettings } from '../../src/core/settings/settings.ts';
import published from '../../shared/check-values/publishedRows.json' with { type: 'json' };
import examples from '../../shared/check-values/ruleExamples.json' with { type: 'json' };

interface Case {
	readonly typed: Typed;
	readonly expectMm?: Partial<Record<SolvedKey, number>>;
	readonly expectInches?: Partial<Record<SolvedKey, number>>;
	readonly findings?: readonly string[];
	readonly message?: string;
}

function check(show: TypedSettings, { typed, expectMm, expectInches, findings, message }: Case) {
	const { settings, problems } = readSettings(show);
	expect(problems).toEqual([]);
	const result = judgeRow({ id: 'row', order: 1, typed }, settings);
	for (const [key, value] of Object.entries(expectMm ?? {}))
		expect(toMm(result.solved[key as SolvedKey]!), key).toBeCloseTo(value, 6);
	for (const [key, value] of Object.entries(expectInches ?? {}))
		expect(toInches(result.solved[key as SolvedKey]!), key).toBeCloseTo(value, 9);
	expect(result.findings.map(({ code }) => code)).toEqual(expect.arrayContaining([...(findings ?? [])]));
	if (message !== undefined) expect(result.findings.map((finding) => finding.message).join('\n')).toContain(message);
}

test.each(published.cases)('$id ($kind: $source)', ({ show, ...row }) => check(show, row));

test.each(examples.cases as readonly Case[])('rule example: $typed', (row) => check(examples.show, row));
