import fc from 'fast-check';
import { expect, test } from 'vitest';
import { apply, compose, type Edit, invert, isEmpty, rebase, rowIdOf } from '../../../../src/core/show/edit.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import type { Show } from '../../../../src/core/show/show.ts';
import { action, editOf, namer } from './randomEdits.ts';
import { changedRange } from '../../../../src/core/values/changedRange.ts';
import { runs } from '../../../soak.ts';

const empty: Show = { id: 'show', name: 'Spring', settings: { unit: 'mm', border: '70' }, rows: [] };

const actions = fc.array(action, { minLength: 1, maxLength: 15 });

/** The shows that a sequence of actions passes through, the first without any, and the edits between them. */
function walk(done: readonly Parameters<typeof editOf>[1][]): { shows: Show[]; edits: Edit[] } {
	const makeId = namer();
	const shows = [empty];
	const edits: Edit[] = [];
	for (const one of done) {
		const edit = editOf(shows.at(-1)!, one, makeId);
		edits.push(edit);
		shows.push(apply(shows.at(-1)!, edit));
	}
	return { shows, edits };
}

test('where an edit changes rows is known of what it leaves: outside of that all are the same objects', () =>
	fc.assert(
		fc.property(actions, (done) => {
			const { shows, edits } = walk(done);
			const back = edits.map((edit, step) => [shows[step + 1]!, apply(shows[step + 1]!, invert(edit))] as const);
			const steps = [...edits.map((_, step) => [shows[step]!, shows[step + 1]!] as const), ...back];
			for (const [{ rows: former }, { rows: now }] of steps) {
				const { from, to, shift } = changedRange(former, now);
				expect(now.length).toBe(former.length + shift);
				for (const [place, row] of now.entries()) {
					if (place < from) expect(row).toBe(former[place]);
					if (place >= to) expect(row).toBe(former[place - shift]);
				}
			}
		}),
	));

test('a random sequence of edits is undone to its start and redone to its end, through every show between', () =>
	fc.assert(
		fc.property(actions, (done) => {
			const { shows, edits } = walk(done);
			let show = shows.at(-1)!;
			for (let step = edits.length - 1; step >= 0; step--) {
				show = apply(show, invert(edits[step]!));
				expect(show).toStrictEqual(shows[step]);
			}
			for (const [step, edit] of edits.entries()) {
				show = apply(show, edit);
				expect(show).toStrictEqual(shows[step + 1]);
			}
		}),
		{ numRuns: runs(20, 20_000) },
	));

test('rows stand in ascending order, no two with one number or one name', () =>
	fc.assert(
		fc.property(actions, (done) => {
			for (const { rows } of walk(done).shows) {
				for (const [place, row] of rows.entries())
					if (place > 0) expect(row.order).toBeGreaterThan(rows[place - 1]!.order);
				expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
			}
		}),
	));

test('an edit has one diff a row, and none that changes nothing', () =>
	fc.assert(
		fc.property(actions, (done) => {
			for (const { rows } of walk(done).edits) {
				expect(new Set(rows.map(rowIdOf)).size).toBe(rows.length);
				for (const { before, after } of rows) expect(before).not.toEqual(after);
			}
		}),
	));

test('rows that an edit does not touch, and settings and name likewise, stay the same objects', () =>
	fc.assert(
		fc.property(actions, (done) => {
			const { shows, edits } = walk(done);
			for (const [step, edit] of edits.entries()) {
				const [before, after] = [shows[step]!, shows[step + 1]!];
				const touched = new Set(edit.rows.map(rowIdOf));
				const known = new Set(before.rows);
				for (const row of after.rows) if (!touched.has(row.id)) expect(known.has(row)).toBe(true);
				if (!edit.settings?.length) expect(after.settings).toBe(before.settings);
				if (edit.rows.length === 0) expect(after.rows).toBe(before.rows);
				if (isEmpty(edit)) expect(after).toEqual(before);
			}
		}),
	));

test('edits composed do what they do one after the other, and are undone at once', () =>
	fc.assert(
		fc.property(actions, (done) => {
			const { shows, edits } = walk(done);
			const all = edits.reduce(compose);
			expect(apply(empty, all)).toStrictEqual(shows.at(-1));
			expect(apply(shows.at(-1)!, invert(all))).toStrictEqual(empty);
		}),
	));

test('an edit rebased on the show that it was made on is the same edit', () =>
	fc.assert(
		fc.property(actions, (done) => {
			const { shows, edits } = walk(done);
			const { rows, settings, name } = rebase(edits.at(-1)!, shows.at(-2)!);
			expect({ rows, settings, name }).toEqual({
				rows: edits.at(-1)!.rows,
				settings: edits.at(-1)!.settings,
				name: edits.at(-1)!.name,
			});
		}),
	));

test('an edit made on an older show, rebased on a newer one, is undone to the newer one', () =>
	fc.assert(
		fc.property(actions, action, (done, late) => {
			const { shows } = walk(done);
			const older = shows[Math.floor(shows.length / 2)]!;
			const newer = shows.at(-1)!;
			const made = rebase(editOf(older, late, namer('late')), newer);
			expect(apply(apply(newer, made), invert(made))).toStrictEqual(newer);
		}),
	));

test('what was selected is handed back the other way round', () => {
	const edit: Edit = { label: 'Type title', rows: [], focus: { before: 'A1', after: 'A2' } };
	expect(invert(edit).focus).toEqual({ before: 'A2', after: 'A1' });
});

test('an edit of one row of a long show looks at no other: they stay where they are', () => {
	let looks = 0;
	const rowOf = (place: number, note?: string): Row => ({
		get id() {
			looks++;
			return `r${place}`;
		},
		order: place,
		typed: note === undefined ? {} : { note },
	});
	const rows = Array.from({ length: 30 }, (_, place) => rowOf(place));
	const show: Show = { ...empty, rows };
	const edit: Edit = { label: 'Type note', rows: [{ before: rows[4]!, after: rowOf(4, 'Framed') }] };
	looks = 0;
	const after = apply(show, rebase(edit, show));
	expect(looks).toBeLessThan(10);
	expect(after.rows.map(({ typed }) => typed.note)).toEqual(
		rows.map((_, place) => (place === 4 ? 'Framed' : undefined)),
	);
	expect(after.rows.every((row, place) => place === 4 || row === rows[place])).toBe(true);
});
