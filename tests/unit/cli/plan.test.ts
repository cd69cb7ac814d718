import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { planCommand } from '../../../src/cli/planCommand.ts';
import { isSoak } from '../../soak.ts';

const root = resolve('.');
const folder = mkdtempSync(join(tmpdir(), 'evenhang-plan-'));
const file = (name: string) => join(folder, name);

beforeAll(() => {
	const files: Readonly<Record<string, string | Uint8Array>> = {
		'rows.csv':
			'print id;title;picture width (cm);picture height (cm)\nE1;Ebb;45,6;30,6\n;Flow;45,6;3o\n\n;"Ebb; again";45,6;30,6\n',
		'show.json': JSON.stringify({ mountSize: '610 x 460 mm', border: 62, bottomWeight: '9 %', overlap: '3 mm' }),
		'slip.json': JSON.stringify({ border: 'wide', boards: [{ name: 'Chalk', width: 'x', height: 900 }] }),
		'typo.json': JSON.stringify({ bordr: 70 }),
		'broken.json': '{"border": 70,}',
		'twice.csv': 'title,side\na,1\n'.replace('side', 'title'),
		'ragged.csv': 'title,note\na,b,c\n',
		'picture.csv': Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13),
		'empty.csv': '',
	};
	for (const [name, content] of Object.entries(files)) writeFileSync(file(name), content);
	mkdirSync(file('folder.csv'));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs the command as from the test's folder. */
async function plan(...args: string[]) {
	const { exitCode, output, said } = await planCommand(args, folder);
	return { status: exitCode, stdout: output, stderr: said.map((line) => `${line}\n`).join('') };
}

/** What of the lists of materials is looked at. */
interface Listed {
	board?: string;
	frame?: string;
	kind?: string;
	name?: string;
	cost: number | null;
}

interface Plan {
	rows: {
		framed?: { weightKg: number };
		onPaper?: object;
		id: string;
		title: string;
		typed: Record<string, string>;
		solved: Record<string, number | null>;
		findings: { code: string; level: string; cells: string[]; message: string }[];
		steps: number[];
	}[];
	sheets: {
		board: string;
		cost: number;
		count: number;
		leastCost: number;
		leastCount: number;
		proven: boolean;
		layouts: { times: number; blanks: { row: number; copy: number; part: string; turned: boolean }[] }[];
	}[];
	bench: {
		changes: number;
		leastChanges: number;
		proven: boolean;
		steps: { guide: number; cuts: { row: number; copy: number; part: string; side: string }[] }[];
	};
}

describe('rows and bench as JSON', () => {
	let read: Plan;
	beforeAll(async () => {
		const { status, stdout, stderr } = await plan('rows.csv', '--show', 'show.json', '--json', '--seconds', '1.5');
		expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
		read = JSON.parse(stdout) as Plan;
	});

	test('every row, as typed and as worked out, in millimetres', () => {
		expect(read.rows[0]).toEqual({
			id: 'E1',
			title: 'Ebb',
			typed: { 'print id': 'E1', title: 'Ebb', 'picture width': '45,6', 'picture height': '30,6' },
			solved: {
				mountWidth: 610,
				mountHeight: 460,
				windowWidth: 450,
				windowHeight: 300,
				pictureWidth: 456,
				pictureHeight: 306,
				side: 80,
				top: 77,
				bottom: 83,
				overlapSide: 3,
				overlapTop: 3,
				overlapBottom: 3,
			},
			findings: [],
			steps: [1, 2, 3],
			framed: { frame: null, width: 610, height: 460, depth: 1.7, weightKg: 0.333914 },
		});
		expect(read.rows.map(({ title }) => title)).toEqual(['Ebb', 'Flow', 'Ebb; again']);
	});

	test('who bought a print is neither in the CSV nor in the JSON', async () => {
		const rows = [{ id: 'a', order: 1, typed: { title: 'Ebb', shape: '3:2', stage: 'sold', buyer: 'R. Thistle' } }];
		const show = { format: 'evenhang-show', version: 8, name: 'Sold', settings: {}, rows };
		writeFileSync(file('sold.json'), JSON.stringify(show));
		writeFileSync(file('sold.csv'), 'title,shape,stage,buyer,buyer email\nEbb,3:2,sold,R. Thistle,thistle@mill\n');
		for (const args of [['sold.json'], ['sold.csv'], ['sold.json', '--json'], ['sold.csv', '--json']]) {
			const { status, stdout, stderr } = await plan(...args);
			const leftOut = args[0] === 'sold.csv' ? ['buyer', 'buyer email'] : [];
			const said = leftOut.map((name) => `column ${name} says who bought a print: left out\n`).join('');
			expect({ status, stderr }).toEqual({ status: 0, stderr: said });
			expect(stdout, args.join(' ')).toContain('sold');
			expect(stdout, args.join(' ')).not.toMatch(/Thistle|buyer/i);
		}
	});

	test('how a row is framed, and where it lies on its paper', async () => {
		const frame = { name: 'Oak', width: 500, height: 400, depth: 20, lip: 6, moulding: 20, weight: 0.5, count: 1 };
		const papers = [{ name: 'Rag', width: 329, height: 483, margin: 5 }];
		writeFileSync(file('framed.json'), JSON.stringify({ mountSize: 'frame', frame: 'Oak', frames: [frame], papers }));
		writeFileSync(
			file('framed.csv'),
			'title,picture width,picture height,paper,margin top,copies\nEbb,300,200,rag,20,2\n',
		);
		const { status, stdout } = await plan('framed.csv', '--show', 'framed.json', '--json');
		expect(status).toBe(0);
		const [row] = (JSON.parse(stdout) as Plan).rows;
		// 500 + 3 + 2 · (20 − 6); glass 2, mount 1.4, print 0.3, backing 3 mm; 0.2 m² · (5 + 4.7 · 0.7) + 0.5 · 1.924 m
		expect(row).toMatchObject({
			framed: { frame: 'Oak', width: 531, height: 431, depth: 6.7, weightKg: 2.62 },
			onPaper: { paper: 'Rag', left: 91.5, top: 20, right: 91.5, bottom: 109, copies: 2 },
		});
		expect(row!.findings.map(({ code }) => code)).toContain('no-frame');
	});

	test('what cannot be read is told to its row, and is no failure', () => {
		const { findings, typed } = read.rows[1]!;
		expect(findings).toContainEqual(
			expect.objectContaining({ code: 'not-read', level: 'stop', cells: ['picture height'] }),
		);
		expect(Object.keys(findings[0]!)).toEqual(['code', 'level', 'cells', 'message']);
		expect(typed['picture height']).toBe('3o');
	});

	test('the cutting order, each setting once', () => {
		const { changes, leastChanges, proven, steps } = read.bench;
		expect({ changes, leastChanges, proven }).toEqual({ changes: 3, leastChanges: 3, proven: true });
		expect(steps.map(({ guide }) => guide)).toEqual([83, 80, 77]);
		expect(steps[0]!.cuts).toEqual([
			{ row: 1, copy: 1, part: 'mount', side: 'bottom' },
			{ row: 3, copy: 1, part: 'mount', side: 'bottom' },
		]);
		expect(steps.flatMap(({ cuts }) => cuts)).toHaveLength(8);
	});
});

describe('rows as text', () => {
	test('can be planned again, with the same result', async () => {
		const first = await plan('rows.csv', '--show', 'show.json');
		expect(first).toMatchObject({ status: 0, stderr: '' });
		writeFileSync(file('again.csv'), first.stdout);
		expect(await plan('again.csv', '--show', 'show.json')).toEqual(first);
		expect(first.stdout.split('\n')[1]).toMatch(
			/^E1,,Ebb,.*,610,460,450,300,456,306,80,77,83,3,3,3,610,460,0.334,,,,1 2 3,unit=mm; /,
		);
	});

	test('from a show file, with the settings in it or others', async () => {
		const example = join(root, 'shared/samples/example.evenhang.json');
		const own = await plan(example, '--json');
		expect(own).toMatchObject({ status: 0, stderr: '' });
		const { rows } = JSON.parse(own.stdout) as Plan;
		expect(rows).toHaveLength(30);
		expect(rows[15]!.solved).toMatchObject({ mountWidth: 700, side: 80 });
		const { rows: others } = JSON.parse((await plan(example, '--json', '--show', 'show.json')).stdout) as Plan;
		expect(others[15]!.solved).toMatchObject({ mountWidth: 610 });
	});

	type ExamplePlan = Plan & Record<'glazing' | 'backing' | 'sticks' | 'get', Listed[]>;

	test('the example has frames, papers, glazing, backing, sticks and what to get', async () => {
		const { stdout } = await plan(join(root, 'shared/samples/example.evenhang.json'), '--json');
		const { rows, glazing, backing, sticks, get } = JSON.parse(stdout) as ExamplePlan;
		expect(rows[0]).toMatchObject({
			framed: { frame: 'Large oak', width: 735, height: 585, depth: 7.7 },
			onPaper: { paper: 'Cotton A2', left: 23, right: 23, copies: 1 },
		});
		// Pulled up on its sheet: 25 above, and of 420 less 360 the rest below.
		expect(rows[6]).toMatchObject({ onPaper: { top: 25, bottom: 35 } });
		// A float: the sheet of 420 x 297 in a mount of 520 x 420, and no window.
		expect(rows[14]!.solved).toMatchObject({ mountWidth: 520, side: 50, windowWidth: null });
		// 432 x 438 and 3 mm of clearance, 12 mm of face beyond the lip on each side.
		expect(rows[9]).toMatchObject({ framed: { frame: 'Ash moulding', width: 459, height: 465 } });
		expect(rows.every(({ framed }) => framed!.weightKg > 0)).toBe(true);
		expect(glazing.map(({ board }) => board)).toEqual(['Clear glass', 'Clear acrylic']);
		expect(backing.map(({ board }) => board)).toEqual(['Backing board']);
		// Eight legs of two square frames and eight of two wide ones, each with 5 mm for the saw: 8732 mm of 3000.
		expect(sticks).toMatchObject([{ frame: 'Ash moulding', count: 3, leastCount: 3, proven: true }]);
		const kinds = new Set(get.map(({ kind }) => kind));
		const supplies = ['spacer', 'tape', 'cord', 'rings', 'bumpers', 'hinges', 'labels'];
		expect([...kinds]).toEqual(['board', 'glazing', 'backing', 'frame', 'stick', 'paper', ...supplies]);
		expect(get.filter(({ cost }) => cost === null).map(({ name }) => name)).toEqual(['594 x 420']);
		// Twenty-eight prints are framed, each on two rings; of the acrylic there is a sheet.
		expect(get.find(({ kind }) => kind === 'rings')).toMatchObject({ wanted: 56, packs: 2, cost: 1800 });
		expect(get.find(({ name }) => name === 'Clear acrylic')).toMatchObject({ wanted: 1, there: 1, packs: 0 });
	});

	test('cells without a header are told, and are no failure', async () => {
		const { status, stderr } = await plan('ragged.csv');
		expect(status).toBe(0);
		expect(stderr).toBe('line 2, column 3: this cell has no header; it is kept as “column 3”\n');
	});
});

describe('what cannot be read ends with 1, and says where', () => {
	test.each<[string[], RegExp]>([
		[['twice.csv'], /^line 1, column title: this header stands twice\n$/],
		[['picture.csv'], /^line 1, column 1: the file is not text: it is a picture or a film\n$/],
		[['empty.csv'], /^line 1, column 1: the file is empty\n$/],
		[['missing.csv'], /^missing\.csv cannot be read: there is no such file\n$/],
		[['folder.csv'], /^folder\.csv cannot be read: it is a folder\n$/],
		[['rows.csv', '--show', 'broken.json'], /damaged in line 1: “}” stands where a name in quotes should/],
		[
			['rows.csv', '--show', 'slip.json'],
			/^slip\.json, setting border: “wide” is not a length.*\nslip\.json, setting boards\[0\]\.width: “x” is not a length.*\n$/,
		],
	])('%j', async (args, said) => {
		const { status, stdout, stderr } = await plan(...args);
		expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
		expect(stderr).toMatch(said);
	});

	test('a setting that nobody knows is told, and is no failure', async () => {
		const { status, stderr } = await plan('rows.csv', '--show', 'typo.json');
		expect({ status, stderr }).toEqual({ status: 0, stderr: 'no setting is called bordr: passed over\n' });
	});
});

