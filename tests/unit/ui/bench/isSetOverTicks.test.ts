import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { isSetOverTicks } from '../../../../src/ui/bench/isSetOverTicks.ts';

const metric = readSettings({}).settings;
const inches = readSettings({ unit: 'in' }).settings;

test.each([
	[1070, 4, metric, true],
	[1070, 5, metric, false],
	[1070.5, 1, metric, false], // six characters would be small there
	[92.5, 1, metric, true],
	[254, 1, inches, true], // 10
	[100, 1, inches, false], // 3 15/16
])('%d mm over %d ticks', (measure, ticks, settings, isSet) =>
	expect(isSetOverTicks(mm(measure), ticks, settings)).toBe(isSet),
);
