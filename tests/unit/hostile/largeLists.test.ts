import 'fake-indexeddb/auto';
import { describe, expect, onTestFinished, test } from 'vitest';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { importReviewed, importText } from '../../../src/app/importFile.ts';
import type { FileReport } from '../../../src/core/imports/fileReports.ts';
import { nameOfPrint } from '../../../src/core/show/nameOfPrint.ts';
import { cellViews } from '../../../src/ui/grid/cellView.ts';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { equalEditions, equalIds, largeCells, manyCells, manyColumns } from './largeLists.ts';
import { isSoak, runs } from '../../soak.ts';

/** The columns in which such a cell is tried, one of each kind. */
const all = ['title', 'picture width', 'mount', 'shape', 'bottom weight', 'board', 'edition', 'copies', 'lab'];

let opened = 0;

/** What is said of a list, and the show that it comes into. */
async function taken(list: string): Promise<{ report: FileReport; session: Session }> {
	const session = await openSession({ databaseName: `large list ${++opened}` });
	onTestFinished(() => session.close(), 120_000);
	let came = await importText(session, list);
	if (came.kind === 'review') {
		// Prints that may be the same one twice are asked about: here each is meant.
		came.review.chooseRows(came.review.merge.rows, 'there');
		came = await importReviewed(session, came.review);
	}
	if (came.kind !== 'reported') throw new Error(`asked: ${came.kind}`);
	return { report: came.report, session };
}

/** More of one text than this is never laid out beside others. */
const mostShown = 301;

const megabytes = runs(1, 5);

describe.each(largeCells(megabytes * 1_000_000).map((large, place) => [...large, place] as const))(
	`a cell of ${megabytes} MB of %s`,
	(_, cell, place) => {
		test('comes in in every column, and no more of it is shown than one can read', async () => {
			for (const column of isSoak ? all : [place % 2 === 0 ? 'picture width' : 'shape']) {
				const { report, session } = await taken(`number,${column},side\n1,${cell},70\n`);
				const [row] = session.show.rows;
				const text = { ...row!.extra, ...row!.typed }[column] ?? '';
				expect(text.length, 'all of it is kept').toBeGreaterThanOrEqual(1);
				if (/^[^"]/.test(cell)) expect(text).toBe(cell);
				const result = session.results[0]!;
				const source = { row: row!, result, steps: [], settings: session.settings };
				const shown = [
					nameOfPrint(row!, 0),
					...cellViews(source, gridColumns).map((view) => view.text),
					...result.findings.map(({ message }) => message),
					...report.sentences,
				];
				for (const each of shown) expect(each.length).toBeLessThanOrEqual(2 * mostShown);
			}
		});
	},
);

const columnCount = runs(2000, 100_000);

test(`a list of ${columnCount} columns comes in, and is said in a few words`, async () => {
	const { report, session } = await taken(manyColumns(columnCount));
	const counts = session.show.rows.map(({ extra }) => Object.keys(extra ?? {}).length);
	expect(counts).toEqual([columnCount, columnCount, columnCount]);
	expect(report.sentences.join(' ').length).toBeLessThan(1000);
});

const cellCount = runs(10_000, 100_000);

test(`a list of ${cellCount} cells without a header comes in, and not each of them is said`, async () => {
	const { report } = await taken(manyCells(cellCount));
	expect(report.sentences.length).toBeLessThan(220);
	expect(report.sentences.at(-1)).toBe(`And ${cellCount - 200} more notes like these.`);
});

const rowCount = runs(500, 5000);

test(`${rowCount} rows of one print id come in, each with a name of its own, and are said in one sentence`, async () => {
	const { report, session } = await taken(equalIds(rowCount));
	expect(new Set(session.show.rows.map(({ id }) => id)).size).toBe(rowCount);
	expect(report.sentences).toEqual([
		`${rowCount} rows added.`,
		`Line 3, column print id: “same” names a row before it too; so it does in lines 4, 5, 6, 7, 8, 9 and ${rowCount - 8} more.`,
	]);
});

test(`${rowCount} prints of one number of one edition are each said, in a few words`, async () => {
	const { session } = await taken(equalEditions(rowCount));
	const said = session.results.map(({ findings }) => findings.find(({ code }) => code === 'edition-clash')?.message);
	expect(said[0]).toBe(
		`Edition 3/25 of “Pier” is there ${rowCount} times: also in rows 2 and 3 and 4 and 5 and 6 and 7 and 8 and 9 and 10 and 11 and 12 and 13 and ${rowCount - 13} more.`,
	);
	expect(Math.max(...said.map((each) => each?.length ?? 0))).toBeLessThan(200);
});