describe('wrong usage ends with 2', () => {
	test.each<[string[], RegExp]>([
		[[], /^no file of rows is named\nusage: npm run -s plan -- rows\.csv/],
		[['rows.csv', 'more.csv'], /^one file of rows at a time/],
		[['rows.csv', '--colour'], /^Unknown option '--colour'/],
		[['rows.csv', '--show'], /show/],
		[['rows.csv', '--seconds', 'soon'], /^--seconds takes a number/],
		[['rows.csv', '--seconds=-1'], /^--seconds takes a number/],
		[['rows.csv', '--seconds', '-1'], /^Option '--seconds' argument is ambiguous\nusage/],
		[['rows.csv', '--columns', 'wide=picture width, Wide=side'], /^--columns names “Wide” twice\nusage/],
	])('%j', async (args, said) => {
		const { status, stdout, stderr } = await plan(...args);
		expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
		expect(stderr).toMatch(said);
	});
});

describe('as a process', () => {
	const npm = (...args: string[]) =>
		spawnSync('npm', ['--prefix', root, 'run', '-s', 'plan', '--', ...args], {
			cwd: folder,
			encoding: 'utf8',
			env: Object.fromEntries(Object.entries(process.env).filter(([name]) => name !== 'INIT_CWD')),
		});

	test('npm runs it from anywhere', async () => {
		const { status, stdout, stderr } = npm('rows.csv', '--show', 'show.json', '--json');
		expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
		expect(stdout).toBe((await plan('rows.csv', '--show', 'show.json', '--json')).stdout);
	});

	test('what it refuses goes to standard error', () => {
		const { status, stdout, stderr } = npm('twice.csv');
		expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
		expect(stderr).toBe('line 1, column title: this header stands twice\n');
		if (isSoak) expect(npm()).toMatchObject({ status: 2, stdout: '' }); // a second process; called without one: above
	});
});

