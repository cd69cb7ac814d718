import { expect, test } from 'vitest';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { parted } from '../../../src/core/merge/choices.ts';
import type { Exchange } from '../../../src/core/merge/exchange.ts';
import { exchangedRows } from '../../../src/core/merge/exchangedRows.ts';
import { mergeEdit } from '../../../src/core/merge/mergeEdit.ts';
import { mergeRows } from '../../../src/core/merge/mergeRows.ts';
import { asideLines } from '../../../src/core/merge/mergeWords.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { ColumnName } from '../../../src/core/show/columns.ts';
import { columns } from '../../../src/core/show/columns.ts';
import { apply } from '../../../src/core/show/edit.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { madeId } from '../../../src/core/values/madeId.ts';
import { readRows, writeRows } from '../../../src/files/csv.ts';
import { textOfFile } from '../../../src/files/textOfFile.ts';
import { programs, saved } from './spreadsheets.ts';

const { settings } = readSettings({ unit: 'mm' });

/** One of two who hang a show together: the rows on the device, and what was exchanged. */
class Profile {
	rows: readonly Row[] = [];
	exchanges: Exchange[] = [];
	readonly #name: number;
	#made = 0;

	constructor(name: number) {
		this.#name = name;
	}

	makeId = () => madeId(Uint8Array.of(this.#name, 0, 0, 0, 0, 0, 0, ++this.#made >> 5, this.#made & 31));

	type(title: string, cells: Partial<Record<ColumnName, string>>): void {
		const found = this.rows.some(({ typed }) => typed.title === title);
		if (!found) throw new RangeError(`no print is called ${title}`);
		this.rows = this.rows.map((row) =>
			row.typed.title === title ? { ...row, typed: { ...row.typed, ...cells } } : row,
		);
	}

	add(cells: Partial<Record<ColumnName, string>>): void {
		this.rows = [...this.rows, { id: this.makeId(), order: this.rows.length + 1, typed: cells }];
	}

	/** The file as it leaves the app. */
	export(at: number): string {
		const results = this.rows.map((row) => judgeRow(row, settings));
		const show = { rows: this.rows, results, settings, bench: orderBench(this.rows, results, settings) };
		this.exchanges = [this.#exchange('given', at, this.rows), ...this.exchanges];
		return writeRows(show, { hasIds: true });
	}

	/** Imports a file as it is suggested. @returns how many cells were set aside, and how many rows left out */
	import(bytes: Uint8Array, at: number): { readonly aside: number; readonly inDoubt: number } {
		const text = textOfFile(bytes);
		const read = 'problem' in text ? text : readRows(text.value, settings, () => this.makeId());
		if ('problem' in read) throw new Error(read.problem);
		const merge = mergeRows(this.rows, read, this.exchanges, settings, () => this.makeId());
		const edit = mergeEdit(this.rows, merge, new Map(), settings, 'import');
		const show = { id: 's', name: '', settings: {}, rows: this.rows };
		this.exchanges = [this.#exchange('taken', at, exchangedRows(merge, new Map())), ...this.exchanges].slice(0, 6);
		this.rows = apply(show, edit).rows;
		const cells = asideLines(merge).flatMap(({ rows }) =>
			rows.flatMap((row) => (row.kind === 'changed' ? row.cells : [])),
		);
		return { aside: cells.length, inDoubt: parted(merge.rows, 'in doubt').length };
	}

	#exchange = (direction: Exchange['direction'], at: number, rows: readonly Row[]): Exchange => ({
		...{ id: `${this.#name}-${at}`, direction, fileName: 'rows.csv', at, unit: settings.unit, rows },
	});

	/** What each print says, by its title. */
	get prints(): unknown {
		return this.rows
			.map(({ typed }) => columns.flatMap(({ name }) => (typed[name] ? [`${name}: ${typed[name]}`] : [])))
			.toSorted();
	}
}

test.each(programs)('three rounds between two, each file saved by a program on the way: $name', (program) => {
	const [one, other] = [new Profile(1), new Profile(2)];
	for (const [at, title] of ['Ebb', 'Breakwater', 'Net store', 'Mill door', 'Incline', 'Slipway'].entries())
		one.add({
			number: `${at + 1}`,
			title,
			maker: 'Ilse Tarnow',
			edition: `${at + 1}/12`,
			shape: at % 2 ? '3:2' : '1.5',
			price: '340',
		});
	other.rows = one.rows; // a show that was handed over as a whole
	const begun = { id: '0', direction: 'taken', fileName: 'show', at: 0, unit: settings.unit, rows: one.rows } as const;
	one.exchanges = [begun];
	other.exchanges = [begun];
	let at = 0;
	/** A file goes from one to the other through a program, which somebody may use to change the table too. */
	const send = (from: Profile, to: Profile, edit?: (rows: string[][]) => string[][]) =>
		to.import(saved(from.export(++at), program, edit), ++at);

	one.type('Ebb', { price: '365' });
	other.type('Incline', { edition: '7/12', note: 'Glass chipped' });
	const first = send(one, other);
	expect(first.aside, 'the program has spoiled something').toBeGreaterThan(5);
	send(other, one);
	expect(one.prints).toEqual(other.prints);

	one.type('Net store', { shape: '4:3' });
	other.add({ number: '7', title: 'Tar barrels', edition: '1/6' });
	send(other, one, ([head, ...rows]) => {
		// Without ids, sorted, and with a total under it.
		const sorted = rows.toSorted((a, b) => (a[2]! < b[2]! ? -1 : 1));
		const total = head!.map((name) => (name === 'title' ? 'Total' : name === 'price' ? '2065' : ''));
		return [head!, ...sorted, total].map((cells) => cells.slice(1));
	});
	const second = send(one, other);
	expect(second.inDoubt).toBe(0);
	const tar = (profile: Profile) => profile.rows.filter(({ typed }) => typed.title === 'Tar barrels').length;
	expect([tar(one), tar(other), one.rows.length, other.rows.length]).toEqual([1, 1, 7, 7]);

	// A print that was new in the file has no edition before it: a person mends the date that has come of it.
	one.type('Tar barrels', { edition: '1/6' });
	one.type('Mill door', { edition: '8/12' });
	other.type('Slipway', { title: 'Slipway, low water', shape: '2:3' });
	send(one, other, ([head, ...rows]) => [head!, ...rows.map((cells, place) => cells.with(0, `${place + 1}`))]);
	send(other, one);
	expect(one.prints).toEqual(other.prints);
	const cells = (title: string) => one.rows.find(({ typed }) => typed.title === title)!.typed;
	expect([cells('Ebb').price, cells('Incline').edition, cells('Net store').shape, cells('Mill door').edition]).toEqual([
		...['365', '7/12', '4:3', '8/12'],
	]);
	expect([cells('Slipway, low water').shape, cells('Breakwater').edition]).toEqual(['2:3', '2/12']);
});
