import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, onTestFinished, test } from 'vitest';
import { on } from '../app/edits.ts';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { importFile, importText } from '../../../src/app/importFile.ts';
import { jobsOf } from '../../../src/core/sheets/jobsOf.ts';
import { storedVersion } from '../../../src/core/show/upgrade.ts';
import type { Show } from '../../../src/core/show/show.ts';
import { backupFormat, backupVersion, writeBackup } from '../../../src/files/backupFile.ts';
import { jsonProblem } from '../../../src/files/jsonProblem.ts';
import { mostOfFile } from '../../../src/files/kindOfFile.ts';
import { readShowFile, showFormat, writeShowFile } from '../../../src/files/showFile.ts';
import { mutationOf } from './mutations.ts';
import { isSoak, runs } from '../../soak.ts';

const mount = { row: 'a', copy: 1, part: 'mount' };
const piece = { x: 0, y: 0, width: 1200, height: 800 };
/** A small show with something in every part of a show file. */
const document = {
	format: showFormat,
	version: storedVersion,
	name: 'Salt and slate',
	settings: {
		unit: 'mm',
		mountSize: '500 x 400 mm',
		sizes: [
			{ name: 'Small', width: '300', height: 200 },
			{ name: 'Large', width: '70 cm', height: '50 cm' },
		],
		border: 65,
		bottomWeight: '10 %',
		limits: { largest: '80 x 60 cm', thickness: 5 },
		boards: [{ name: 'Chalk', width: 1200, height: 800, thickness: 1.4, price: 1250, pack: 5, grain: 'width' }],
		offcuts: [{ board: 'Chalk', width: 500, height: 400, count: 2 }],
		frames: [{ name: 'Oak', width: 502, height: 402, depth: 20, lip: 6 }],
		bench: { kind: 'guide and stops', greatest: 100, correction: '-0.5 mm', bladeEvery: 10 },
		labels: { name: 'forbidden', corner: 'top left' },
	},
	views: { inHand: 'Mine', sort: { column: 'title', way: 'up' }, list: [{ name: 'Mine', hidden: ['top'] }] },
	rows: [
		{ id: 'a', order: 1, typed: { title: 'Pier', shape: '3:2', board: 'Chalk', frame: 'Oak' }, extra: { lab: 'x' } },
		{ id: 'b', order: 2, typed: { title: 'Quay', 'picture width': '30', top: '7,5' }, units: { top: 'cm' } },
	],
	ticks: [
		{ ...mount, side: 'left', border: 65, width: 500, height: 400, board: 'Chalk', thickness: 1.4 },
		{ ...mount, copy: 2, side: 'spoilt', times: 2 },
	],
	hung: [{ row: 'a', wall: 'North', left: 120, centre: 1450 }],
	made: [{ row: 'a', copy: 2, step: 'window clean' }],
	printing: { paper: 'A4', shown: ['list'], labels: { back: { sheet: 'Small', start: 3 } } },
	cutSheets: [
		{
			id: 's1',
			stock: { board: 'Chalk', kind: 'sheet', width: 1200, height: 800, trim: 5, grain: 'width', price: 1250, pack: 5 },
			blanks: [{ ...mount, x: 5, y: 5, width: 500, height: 400, turned: true }],
			cuts: [{ piece, across: 'width', at: 505 }],
			offcuts: [{ x: 505, y: 0, width: 695, height: 800 }],
			made: [0],
			isSpoilt: false,
		},
	],
};
const backup = {
	format: backupFormat,
	version: backupVersion,
	shows: [
		{ id: 'one', ...document },
		{ id: 'two', isArchived: true, ...document, name: 'Ebb' },
	],
};

let opened = 0;
async function open(): Promise<Session> {
	const session = await openSession({ databaseName: `mutated ${++opened}` });
	onTestFinished(() => session.close());
	return session;
}

/** A sentence that says where: the line, or the part of the file and mostly its place in it. */
const place =
	/\b(?:line \d+|name|settings|views|rows|ticks|cutSheets|hung|made|printing|shows|version)\b|not marked as one|holds no show|the file is empty/i;