test('with end stops the steps say what both are set to', async () => {
	const settings = {
		mountSize: '600 x 450 mm',
		border: 70,
		bottomWeight: 12,
		bench: { kind: 'guide and stops', overcut: 2 },
	};
	writeFileSync(file('stops.json'), JSON.stringify(settings));
	writeFileSync(file('one.csv'), 'title,shape\nEbb,3:2\n');
	const { bench } = JSON.parse((await plan('one.csv', '--show', 'stops.json', '--json')).stdout) as Plan;
	expect(bench.steps).toContainEqual({
		guide: 72,
		start: 68,
		end: 76,
		cuts: [{ row: 1, copy: 1, part: 'mount', side: 'left' }],
	});
	expect(bench).toMatchObject({ changes: 9, leastChanges: 9, proven: true });

	// a pulled head starts at the other end, and a scale at the start edge reads 450 − 70 + 2 there
	const cutter = { ...settings.bench, head: 'pull', endStop: 'from the start' };
	writeFileSync(file('stops.json'), JSON.stringify({ ...settings, bench: cutter }));
	const { bench: other } = JSON.parse((await plan('one.csv', '--show', 'stops.json', '--json')).stdout) as Plan;
	expect(other.steps).toContainEqual({
		guide: 72,
		start: 76,
		end: 382,
		cuts: [{ row: 1, copy: 1, part: 'mount', side: 'left' }],
	});
});

