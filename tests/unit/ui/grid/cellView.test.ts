import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { cellViews, exactText } from '../../../../src/ui/grid/cellView.ts';
import { columnIndexOf, gridColumns } from '../../../../src/ui/grid/gridColumns.ts';

const sourceOf = (typed: Row['typed'], settings: Record<string, unknown> = {}, units?: Row['units']) => {
	const read = readSettings({ mountSize: '600 x 450', border: '70', bottomWeight: '12%', ...settings }).settings;
	const row: Row = { id: 'a', order: 1, typed, ...(units && { units }) };
	return { row, result: judgeRow(row, read), steps: [1, 3], settings: read };
};

const shown = (key: string, ...source: Parameters<typeof sourceOf>) => {
	const view = cellViews(sourceOf(...source), gridColumns)[columnIndexOf(key)]!;
	return `${view.text} (${view.state})`;
};

test.each([
	{ key: 'picture width', typed: { 'picture width': '45.6 cm' }, is: '456 (typed)' },
	{ key: 'picture width', typed: { 'picture width': 'abc', 'picture height': '306' }, is: 'abc (typed)' },
	{ key: 'picture width', typed: { shape: '3:2' }, is: '462 (worked out)' },
	{ key: 'side', typed: { 'picture width': '456', 'picture height': '306' }, is: '75 (worked out)' },
	{ key: 'mount', typed: { 'picture width': '456', 'picture height': '306' }, is: '600 × 450 (inherited)' },
	{ key: 'mount', typed: { 'picture width': '640', 'picture height': '480' }, is: ' (blank)' }, // it is not the show's
	{ key: 'mount', typed: { mount: 'fit' }, is: 'fit (typed)' },
	{ key: 'overlap', typed: {}, is: '3 (inherited)' },
	{ key: 'overlap', typed: { reveal: '6' }, is: ' (blank)' },
	{ key: 'overlap', typed: { reveal: '0' }, is: '3 (inherited)' },
	{ key: 'overlap', typed: { mount: 'none' }, is: ' (blank)' },
	{ key: 'overlap', typed: { overlap: '1/4' }, is: '6.4 (typed)' },
	{ key: 'reveal', typed: {}, is: ' (blank)' },
	{ key: 'bottom weight', typed: {}, is: '12 % (inherited)' },
	{ key: 'steps', typed: {}, is: '1, 3 (worked out)' },
	{ key: 'title', typed: { title: 'Low water' }, is: 'Low water (typed)' },
])('$key of $typed shows $is', ({ key, typed, is }) => {
	expect(shown(key, typed)).toBe(is);
});

test('with a reveal in the show the reveal is inherited, not the overlap', () => {
	expect(shown('reveal', {}, { reveal: '8' })).toBe('8 (inherited)');
	expect(shown('overlap', {}, { reveal: '8' })).toBe(' (blank)');
	expect(shown('reveal', { overlap: '4' }, { reveal: '8' })).toBe(' (blank)');
	expect(shown('overlap', { reveal: '0' }, { reveal: '8' })).toBe('3 (inherited)');
});

test('a named size is inherited by its name, an inch show shows fractions', () => {
	const sizes = [{ name: 'Oak', width: '600', height: '450' }];
	expect(shown('mount', {}, { sizes })).toBe('Oak (inherited)');
	expect(shown('overlap', {}, { unit: 'in', mountSize: '20 x 16', border: '2 1/2' })).toBe('1/8 (inherited)');
});

test('a frame that is not named, and what lies in it, is shown by its name; none where the row has none', () => {
	const lists = {
		frames: [{ name: 'Oak', width: 600, height: 450 }],
		glazing: [{ name: 'Clear', width: 1000, height: 800 }],
	};
	const both = (typed: Row['typed']) => ['frame', 'glazing', 'backing'].map((key) => shown(key, typed, lists));
	expect(both({})).toEqual(['Oak (inherited)', 'Clear (inherited)', ' (blank)']);
	expect(both({ frame: 'none' })).toEqual(['none (typed)', ' (blank)', ' (blank)']);
	expect(both({ frame: 'oak', glazing: 'acrylic' })).toEqual(['oak (typed)', 'acrylic (typed)', ' (blank)']);
});

test('the cells that a finding concerns carry its level, the number the gravest of the row', () => {
	const views = cellViews(
		sourceOf({ 'mount height': '450', top: '70', bottom: '84', 'picture height': '316' }),
		gridColumns,
	);
	const levels = Object.fromEntries(gridColumns.map(({ key }, place) => [key, views[place]!.level]));
	expect(levels).toMatchObject({ number: 'stop', top: 'stop', bottom: 'stop', 'picture height': 'stop' });
	expect(levels['title']).toBeUndefined();
	const quiet = cellViews(sourceOf({ 'picture width': '456', 'picture height': '306' }), gridColumns);
	expect(
		quiet.every(({ level }) => level === undefined),
		'a row that may be cut has no mark at all',
	).toBe(true);
});

test('what is copied is as typed, with the unit of its own, or exact to the last unit', () => {
	const copied = (key: string, ...source: Parameters<typeof sourceOf>) =>
		exactText(gridColumns[columnIndexOf(key)]!, sourceOf(...source));
	expect(copied('picture width', { 'picture width': '45.6' }, {}, { 'picture width': 'cm' })).toBe('45.6 cm');
	expect(copied('picture height', { shape: '3:2', bottom: '60' })).toBe('342.6666667');
	expect(copied('bottom weight', {})).toBe('12 %');
	expect(copied('overlap', { overlap: '4' })).toBe('4');
	expect(copied('overlap', {}), 'typed back it would contradict what went to the ruler').toBe('');
});

test('a blank price is worked out from the net, and waits for a cost that it is to hold', () => {
	const place = columnIndexOf('price');
	const show = { commission: '50 %', costInPrice: 'yes' };
	const source = sourceOf({ net: '100' }, show);
	const viewOf = (more: object) => cellViews({ ...source, ...more }, gridColumns)[place]!;
	expect(viewOf({})).toMatchObject({ text: '', state: 'blank' });
	expect(viewOf({ cost: 1250 })).toMatchObject({ text: '225.00', state: 'worked out' });
	expect(viewOf({ cost: 1250, isCostPartial: true })).toMatchObject({ text: 'about 225.00', state: 'worked out' });
	expect(exactText(gridColumns[place]!, { ...source, cost: 1250, isCostPartial: true })).toBe('225.00');
	const typed = cellViews(sourceOf({ net: '100', price: 'NFS' }, show), gridColumns)[place];
	expect(typed).toMatchObject({ text: 'NFS', state: 'typed' });
});

test('what a print costs is worked out, in the show’s currency, and blank where it is not known', () => {
	const place = columnIndexOf('cost');
	const source = sourceOf({}, { currency: 'EUR' });
	expect(cellViews({ ...source, cost: 1250 }, gridColumns)[place]).toMatchObject({
		text: '12.50',
		state: 'worked out',
	});
	expect(cellViews({ ...sourceOf({}, { currency: 'JPY' }), cost: 1250 }, gridColumns)[place]!.text).toBe('1250');
	expect(cellViews(source, gridColumns)[place]).toMatchObject({ text: '', state: 'blank' });
});
