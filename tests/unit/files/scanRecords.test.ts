import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { scanRecords } from '../../../src/files/scanRecords.ts';

describe('records and their lines', () => {
	test.each<[string, string, string, number[]]>([
		['LF', 'a,b\nc,d\n', 'a,b\nc,d', [1, 2]],
		['CRLF', 'a,b\r\nc,d\r\n', 'a,b\nc,d', [1, 2]],
		['CR', 'a,b\rc,d', 'a,b\nc,d', [1, 2]],
		['all of them in one file', 'a\r\nb\nc\rd', 'a\nb\nc\nd', [1, 2, 3, 4]],
		['a line end in quotes', 'a,"b\r\nc"\r\nd,e\r\n', 'a,"b\r\nc"\nd,e', [1, 3]],
		['a quote in quotes', '"a ""b\nc"" d",e\nf,g', '"a ""b\nc"" d",e\nf,g', [1, 3]],
		['a quote within a cell', '16" x 20",b\nc,d', '16" x 20",b\nc,d', [1, 2]],
		['blank lines', 'a\n\n\nb', 'a\n\n\nb', [1, 2, 3, 4]],
		['an empty last cell', 'a,\nb,', 'a,\nb,', [1, 2]],
		['blanks behind a closing quote', '"a" ,b\nc,"""" ', '"a",b\nc,""""', [1, 2]],
		['blanks before an opening quote', 'a,  "b, c"\nd, "e', 'a,"b, c"\nd, "e', [1, 2]],
		['a quote behind blanks that is none', 'a, "b" c,d\n', 'a, "b" c,d', [1]],
		['nothing', '', '', []],
	])('%s', (_, typed, text, lines) =>
		expect(scanRecords(typed, ',')).toEqual({ text, lines, quoteProblem: undefined }),
	);
});

test('many quotes behind blanks that are never closed do not take for ever', () => {
	expect(scanRecords(' "b"",'.repeat(100_000), ',').lines).toEqual([1]);
	// Read badly, this lasts minutes, and the runner gives up.
});

describe('breaches of quoting', () => {
	test.each<[string, string, number, number, RegExp]>([
		['never closed', 'a,b\nc,"d\ne,f\n', 2, 1, /never closed/],
		['never closed, in a cell of several lines before it', '"a\nb",c\nd,e\n"f', 4, 0, /never closed/],
		['text behind it', 'a,b\n"16" frame",c\n', 2, 0, /text follows a closing quote/],
		['the first of two', 'a\n"b"c\n"d', 2, 0, /text follows/],
	])('%s', (_, text, line, field, problem) => {
		expect(scanRecords(text, ',').quoteProblem).toMatchObject({
			line,
			field,
			problem: expect.stringMatching(problem) as unknown,
		});
	});
});

test('whatever the line end, papaparse finds in the records what was written', () =>
	fc.assert(
		fc.property(
			fc.array(
				fc.array(fc.string({ unit: fc.constantFrom('a', '"', ',', ';', '\n', '\r', ' ', "'") }), {
					minLength: 2,
					maxLength: 4,
				}),
				{
					minLength: 1,
					maxLength: 6,
				},
			),
			fc.constantFrom(',', ';'),
			fc.constantFrom('\r\n', '\n', '\r'),
			(records, delimiter, newline) => {
				const text = Papa.unparse(records, { delimiter, newline });
				const scanned = scanRecords(text, delimiter);
				expect(scanned.quoteProblem).toBeUndefined();
				expect(Papa.parse(scanned.text, { delimiter, newline: '\n' }).data).toEqual(records);
				expect(scanned.lines).toHaveLength(records.length);
			},
		),
		{ numRuns: 1000 },
	));