describe('boards', () => {
	const board = { name: 'Chalk', width: 1120, height: 815, price: 1450 };
	const boards = async (settings: object, text: string) => {
		writeFileSync(file('boards.json'), JSON.stringify(settings));
		writeFileSync(file('blanks.csv'), text);
		const { stdout, stderr } = await plan('blanks.csv', '--show', 'boards.json', '--json');
		expect(stderr).toBe('');
		return JSON.parse(stdout) as Plan & { sheets: { layouts: object[] }[] };
	};

	test('are planned with spares, and each blank is named once', async () => {
		const settings = { mountSize: '500 x 400 mm', boards: [board], spares: '10%' };
		const { sheets } = await boards(settings, 'title,shape,copies\nEbb,3:2,9\n');
		expect(sheets).toHaveLength(1);
		expect(sheets[0]).toMatchObject({
			board: 'Chalk',
			cost: 4350,
			count: 3,
			leastCost: 4350,
			leastCount: 3,
			proven: true,
		});
		const blanks = sheets[0]!.layouts.flatMap(({ blanks }) =>
			blanks.map(({ row, copy, part }) => `${row} ${copy} ${part}`),
		);
		expect(blanks.sort()).toEqual(['0 1 mount', ...Array.from({ length: 9 }, (_, copy) => `1 ${copy + 1} mount`)]);
	});

	test('have the cuts of each sheet, the factory edge first, in millimetres', async () => {
		const settings = { mountSize: '500 x 400 mm', boards: [{ ...board, width: 520, height: 420, trim: 10 }] };
		const { sheets } = await boards(settings, 'title,shape\nEbb,3:2\n');
		expect(sheets[0]!.layouts).toEqual([
			{
				sheet: { width: 520, height: 420 },
				times: 1,
				blanks: [{ row: 1, copy: 1, part: 'mount', x: 10, y: 10, width: 500, height: 400, turned: false }],
				cuts: [
					{ piece: { x: 0, y: 0, width: 520, height: 420 }, across: 'width', at: 10 },
					{ piece: { x: 10, y: 0, width: 510, height: 420 }, across: 'width', at: 500 },
					{ piece: { x: 10, y: 0, width: 500, height: 420 }, across: 'height', at: 10 },
					{ piece: { x: 10, y: 10, width: 500, height: 410 }, across: 'height', at: 400 },
				],
				offcuts: [],
			},
		]);
	});

	test('that are not in stock have no plan', async () => {
		expect((await boards({ mountSize: '500 x 400 mm' }, 'title,shape\nEbb,3:2\n')).sheets).toEqual([]);
	});
});

