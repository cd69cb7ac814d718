import fc from 'fast-check';
import { expect, test } from 'vitest';
import { advise } from '../../../src/core/advice/advise.ts';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { withEditionClashes } from '../../../src/core/findings/editionClashes.ts';
import { accept, withdraw } from '../../../src/core/findings/accepted.ts';
import { harmonise } from '../../../src/core/harmonise/harmonise.ts';
import { bordersOf } from '../../../src/core/reasons/bordersOf.ts';
import { figuresOf } from '../../../src/core/reasons/figuresOf.ts';
import { factsOf } from '../../../src/core/reasons/factsOf.ts';
import { protectionOf } from '../../../src/core/reasons/protection.ts';
import { askableKeys, whyItIsSo } from '../../../src/core/reasons/whyItIsSo.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { columns } from '../../../src/core/show/columns.ts';
import { readSettings, settingKeys } from '../../../src/core/settings/readSettings.ts';
import { needsOf, remarksOf } from '../../../src/core/findings/remarks.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { withCells } from '../../../src/core/show/withCells.ts';
import { runs } from '../../soak.ts';

/** Texts that a cell may hold: what people type, what slips in, and what is out to break something. */
const text = fc.oneof(
	{
		weight: 6,
		arbitrary: fc.constantFrom(
			...[
				'456',
				'306',
				'45.6',
				'7,5 cm',
				'16½',
				'2 5/8 in',
				'1\'4"',
				'3:2',
				'1:1',
				'60 x 45 cm',
				'A3',
				'ANSI B',
				'12 %',
				'3',
			],
			...[
				'0',
				'-5',
				'1/0',
				'1,500',
				'10 m',
				'10000.1',
				'1e9',
				'NaN',
				'Infinity',
				'1:100000',
				'100000:1',
				'0.0000001',
				'½',
			],
			...[
				'fit',
				'none',
				'optical centre',
				'glass',
				'gloss',
				'margin',
				'mount',
				'3/25',
				'AP 1/3',
				'open',
				'0/0',
				'uneven(149/70)',
			],
			...[
				'',
				' ',
				'"',
				'=1+1',
				'<b>',
				'__proto__',
				'constructor',
				'\u0000',
				'\u202e456',
				'９',
				'٣',
				'⅓',
				'1 2 3',
				'x',
				'×',
				'..',
				'1..2',
				'1/2/3',
			],
		),
	},
	{ weight: 2, arbitrary: fc.string({ maxLength: 30 }) },
	{ weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
	{ weight: 1, arbitrary: fc.double().map(String) },
	{ weight: 1, arbitrary: fc.string({ minLength: 2000, maxLength: 4000 }) },
);

const unit = fc.constantFrom<'mm' | 'cm' | 'in'>('mm', 'cm', 'in');

const row: fc.Arbitrary<Row> = fc
	.record({
		typed: fc.dictionary(fc.constantFrom(...columns.map(({ name }) => name)), text, { maxKeys: 9 }),
		units: fc.dictionary(fc.constantFrom(...columns.map(({ name }) => name)), unit, { maxKeys: 3 }),
	})
	.map(({ typed, units }) => ({ id: 'row', order: 1, typed: typed, units }));

const setting = fc.oneof(
	text,
	fc.double(),
	fc.constantFrom(null, true, {}, []),
	fc.dictionary(fc.string({ maxLength: 9 }), text, { maxKeys: 3 }),
);
const settings = fc.oneof(
	{ weight: 3, arbitrary: fc.constantFrom({}, { unit: 'in' }, { unit: 'cm' }) },
	{ weight: 2, arbitrary: fc.dictionary(fc.constantFrom(...settingKeys), setting, { maxKeys: 6 }) },
	{
		weight: 1,
		arbitrary: fc.constant({
			ruler: '0.1 mm',
			sizes: [
				{ name: 'A', width: 10_000, height: 10_000 },
				{ name: 'B', width: 1, height: 1 },
			],
			limits: { exact: '500 x 400 mm', within: '2 mm', thickness: 1, pictureArea: '9999 cm2' },
			frames: [{ name: 'F', width: 501, height: 401, depth: 5, lip: 300 }],
			bench: { kind: 'guide', greatest: 10, least: 9 },
		}),
	},
);

/** What a person typed stands in quotes, and may be anything. */
const withoutQuotes = (sentence: string) => sentence.replace(/“[^”]*”/g, '');

test('nothing of core throws for anything that a cell or a setting can hold', () =>
	fc.assert(
		fc.property(fc.array(row, { minLength: 1, maxLength: 3 }), settings, (some, typed) => {
			const read = readSettings(typed).settings;
			const rows = some.map((one, i) => ({ ...one, id: `${i}`, order: i }));
			const results = withEditionClashes(
				rows,
				rows.map((one) => judgeRow(one, read)),
				read,
			);
			rows.forEach((one, i) => {
				const result = results[i]!;
				for (const finding of result.findings) {
					expect(withoutQuotes(finding.message)).not.toMatch(/undefined|NaN|\[object/);
					for (const { label, change } of finding.mends) {
						expect(label).not.toMatch(/undefined|NaN (mm|cm|in)/);
						judgeRow(withCells(one, change, read), read);
					}
					judgeRow(withCells(one, accept([finding], one), read), read);
					withCells(one, withdraw([finding], one), read);
				}
				for (const { message } of advise(one, result, read).advice) expect(message).not.toMatch(/undefined|NaN/);
				for (const key of askableKeys) expect(whyItIsSo(result, key, read) ?? '').not.toMatch(/undefined|NaN/);
				protectionOf(result, read);
				for (const { figures } of bordersOf(result, read)) expect(figures.join()).not.toMatch(/undefined|NaN/);
				for (const { figures } of figuresOf(result, read)) expect(withoutQuotes(figures)).not.toMatch(/undefined|NaN/);
				for (const fact of factsOf(result, read)) expect(withoutQuotes(fact)).not.toMatch(/undefined|NaN/);
			});
			orderBench(rows, results, read);
			remarksOf(rows, results, read);
			needsOf(results);
			harmonise(rows, read, 1);
		}),
		{ numRuns: runs(10, 3000) },
	));
