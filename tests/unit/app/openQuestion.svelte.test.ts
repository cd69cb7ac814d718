import { expect, test, vi } from 'vitest';
import { judgingPart } from '../../../src/app/judging.ts';
import { OpenQuestion } from '../../../src/app/openQuestion.svelte.ts';
import { tickFor } from '../../../src/core/bench/ticks.ts';
import { typeCells } from '../../../src/core/commands/typeCells.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Edit } from '../../../src/core/show/edit.ts';
import type { Show } from '../../../src/core/show/show.ts';

const { settings } = readSettings({});
const row = { id: 'r', order: 1, typed: { shape: '3:2', 'picture width': '300' } };
const results = [judgeRow(row, settings)];
const cut = tickFor(row, results[0]!, settings, { row: 1, copy: 1, part: 'mount', side: 'top' })!;
const uncut: Show = { id: 'show', name: 'Show', settings: {}, rows: [row] };
const shows = { uncut, cut: { ...uncut, ticks: [cut] } };
const typed = typeCells(uncut, [{ id: 'r', cells: { top: '90' } }], settings, 'Type top');
const renamed: Edit = { label: 'Rename', rows: [], name: { before: 'Show', after: 'Spring' } };

test('before what asks about cuts is loaded, nothing is changed that might spoil one, and all else is', async () => {
	const asking = new OpenQuestion();
	const waits = (edit: Edit, show: Show) =>
		asking.ask(edit, undefined, { show, settings, results }, (rows) => rows.map((each) => judgeRow(each, settings)));
	const part = vi.spyOn(judgingPart, 'part', 'get').mockReturnValue(undefined);
	expect([waits(typed, shows.uncut), waits(renamed, shows.cut), waits(typed, shows.cut)]).toEqual([false, false, true]);
	part.mockRestore();
	expect(asking.question).toBeUndefined(); // nothing to answer: it is not made
	await judgingPart.load();
	expect([waits(typed, shows.uncut), waits(renamed, shows.cut), waits(typed, shows.cut)]).toEqual([false, false, true]);
	expect(asking.question).toMatchObject({ label: 'Type top', wronged: [{}] });
});
