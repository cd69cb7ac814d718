import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { chooseRules, ruleSets, rulesOf } from '../../../../src/core/settings/ruleSets.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { rowOf } from '../findings/rowOf.ts';

const choose = (name: string, before: TypedSettings = {}): TypedSettings => ({
	...before,
	...chooseRules(ruleSets.find((set) => set.name === name)!),
});
const codes = (line: string, typed: TypedSettings) =>
	judgeRow(rowOf(line), readSettings(typed).settings).findings.map(({ code }) => code);

test.each(ruleSets)('$name can be read, chosen and recognised', (set) => {
	const typed = choose(set.name, { border: '70 mm', limits: { thickness: '1 mm' } });
	expect(readSettings(typed).problems).toEqual([]);
	expect(rulesOf(typed)).toBe(set);
	expect(typed['border']).toBe('70 mm');
});

test('an edited set is no longer the one that was chosen', () =>
	expect(rulesOf({ ...choose('Open wall'), leastBorder: '20 mm' })).toBeUndefined());

test.each([
	['One metric size', 'shape 3:2, mount 502 x 398', 'over-limit', 'shape 3:2, mount 503 x 400'],
	['Up to 16 × 20 in', 'mount 500 x 400, side 51, top 51', 'thin-border', 'mount 500 x 400, side 50, top 51'],
	['Judged without names', 'mount fit, picture 200 x 150', 'under-limit', 'mount fit, picture 190 x 150'],
	['Open wall', 'mount 300 x 200, shape 3:2, side 40', 'under-limit', 'mount 290 x 200, shape 3:2, side 40'],
])('%s: %s passes, and for %s not %s', (name, passes, code, fails) => {
	expect(codes(passes, choose(name))).not.toContain(code);
	expect(codes(fails, choose(name))).toContain(code);
});

test('a label is told what cannot be read', () => {
	const { settings, problems } = readSettings({ labels: { name: 'perhaps', corner: 'Top Left' } });
	expect(settings.labels).toEqual({ name: 'free', corner: 'top left' });
	expect(problems).toEqual([{ key: 'labels.name', problem: 'perhaps is none of: free, required, forbidden' }]);
});
