import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, onTestFinished, test } from 'vitest';
import { on } from '../app/edits.ts';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { importFile } from '../../../src/app/importFile.ts';
import { nameOfPrint } from '../../../src/core/show/nameOfPrint.ts';
import { encode, encodings } from '../files/encode.ts';
import { runs } from '../../soak.ts';

const list = [
	'print id;title;maker;edition;copies;shape;picture width (mm);paper;mount;top;bottom weight;lab',
	'P-1;Pier;Ilse Tarnow;3/25;2;3:2;456;600 x 450 mm;fit;71;12 %;oak',
	'P-2;"Salt, ""road""; and more";;open;1;1:1;17 1/2 in;A2;;;;',
	'P-3;"Two\r\nlines";Jon Okafor;AP 1/3;;16:9;45,6 cm;;none;;6 mm;x',
	';Ebb;;;;;;;;;;',
].join('\r\n');

const signs = [
	';',
	',',
	'\t',
	'|',
	'"',
	'""',
	"'",
	'\r',
	'\n',
	'\v',
	'\f',
	'\0',
	'\u0085',
	'\u2028',
	'\ufeff',
	'\ufffd',
]
	.concat([
		'\ud83d',
		'=',
		'@',
		'{',
		'[',
		'<',
		' ',
		'\u00a0',
		'\u200b',
		'\u202e',
		'-',
		'9'.repeat(400),
		'é',
		'漢',
		'%',
		'/',
	])
	.concat(['__proto__', 'constructor', '5 constructor', 'NaN', 'Infinity', '1e308', 'title', 'sep=;\n']);

const place = fc.nat(list.length);
/** A list harmed in one of many ways: cut off, a sign put in, a part gone or twice, its cells or lines swapped. */
const harmed = fc.oneof(
	place.map((end) => list.slice(0, end)),
	fc.tuple(place, fc.constantFrom(...signs)).map(([at, sign]) => list.slice(0, at) + sign + list.slice(at)),
	fc.tuple(place, place).map(([a, b]) => list.slice(0, Math.min(a, b)) + list.slice(Math.max(a, b))),
	fc.tuple(place, place).map(([a, b]) => list + list.slice(Math.min(a, b), Math.max(a, b))),
	fc.constantFrom(...signs).map((sign) => list.replaceAll(';', sign)),
	fc.constantFrom(...signs).map((sign) => list.replaceAll('\r\n', sign)),
	fc.tuple(fc.nat(11), fc.constantFrom(...signs)).map(([column, sign]) =>
		list
			.split('\r\n')
			.map((line) =>
				line
					.split(';')
					.with(Math.min(column, line.split(';').length - 1), sign)
					.join(';'),
			)
			.join('\r\n'),
	),
	fc.shuffledSubarray(list.split('\r\n')).map((lines) => lines.join('\r\n')),
	fc.string({ unit: 'binary', maxLength: 300 }),
);

/** The bytes of such a list in some encoding, of which one may be another, or be missing at the end. */
const bytesOf = fc
	.tuple(harmed, fc.constantFrom(...encodings), fc.option(fc.tuple(fc.nat(2000), fc.nat(255))), fc.nat(3))
	.map(([text, encoding, other, missing]) => {
		const bytes = new Uint8Array(encode(text, encoding));
		if (other && other[0] < bytes.length) bytes[other[0]] = other[1];
		return bytes.slice(0, Math.max(0, bytes.length - missing));
	});

async function open(): Promise<Session> {
	const session = await openSession({ databaseName: 'harmed lists' });
	onTestFinished(() => session.close());
	return session;
}

test('a list that is harmed comes in, or it is said where it is damaged, and the open show stays as it is', async () => {
	const session = await open();
	on(session).addRows([{ cells: { title: 'Here' } }], 0, 'Add row');
	await fc.assert(
		fc.asyncProperty(bytesOf, async (bytes) => {
			const before = session.show;
			const came = await importFile(session, new File([bytes], 'list.csv'));
			if (came.kind !== 'reported') {
				expect(['columns', 'review']).toContain(came.kind);
				expect(session.show, 'nothing has changed').toBe(before);
				return;
			}
			expect(came.report.sentences.every((sentence) => sentence.trim() !== '')).toBe(true);
			if (came.report.isProblem) {
				expect(session.show, 'nothing has changed').toBe(before);
				expect(came.report.title).toBe('“list.csv” could not be read');
				expect(came.report.sentences.join(' ')).toMatch(
					/line \d+|the file is|it is |this file|show file|no header is known/i,
				);
				return;
			}
			expect(came.report.title).toMatch(/^\d+ rows? read$/);
			expect(session.show.rows.map(nameOfPrint).every((name) => name !== '')).toBe(true);
			expect(session.results).toHaveLength(session.show.rows.length);
			if (session.show !== before) session.undo();
			expect(session.show.rows).toEqual(before.rows);
		}),
		{ numRuns: runs(30, 5000) },
	);
});
