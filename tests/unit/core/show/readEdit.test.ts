import fc from 'fast-check';
import { expect, test } from 'vitest';
import { apply, type Edit } from '../../../../src/core/show/edit.ts';
import { readEdit, readingEdit } from '../../../../src/core/show/readEdit.ts';
import type { Show } from '../../../../src/core/show/show.ts';
import { action, editOf, namer } from './randomEdits.ts';

const show: Show = { id: 'show', name: 'Spring', settings: { unit: 'mm', border: '70' }, rows: [] };
const row = { id: 'a', order: 1, typed: { title: 'Pier' } };
const tick = { row: 'a', copy: 1, part: 'mount', side: 'spoilt', times: 2 };

test('whatever a person does is read as it was kept', () =>
	fc.assert(
		fc.property(fc.array(action, { minLength: 1, maxLength: 8 }), (done) => {
			const makeId = namer();
			let now = show;
			for (const one of done) {
				const edit: Edit = structuredClone(editOf(now, one, makeId));
				expect(readEdit(edit)).toBe(edit);
				now = apply(now, edit);
			}
		}),
		{ numRuns: 100 },
	));

test.each<[what: string, edit: object]>([
	['ticks', { ticks: [{ before: tick }, { after: { ...tick, times: 3 } }] }],
	[
		'the name, views and what was exchanged',
		{ name: { before: 'a', after: 'b' }, views: { before: undefined, after: {} }, exchange: { after: 'x' } },
	],
	['what was selected', { focus: { before: { row: 'a' }, after: undefined } }],
])('%s: read', (_, edit) => {
	expect(readEdit({ label: 'x', rows: [], ...edit })).toBeDefined();
});

test.each<[what: string, edit: unknown]>([
	['nothing', undefined],
	['no label', { rows: [] }],
	['rows that are no list', { label: 'x', rows: {} }],
	['a diff of nothing', { label: 'x', rows: [{}] }],
	['a row that is none', { label: 'x', rows: [{ after: { id: 7 } }] }],
	['a row with a number for a text', { label: 'x', rows: [{ before: row, after: { ...row, typed: { title: 7 } } }] }],
	['a tick of no kind', { label: 'x', rows: [], ticks: [{ after: { ...tick, side: 'inside' } }] }],
	['a name that is a number', { label: 'x', rows: [], name: { before: 'a', after: 7 } }],
	['a setting without a key', { label: 'x', rows: [], settings: [{ after: '70' }] }],
	['settings that are no list', { label: 'x', rows: [], settings: { border: '70' } }],
	['a part that nobody knows', { label: 'x', rows: [], lights: [] }],
	['an exchange that is a number', { label: 'x', rows: [], exchange: { after: 7 } }],
])('%s: no edit', (_, edit) => {
	expect(readEdit(edit)).toBeUndefined();
});

const long = Array.from({ length: 1200 }, (_, place) => ({ after: { ...row, id: `r${place}`, order: place } }));

test('an edit of very many rows is read in steps, to the same end', () => {
	const edit = { label: 'x', rows: long };
	const steps = readingEdit(edit);
	let pauses = 0;
	let step = steps.next();
	for (; !step.done; step = steps.next()) pauses++;
	expect(step.value).toBe(edit);
	expect(pauses).toBeGreaterThanOrEqual(3);
});

test.each<[what: string, last: object]>([
	['a row that is none far down', { after: { id: 7 } }],
	['a row twice, far apart', long[3]!],
])('%s: no edit', (_, last) => {
	expect(readEdit({ label: 'x', rows: [...long, last] })).toBeUndefined();
});
