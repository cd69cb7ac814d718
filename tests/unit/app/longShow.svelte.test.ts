import 'fake-indexeddb/auto';
import { expect, onTestFinished, test, vi } from 'vitest';
import { otherWork } from '../../../src/app/inSlices.ts';
import { mostAtOnce, WorkedOut } from '../../../src/app/workedOut.svelte.ts';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { withFindingsAcross } from '../../../src/core/findings/acrossRows.ts';
import type { RowResult } from '../../../src/core/findings/rowResult.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import type { CellTexts, Row } from '../../../src/core/show/row.ts';
import { on } from './edits.ts';
import { openInOwnDatabase } from './openInOwnDatabase.ts';

const open = openInOwnDatabase();

/** Rows of which the last two have the same number of one edition. */
const rows = (count: number): { cells: CellTexts }[] =>
	Array.from({ length: count }, (_, place) => ({
		cells: {
			'picture width': `${200 + place}`,
			'picture height': '150',
			title: 'Tide',
			edition: `${Math.min(place + 1, count - 1)}/999`,
		},
	}));

async function openLong(): Promise<Session> {
	const session = await open();
	on(session).addRows(rows(mostAtOnce + 30), 0, 'Add');
	await session.whenJudged;
	return session;
}

/** What is said of results, without the mends that would be worked out for each. */
const said = (results: readonly (RowResult | undefined)[]) =>
	results.map((result) => [result?.solved, result?.findings.map(({ code }) => code)]);

/** What is worked out from the first on. */
function fromScratch({ show, settings }: Session) {
	const alone = show.rows.map((row) => judgeRow(row, settings));
	return { alone: said(alone), across: said(withFindingsAcross(show.rows, alone, settings)) };
}

test('in a long show a row that is seen follows a changed default at once, and all others a little later', async () => {
	const session = await openLong();
	expect(session.isWorkedOut).toBe(true);
	on(session).changeSettings({ mountSize: '600 x 450 mm' });
	expect(session.isWorkedOut).toBe(false);
	const { alone, across } = fromScratch(session);
	expect(said([session.resultAt(0), session.resultAt(mostAtOnce)])).toEqual([alone[0], alone[mostAtOnce]]);
	let time = 0;
	const clock = vi.spyOn(performance, 'now').mockImplementation(() => time++); // a slice is a few rows
	await otherWork();
	expect(session.isWorkedOut).toBe(false);
	on(session).changeSettings({ mountSize: '700 x 500 mm' }); // the last one counts
	await session.whenJudged;
	clock.mockRestore();
	expect(session.isWorkedOut).toBe(true);
	const last = fromScratch(session);
	expect(last.across).not.toEqual(across);
	expect(said(session.show.rows.map((_, place) => session.resultAt(place)))).toEqual(last.across);
	expect(said(session.results)).toEqual(last.across);
	expect(session.results.at(-1)!.findings[0]!.code).toBe('edition-clash');
	on(session).typeCells([{ id: session.show.rows[3]!.id, cells: { top: '95' } }], 'Type top');
	expect(session.isWorkedOut).toBe(true); // one row is worked out at once
	expect(said([session.resultAt(3)])).toEqual([fromScratch(session).across[3]]);
});

test('whoever asks for all rows before they are worked out is given them as they are now', async () => {
	const session = await openLong();
	on(session).changeSettings({ mountSize: '600 x 450 mm' });
	expect(said(session.results)).toEqual(fromScratch(session).across);
	expect(session.bench).toEqual(orderBench(session.show.rows, session.results, session.settings));
});

test('many rows that come at once are worked out as a long show is, and the cutting order follows', async () => {
	const session = await openLong();
	on(session).addRows(rows(mostAtOnce + 1), 0, 'Add');
	expect(session.isWorkedOut).toBe(false);
	await session.whenJudged;
	expect(said(session.results)).toEqual(fromScratch(session).across);
	const { steps } = orderBench(session.show.rows, session.results, session.settings);
	await expect.poll(() => session.lateBench.steps.length).toBe(steps.length);
});

test('a short show, and a long one that hangs on walls, is worked out whenever it is asked for', async () => {
	const session = await open();
	on(session).addRows(rows(mostAtOnce), 0, 'Add');
	on(session).changeSettings({ mountSize: '600 x 450 mm' });
	expect([session.isWorkedOut, said(session.results)]).toEqual([true, fromScratch(session).across]);
	on(session).addRows(rows(2), 0, 'Add');
	expect(session.isWorkedOut).toBe(false);
	on(session).changeSettings({ walls: [{ name: 'Long', length: '90 m' }] });
	expect(session.isWorkedOut).toBe(true);
	expect(session.resultAt(0)!.hung).toBeDefined();
});

test('where one row of a long show is asked for before they are worked out, no other is looked at', () => {
	let looks = 0;
	const row = (place: number): Row => ({
		id: `r${place}`,
		order: place,
		get typed() {
			looks++;
			return { 'picture width': '300' };
		},
	});
	const show = {
		id: 'show',
		name: 'Show',
		settings: {},
		rows: Array.from({ length: mostAtOnce + 1 }, (_, n) => row(n)),
	};
	const workedOut = new WorkedOut(() => show, undefined);
	onTestFinished(() => workedOut.stop());
	looks = 0;
	void workedOut.moneySettings; // asks each row for its prices, and works none out
	const looksAtPrices = looks;
	expect(looksAtPrices).toBeLessThanOrEqual(3 * show.rows.length);
	looks = 0;
	expect(workedOut.resultAt(7)!.solved.pictureWidth).toBe(3_000_000_000);
	expect(looks).toBeGreaterThan(0);
	expect(looks).toBeLessThan(mostAtOnce);
});
