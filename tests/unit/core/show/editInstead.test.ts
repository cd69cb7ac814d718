import { expect, test } from 'vitest';
import { changeSettings } from '../../../../src/core/commands/changeSettings.ts';
import { rename } from '../../../../src/core/commands/rename.ts';
import { typeCells } from '../../../../src/core/commands/typeCells.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { apply, type Command, compose, invert } from '../../../../src/core/show/edit.ts';
import type { CellTexts } from '../../../../src/core/show/row.ts';
import type { Show } from '../../../../src/core/show/show.ts';
import { editInstead } from '../../../../src/core/show/editInstead.ts';

const row = (id: string, order: number) => ({ id, order, typed: {} });
const start: Show = { id: 'show', name: 'Spring', settings: { unit: 'mm' }, rows: [row('a', 1), row('b', 2)] };
const read = (show: Show) => readSettings(show.settings).settings;
const typed =
	(id: string, cells: CellTexts): Command =>
	(show, settings) =>
		typeCells(show, [{ id, cells }], settings, `Type ${id}`);

test('a command in the place of a step leaves what it would have left without the step', () => {
	const former = typed('a', { title: 'Peir', maker: 'Holm' })(start, read(start));
	const between = apply(apply(start, former), rename(start, 'Autumn', 'Rename'));
	const made = editInstead(former, typed('a', { title: 'Pier' }), between, read(between))!;
	const after = apply(between, made);
	expect(after.rows[0]!.typed).toEqual({ title: 'Pier' });
	expect([after.name, made.label]).toEqual(['Autumn', 'Type a']);
	expect(apply(after, invert(compose(former, made)))).toEqual(apply(start, rename(start, 'Autumn', 'Rename')));
});

test('a command in the place of a change of settings is made under the settings from before', () => {
	const former = changeSettings(start, { unit: 'in' }, 'Unit');
	const inches = apply(start, former);
	const units: string[] = [];
	const command: Command = (show, settings) => {
		units.push(settings.unit);
		return rename(show, 'Autumn', 'Rename');
	};
	const made = editInstead(former, command, inches, read(inches))!;
	expect(units).toEqual(['mm']);
	expect(apply(inches, made)).toEqual({ ...start, name: 'Autumn' });
});

test('a command that does nothing leaves only the step to take back', () => {
	const former = typed('a', { title: 'Pier' })(start, read(start));
	const show = apply(start, former);
	expect(editInstead(former, typed('a', { title: '' }), show, read(show))).toBeUndefined();
});
