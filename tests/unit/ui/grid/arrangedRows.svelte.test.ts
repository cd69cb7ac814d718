import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { noFilter } from '../../../../src/core/grid/filter.ts';
import type { Sort } from '../../../../src/core/grid/sortRows.ts';
import type { Views } from '../../../../src/core/grid/views.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { finish } from '../../../../src/core/values/finish.ts';
import { arrangeRows } from '../../../../src/ui/grid/arrangeRows.ts';
import { ArrangedRows } from '../../../../src/ui/grid/arrangedRows.svelte.ts';

const { settings } = readSettings({});
const row = (title: string): Row => ({ id: title, order: 0, typed: { title, 'picture width': '300' } });
const byTitle: Sort = { column: 'title', way: 'up' };

/** Rows that are arranged in slices, each when it is allowed. */
function longShow(...titles: string[]) {
	let rows = $state.raw<readonly Row[]>(titles.map(row));
	let sort = $state.raw<Sort>();
	let isWorkedOut = $state(true);
	let looks = 0;
	let ended = 0;
	const work: (() => void)[] = [];
	const results = $derived(rows.map((each) => judgeRow(each, settings)));
	const arranged = new ArrangedRows({
		get show() {
			return { rows };
		},
		settings,
		get results() {
			looks++;
			return results;
		},
		get isWorkedOut() {
			return isWorkedOut;
		},
		resultAt: (place) => results[place],
		bench: { stepsOfRows: [] },
		get views() {
			return { sort } as Views;
		},
		inSlices: (steps, signal) =>
			new Promise((resolve, reject) =>
				work.push(() => {
					if (!signal.aborted) return resolve(finish(steps));
					ended++;
					reject(new Error('ended'));
				}),
			),
	});
	arranged.arrangeRows = arrangeRows;
	return {
		arranged,
		work,
		looks: () => looks,
		ended: () => ended,
		seen: () => arranged.shown.rows.map(({ id, typed }) => typed.title ?? id).join(' '),
		sortBy: (next: Sort | undefined) => (sort = next),
		type: (id: string, title: string) =>
			(rows = rows.map((each) => (each.id === id ? { ...each, typed: { title } } : each))),
		add: (title: string) => (rows = [...rows, row(title)]),
		workOut: (is: boolean) => (isWorkedOut = is),
		/** Lets slices be done, by default all. */
		go: async (...which: number[]) => {
			for (const [place, act] of work.entries()) if (which.length === 0 || which.includes(place)) act();
			await Promise.resolve();
			await Promise.resolve();
		},
	};
}

test('many rows stay as they were until they are sorted, and what is typed in the meantime moves none', async () => {
	const { arranged, seen, sortBy, type, add, go } = longShow('Tar', 'Ebb', 'Fog');
	expect([seen(), arranged.isArranging]).toEqual(['Tar Ebb Fog', false]);
	sortBy(byTitle);
	const done: string[] = [];
	arranged.whenArranged(() => done.push('first'));
	arranged.whenArranged(() => done.push(seen()));
	expect([seen(), arranged.isArranging, done]).toEqual(['Tar Ebb Fog', true, []]);
	const steps = go();
	type('Ebb', 'Zinc');
	add('Ash');
	await steps;
	expect([seen(), arranged.isArranging, arranged.isLate]).toEqual(['Zinc Fog Ash Tar', false, true]);
	expect(done, 'the last one counts').toEqual(['Zinc Fog Ash Tar']);
	sortBy(undefined);
	expect([seen(), arranged.isArranging], 'that takes no time').toEqual(['Tar Zinc Fog Ash', false]);
	arranged.whenArranged(() => done.push('at once'));
	expect(done).toHaveLength(2);
});

test('of several things that are asked for the last one counts, whichever is done first', async () => {
	const { arranged, seen, sortBy, go, work, ended } = longShow('Tar', 'Ebb', 'Fog');
	sortBy(byTitle);
	void seen();
	arranged.filter = { ...noFilter, words: 'fog' };
	void seen();
	arranged.filter = { ...noFilter, words: 'tar' };
	expect(seen()).toBe('Tar Ebb Fog');
	expect(work).toHaveLength(3);
	await go(1, 0);
	expect([seen(), arranged.isArranging, ended()], 'what is not wanted any more is ended').toEqual([
		'Tar Ebb Fog',
		true,
		2,
	]);
	await go(2);
	expect([seen(), arranged.isArranging]).toEqual(['Tar', false]);
	arranged.filter = noFilter;
	void seen();
	await go();
	expect(seen()).toBe('Ebb Fog Tar');
	arranged.filter = { ...noFilter, words: 'ebb' };
	void seen();
	arranged.filter = noFilter; // as they stand already
	await go();
	expect([seen(), arranged.isArranging]).toEqual(['Ebb Fog Tar', false]);
});

test('a row that is gone to or typed into while rows are arranged is seen afterwards too', async () => {
	const { arranged, seen, go } = longShow('Tar', 'Ebb', 'Fog');
	arranged.filter = { ...noFilter, words: 'tar' };
	expect(seen()).toBe('Tar Ebb Fog');
	arranged.reveal('Fog');
	expect(seen()).toBe('Tar Ebb Fog');
	await go();
	expect(seen()).toBe('Tar Fog');
	arranged.filter = { ...noFilter, words: 'fog' };
	void seen();
	const steps = go();
	arranged.kept = 'Ebb';
	await steps;
	expect(seen()).toBe('Ebb Fog');
});

test('rows are not worked out at once to be sorted: they are arranged when they are', async () => {
	const { arranged, seen, sortBy, workOut, looks, go, work } = longShow('Tar', 'Ebb');
	workOut(false);
	sortBy(byTitle);
	expect([seen(), arranged.isArranging, looks(), work]).toEqual(['Tar Ebb', true, 0, []]);
	workOut(true);
	void seen();
	await go();
	expect([seen(), arranged.isArranging]).toEqual(['Ebb Tar', false]);
});