/** Opens a show that came of a file and looks at all of it: nothing throws, and it can be written and read again. */
function lookAtAllOf(show: Omit<Show, 'id'>, session: Session): void {
	on(session).replaceShow(show, 'Open');
	if (session.question) session.answer('keep');
	expect(session.results).toHaveLength(show.rows.length);
	expect(session.bench.steps).toBeInstanceOf(Array);
	const { rows, ticks = [] } = session.show;
	expect(jobsOf(rows, session.results, session.settings, { ticks }).jobs).toBeInstanceOf(Array);
	for (const { key, problem } of session.settingsProblems)
		expect([key, problem].every((text) => text !== '')).toBe(true);
	const again = readShowFile(writeShowFile(session.show));
	if ('problem' in again) throw new Error(again.problem);
	expect(writeShowFile(again.value)).toBe(writeShowFile(session.show));
}

test('the show and the backup that are harmed are whole to begin with', () => {
	const show = readShowFile(JSON.stringify(document));
	if ('problem' in show) throw new Error(show.problem);
	expect(JSON.parse(writeShowFile(show.value))).toEqual(document);
	const shows = backup.shows.map(({ id, name, ...each }) => ({
		show: { ...show.value, id, name },
		isArchived: 'isArchived' in each,
	}));
	expect(JSON.parse(writeBackup(shows))).toEqual(backup);
});

describe.each([
	['show file', document],
	['backup', backup],
])('a %s that is harmed', (kind, whole) => {
	test('opens, or says in a sentence where it is damaged, and the open show stays as it is', async () => {
		const session = await open();
		on(session).addRows([{ cells: { title: 'Here' } }], 0, 'Add row');
		const other = await open();
		await fc.assert(
			fc.asyncProperty(mutationOf(whole), async ({ text }) => {
				const before = session.show;
				const came = await importText(session, text);
				expect(session.show, 'nothing has changed').toBe(before);
				if (came.kind === 'show') lookAtAllOf(came.show, other);
				else if (came.kind === 'backup') for (const each of came.shows) lookAtAllOf(each.show, other);
				else {
					if (came.kind !== 'reported') throw new Error(`taken for a list: ${came.kind}`);
					expect(came.report.isProblem).toBe(true);
					const [sentence = '', nothing] = came.report.sentences;
					expect(nothing).toBe('Nothing here has changed.');
					expect(sentence).toMatch(/^\p{Lu}.*[.?!]$/su);
					expect(sentence).toMatch(place);
					expect(sentence.length).toBeLessThan(800);
				}
				expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
			}),
			{ numRuns: runs(kind === 'backup' ? 20 : 40, 5000) },
		);
	});
});

describe('a file of tens of megabytes', () => {
	const large = 'x'.repeat(45_000_000);
	const long = isSoak ? large : 'x'.repeat(15_000_000); // the longest takes six seconds

	test.each<[string, string, RegExp]>([
		['a show of one long name, cut off', `{"format":"${showFormat}","name":"${long}`, /line 1/],
		['a show of one long name without its end', `{"format":"${showFormat}","name":"${long}"`, /breaks off in line 1/],
		[
			'a show whose settings are nested without end',
			`{"format":"${showFormat}","version":1,"settings":{"a":${'['.repeat(1e6)}${']'.repeat(1e6)}}}`,
			/settings/,
		],
		[
			'a version nested 10,000 deep',
			`{"format":"${showFormat}","version":${'['.repeat(1e4)}${']'.repeat(1e4)}}`,
			/version/,
		],
		[
			'a backup of a version nested 10,000 deep',
			`{"format":"${backupFormat}","version":${'['.repeat(1e4)}${']'.repeat(1e4)}}`,
			/version/,
		],
	])('%s', async (_, text, problem) => {
		const session = await open();
		const { show } = session;
		const came = await importText(session, text);
		expect(came).toMatchObject({ kind: 'reported', report: { isProblem: true } });
		if (came.kind === 'reported') expect(came.report.sentences.join(' ')).toMatch(problem);
		expect(session.show).toBe(show);
	});

	test('more than is read at all is not looked into', async () => {
		const session = await open();
		const file = new File([large, large], 'large.json');
		expect(file.size).toBeGreaterThan(mostOfFile);
		expect(await importFile(session, file)).toMatchObject({
			kind: 'reported',
			report: { isProblem: true, sentences: [expect.stringMatching(/^It holds 90 MB/), 'Nothing here has changed.'] },
		});
	});

	test('a long string is looked through for where it is no JSON', () => {
		expect(jsonProblem(`{"a":"${large}"}`)).toBeUndefined();
		expect(jsonProblem(`{"a":"${large}\n"}`)).toMatch(/^it is damaged in line 1: /);
	});
});
