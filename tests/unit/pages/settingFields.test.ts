import { expect, test } from 'vitest';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { byDefault, settingChange, settingGroups, settingText } from '../../../src/pages/settingFields.ts';

const fields = settingGroups.flatMap((group) => group.fields);

test.each([
	{ key: 'border', settings: { border: '7 cm' }, text: '7 cm' },
	{ key: 'border', settings: { border: 70 }, text: '70 mm' },
	{ key: 'bottomWeight', settings: { bottomWeight: 12 }, text: '12 %' },
	{ key: 'limits.largest', settings: { limits: { largest: '80 x 60 cm' } }, text: '80 x 60 cm' },
	{ key: 'mountSize', settings: { mountSize: { width: 600, height: '45 cm' } }, text: '600 mm x 45 cm' },
	{ key: 'limits.largest', settings: {}, text: '' },
])('$key of $settings is edited as "$text"', ({ key, settings, text }) => {
	expect(settingText(settings, key)).toBe(text);
});

test('a text typed into a field is the setting; blank puts it back', () => {
	expect(settingChange({}, 'border', '70')).toEqual({ border: '70' });
	expect(settingChange({ border: '70' }, 'border', '')).toEqual({ border: undefined });
	const limits = { limits: { largest: 'A2', smallest: 'A4' } };
	expect(settingChange(limits, 'limits.largest', '')).toEqual({ limits: { smallest: 'A4' } });
	expect(settingChange({ limits: { largest: 'A2' } }, 'limits.largest', '')).toEqual({ limits: undefined });
	expect(settingChange({}, 'limits.within', '2')).toEqual({ limits: { within: '2' } });
});

test.each(['mm', 'cm', 'in'] as const)('in a show in %s every default can be read as it stands', (unit) => {
	for (const { key } of fields) {
		const text = byDefault(key, unit);
		if (key.startsWith('limits.')) expect(text).toBe('none');
		else expect(readSettings({ unit, [key]: text }), key).toEqual(readSettings({ unit }));
	}
});