describe('columns', () => {
	beforeAll(() => writeFileSync(file('foreign.csv'), 'Titel;Breite;Höhe;hue\nPier;456;306;red\n'));

	test('that are not known are named, with what they may be', async () => {
		const { status, stderr, stdout } = await plan('foreign.csv');
		expect(status).toBe(0);
		expect(stderr).toContain(
			"column Breite is not known: kept as it is; if it is picture width, say --columns 'Breite=picture width'",
		);
		expect(stderr).toContain('column hue is not known: kept as it is\n');
		expect(stdout.split('\n')[0]).toMatch(/Breite,Höhe,hue$/);
	});
	test('can be said', async () => {
		const { status, stderr, stdout } = await plan(
			'foreign.csv',
			'--columns',
			'breite=picture width, Höhe=Picture_Height,hue=none',
		);
		expect([status, stderr]).toEqual([0, '']);
		expect(stdout).toMatch(/^(?:[^\n]*\n)[^\n]*,456,306,/);
	});
	test.each([
		['Breite', 2, /takes header=column/],
		['Breite=girth', 2, /no column “girth”/],
		['Brite=picture width', 1, /line 1, column Brite: --columns names it, and the file has no such column/],
	])('%s is refused', async (columns, status, said) => {
		const outcome = await plan('foreign.csv', '--columns', columns);
		expect([outcome.status, outcome.stderr]).toEqual([status, expect.stringMatching(said)]);
	});
});
