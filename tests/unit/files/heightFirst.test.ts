import { describe, expect, test } from 'vitest';
import { guessHeightFirst } from '../../../src/core/imports/guessHeightFirst.ts';
import { type ColumnMatching, saidColumn, withOrder } from '../../../src/core/imports/columnMatching.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { readRows } from '../../../src/files/csv.ts';
import { withKept } from '../../../src/files/keptColumns.ts';
import { readColumns } from '../../../src/files/readColumns.ts';
import { readPlanArguments } from '../../../src/cli/planArguments.ts';

const { settings } = readSettings({ unit: 'mm' });

function picture(text: string, matching?: ColumnMatching): readonly (string | undefined)[] {
	const read = readRows(text, settings, (place) => `${place}`, { matching });
	if ('problem' in read) throw new Error(read.problem);
	const [{ typed } = { typed: {} as Row['typed'] }] = read.rows;
	return [typed['picture width'], typed['picture height']];
}

describe('sizes that give the height first', () => {
	test.each<[said: ColumnMatching[string], sides: readonly string[]]>([
		['picture width', ['300', '400']],
		['picture width (h x w)', ['400', '300']],
		['picture width (w x h)', ['300', '400']],
	])('said to be %s', (said, sides) => {
		expect(picture('title;what\nPier;300 x 400 mm\n', { what: said }).map((text) => text?.replace(' mm', ''))).toEqual(
			sides,
		);
	});

	test('what is said stands before what the header says, and words in the cell before both', () => {
		expect(picture('title;Picture size (h x w)\nPier;300 x 400\n')).toEqual(['400', '300']);
		const otherwise = { 'Picture size (h x w)': withOrder('picture width', false) };
		expect(picture('title;Picture size (h x w)\nPier;300 x 400\n', otherwise)).toEqual(['300', '400']);
		const first = { Dimensions: withOrder('picture width', true) };
		expect(picture('title;Dimensions\nPier;W 300 x H 400\n', first)).toEqual(['300', '400']);
	});

	test.each([
		['Maße (H x B)', true],
		['Dimensions (h x l)', true],
		['Dimensioni altezza x larghezza', true],
		['Medidas (alto x ancho)', true],
		['Afmetingen hoogte x breedte', true],
		['Maße (B x H)', false],
		['Dimensions (largeur x hauteur)', false],
	])('a header says it in the languages of the trade: %s', (header, isFirst) => {
		expect(picture(`title;${header}\nPier;300 x 400\n`, { [header]: 'picture width' })).toEqual(
			isFirst ? ['400', '300'] : ['300', '400'],
		);
		expect(readColumns(`title;${header}\nPier;300 x 400\n`)?.columns[1]?.isHeightFirst).toBe(isFirst);
	});

	test('they are guessed by the prints that are here, and asked about once', () => {
		const sizes = [
			['300', '400'],
			['310', '410'],
			['320', '420'],
		] as const;
		const here = sizes.map(([width, height], at): Row => ({
			...{ id: `${at}`, order: at, typed: { 'picture width': width, 'picture height': height } },
		}));
		const guess = guessHeightFirst(here);
		const list = (turned: boolean) =>
			`title;Picture size\n${sizes.map(([w, h], at) => `P${at};${turned ? `${h} x ${w}` : `${w} x ${h}`} mm`).join('\n')}\n`;
		const look = (text: string, matching?: ColumnMatching) => {
			const columns = readColumns(text, matching, undefined, guess);
			return [columns?.isInDoubt, columns?.columns[1]?.isHeightFirst];
		};
		expect(look(list(true))).toEqual([true, true]);
		expect(look(list(false))).toEqual([false, false]);
		expect(look(list(true), { 'picture size': withOrder('picture width', false) })).toEqual([false, false]);
		expect(guessHeightFirst(here.slice(1))(['410 x 310', '420 x 320']), 'two may be by chance').toBe(false);
	});

	test('a column that was kept is matched in its order afterwards', () => {
		const kept: Row = { id: 'a', order: 1, typed: { title: 'Pier' }, extra: { plate: '300 x 400' } };
		const [row] = withKept([kept], { plate: withOrder('picture width', true) }, settings);
		expect([row!.typed['picture width'], row!.typed['picture height']]).toEqual(['400', '300']);
	});

	test('the command line takes the order, and nothing that is no order', () => {
		const read = (columns: string) => readPlanArguments(['rows.csv', '--columns', columns]);
		expect(read('Size=picture width h x w, B=mount (w x h)')).toMatchObject({
			value: { columns: { Size: expect.stringMatching(/h x w/) as unknown, B: 'mount (w x h)' } },
		});
		const { value } = read('Size=picture width h x w') as { value: { columns: ColumnMatching } };
		expect(picture('title;Size\nPier;300 x 400\n', value.columns)).toEqual(['400', '300']);
		expect('problem' in read('Size=picture width d x w')).toBe(true);
		expect(saidColumn('frog (h x w)')).toBeUndefined();
	});
});
