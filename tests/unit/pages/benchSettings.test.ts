import { expect, test } from 'vitest';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { benchChange, benchText, isCutterUnknown, usualCutter } from '../../../src/pages/benchSettings.ts';

test.each([
	[undefined, 'kind', 'straight edge', { kind: 'straight edge' }],
	['straight edge', 'greatest', '150', { kind: 'straight edge', greatest: '150' }], // a bare word is the kind
	[{ kind: 'guide', least: 30 }, 'kind', undefined, { least: 30 }],
	[{ least: 30 }, 'least', ' ', undefined],
])('the bench %j with %s typed as %j is %j', (bench, key, value, after) => {
	expect(benchChange({ bench }, key, value)).toEqual({ bench: after });
});

test('what a file holds as numbers can be edited', () => {
	const settings = { bench: { greatest: 150, bladeEvery: 20, overcut: '2 mm' } };
	expect(['greatest', 'bladeEvery', 'overcut', 'least'].map((key) => benchText(settings, key))).toEqual([
		'150 mm',
		'20',
		'2 mm',
		'',
	]);
	expect(benchText({ bench: 'guide' }, 'kind')).toBe('guide');
});

test('which kind of cutter it is is asked once, where there are end stops', () => {
	const unknown = (bench: object) => isCutterUnknown({ bench }, readSettings({ bench }).settings.bench);
	expect(unknown({ kind: 'guide' })).toBe(false);
	expect(unknown({ kind: 'guide and stops' })).toBe(true);
	expect(unknown({ kind: 'guide and stops', endStop: 'from the start' })).toBe(false);
	const { bench } = usualCutter({ bench: { kind: 'guide and stops', head: 'pull' } });
	expect(bench).toEqual({ kind: 'guide and stops', head: 'pull', guideSide: 'left', endStop: 'from the end' });
	expect(unknown(bench as object)).toBe(false);
});
