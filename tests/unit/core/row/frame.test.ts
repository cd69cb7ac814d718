import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Length, sameWithin, toMm } from '../../../../src/core/length/length.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { runs } from '../../../soak.ts';
import { codesOf, rowOf, wideShow } from '../findings/rowOf.ts';

const oak = { name: 'Oak', width: 500, height: 400, depth: 20, lip: 6, moulding: 20, weight: '0.5 kg' };
const ash = { name: 'Ash', rebateWidth: '703.5', rebateHeight: 503 };
const made = { name: 'Made', lip: 5, moulding: 25, clearance: 4 };
const show: TypedSettings = { ...wideShow, frames: [oak, ash, made] };

const rowIn = (line: string, settings: TypedSettings = show) => workOut(rowOf(line), readSettings(settings).settings);
const sidesOf = (width: Length | undefined, height: Length | undefined) =>
	width === undefined || height === undefined ? undefined : [toMm(width), toMm(height)];

describe('the mount of a row is what its frame takes', () => {
	test.each<[string, object, readonly [number, number]]>([
		['picture 300 x 200, mount frame, frame Oak', {}, [500, 400]],
		['picture 200 x 300, mount frame, frame Oak', {}, [400, 500]], // as the picture lies
		['picture 300 x 200, frame oak', {}, [500, 400]], // a frame named in the row is enough
		['picture 300 x 200, mount Frame', { frame: 'Oak' }, [500, 400]],
		['picture 300 x 200, mount frame, frame Ash', { frame: 'Oak' }, [700, 500]], // less the clearance, down to the ruler
		['picture 300 x 200', { frame: 'Oak' }, [600, 450]], // the show's mount, which its frame does not change
		['picture 300 x 200', { frame: 'Oak', mountSize: 'frame' }, [500, 400]],
		['picture 300 x 200, frame Ash', { frame: 'Oak', mountSize: 'frame' }, [700, 500]],
		['picture 300 x 200, frame none', { frame: 'Oak', mountSize: 'frame' }, [500, 400]],
		['picture 300 x 200, mount show, frame Oak', {}, [600, 450]],
		['picture 300 x 200, mount fit, frame Oak', {}, [434, 342]],
		['picture 300 x 200, frame Made', {}, [600, 450]], // a moulding is made to the mount
		['picture 300 x 200, mount frame', {}, [600, 450]], // no frame is named
		['picture 300 x 200, mount frame, frame none', { frame: 'Oak' }, [600, 450]],
		['picture 300 x 200, mount frame, frame Elm', {}, [600, 450]],
	])('%s, %j: %j', (line, settings, size) => {
		const { solved } = rowIn(line, { ...show, ...settings });
		expect(sidesOf(solved.mountWidth, solved.mountHeight)).toEqual(size);
	});

	test('it counts as typed: a picture that has no room in it does not fit', () => {
		expect(codesOf('picture 640 x 480, frame Oak', show)).toContain('does-not-fit');
		expect(codesOf('picture 640 x 480', { ...show, mountSize: 'frame', frame: 'Oak' })).toContain('own-size');
		expect(codesOf('picture 300 x 200, frame Oak, mount width 520', show)).toContain('adds-up');
	});

	test('it stands in a blank mount cell, as the show’s does', () => {
		const mountOf = (line: string) => rowIn(line).inherited.mount;
		expect(
			sidesOf(mountOf('picture 300 x 200, frame Oak')?.width, mountOf('picture 300 x 200, frame Oak')?.height),
		).toEqual([...[500, 400]]);
		expect(sidesOf(mountOf('picture 300 x 200')?.width, mountOf('picture 300 x 200')?.height)).toEqual([600, 450]);
		expect(mountOf('picture 300 x 200, mount 500 x 400')).toBeUndefined();
	});

	test('a frame that fails to say a size is pointed out where the mount asks for it', () => {
		for (const line of ['mount frame', 'mount frame, frame Made', 'mount frame, frame none'])
			expect(codesOf(`picture 300 x 200, ${line}`, show), line).toContain('needs-size');
		expect(codesOf('picture 300 x 200, frame Made', show)).not.toContain('needs-size');
		expect(codesOf('picture 300 x 200, frame Oak', show)).not.toContain('needs-size');
		const ofFrame = { ...show, mountSize: 'frame' };
		expect(codesOf('picture 300 x 200', ofFrame)).toContain('needs-size');
		expect(codesOf('picture 300 x 200, mount 500 x 400', ofFrame)).not.toContain('needs-size');
		const open = rowIn('shape 3:2', ofFrame);
		expect([open.solution.width, open.solution.height]).toEqual(['open', 'open']);
	});
});

/** Rows in a frame with a size, sold by what goes in or measured at its rebate, as it lies or upright. */
const framedRows = fc.record({
	frame: fc
		.record({
			across: fc.integer({ min: 200_000, max: 900_000 }),
			down: fc.integer({ min: 200_000, max: 900_000 }),
			clearance: fc.integer({ min: 0, max: 8000 }),
			isRebate: fc.boolean(),
		})
		.map(({ across, down, clearance, isRebate }) => ({
			...{ name: 'F', clearance: clearance / 1000 },
			[isRebate ? 'rebateWidth' : 'width']: across / 1000,
			[isRebate ? 'rebateHeight' : 'height']: down / 1000,
		})),
	ruler: fc.constantFrom('1 mm', '0.5 mm', '1/16 in'),
	typed: fc
		.record({
			shape: fc.constantFrom('', '3:2', '2:3', '1:1', '16:9'),
			'picture width': fc.constantFrom('', '', '120', '101.6', '5 in'),
			'picture height': fc.constantFrom('', '', '120', '90.3'),
			side: fc.constantFrom('', '', '', '40'),
			reveal: fc.constantFrom('', '', '6'),
			mount: fc.constantFrom('', 'frame'),
		})
		.map((cells) => ({ frame: 'F', ...Object.fromEntries(Object.entries(cells).filter(([, text]) => text !== '')) })),
});

test('a mount from a frame fits it by exactly the clearance, down to the ruler, whichever way it lies', () => {
	let isTried = 0;
	fc.assert(
		fc.property(framedRows, ({ frame, ruler, typed }) => {
			const { settings } = readSettings({ ruler, border: '50 mm', frames: [frame] });
			const { takes, rebate } = settings.frames[0]!.size!;
			const { solved, frame: own, solution } = workOut({ id: 'r', order: 0, typed }, settings);
			const { mountWidth: width, mountHeight: height } = solved;
			if (solution.mountSource !== 'named' || !width || !height) return;
			isTried++;
			const sorted = (...sides: readonly number[]) => `${Math.min(...sides)} ${Math.max(...sides)}`;
			const { width: across, height: down } = own.seat!.play;
			// Of a frame sold by what goes in the rebate is that and the clearance; of a measured one down to the ruler.
			const most = 'width' in frame ? sameWithin : settings.ruler;
			const isExact = [across, down]
				.map((play) => play - own.frame!.clearance)
				.every((more) => more >= -sameWithin && more < most);
			expect([isExact, sorted(width, height), sorted(width + across, height + down)]).toEqual([
				true,
				sorted(takes.width, takes.height),
				sorted(rebate.width, rebate.height),
			]);
		}),
		{ numRuns: runs(175, 20_000) },
	);
	expect(isTried).toBeGreaterThan(runs(175, 20_000) / 3);
});

describe('how a row hangs', () => {
	test('framed size: the rebate and twice what of the moulding lies beside it', () => {
		const { framed, frame } = rowIn('picture 300 x 200, frame Oak');
		expect(sidesOf(framed.size?.width, framed.size?.height)).toEqual([503 + 28, 403 + 28]);
		expect(frame.seat?.play).toEqual({ width: 30_000_000, height: 30_000_000 });
	});

	test.each<[string, object, readonly [number, number] | undefined]>([
		['picture 200 x 300, frame Oak', {}, [431, 531]],
		['picture 300 x 200, frame Made', {}, [600 + 4 + 40, 450 + 4 + 40]],
		['picture 300 x 200, frame Ash', {}, undefined], // neither lip nor moulding are known
		['picture 300 x 200, frame none', {}, [600, 450]],
		['picture 300 x 200', {}, [600, 450]], // no frame of the list takes it
		['picture 300 x 200, frame Elm', {}, undefined],
		['picture 300 x 200, mount none', {}, [300, 200]],
		['picture 300 x 200, mount none, paper A4', {}, [297, 210]],
		['picture 490 x 390, mount none, paper 500 x 400', {}, [531, 431]], // the first that takes the paper
	])('%s, %j: %j', (line, settings, size) => {
		const { framed } = rowIn(line, { ...show, ...settings });
		expect(sidesOf(framed.size?.width, framed.size?.height)).toEqual(size);
	});

	test('the stack, and the weight: area times thickness times density, and the moulding', () => {
		const boards = [
			{ name: 'Chalk', width: 1120, height: 815, thickness: '1.5 mm', density: 0.8 },
			{ name: 'Grey', width: 1120, height: 815 },
		];
		const { framed } = rowIn('picture 300 x 200, frame Oak, spacer 4', { ...show, boards, undermount: 'Grey' });
		expect(framed.layers.map(({ what, thickness }) => `${what} ${toMm(thickness)}`)).toEqual([
			...['glazing 2', 'spacer 4', 'mount 1.5', 'print 0.3', 'undermount 1.4', 'backing 3'],
		]);
		expect(toMm(framed.depth)).toBeCloseTo(12.2, 9);
		const perM2 = 2 * 2.5 + 1.5 * 0.8 + (0.3 + 1.4 + 3) * 0.7;
		expect(framed.weightKg).toBeCloseTo(0.5 * 0.4 * perM2 + 0.5 * 2 * (0.531 + 0.431), 9);
		expect(framed.isAbout).toBe(true);
		expect(rowIn('picture 300 x 200, frame Made').framed.weightKg).toBeUndefined();
		expect(rowIn('picture 300 x 200, frame none').framed.weightKg).toBeCloseTo(0.6 * 0.45 * 1.7 * 0.7, 9);
	});

	test('glazing and backing are those of the show’s lists, the first where none is named', () => {
		const listed = (name: string, more: object) => ({ name, width: 600, height: 500, ...more });
		const lists = {
			glazing: [listed('Clear', { thickness: '2.5 mm' }), listed('Light', { material: 'acrylic', density: 1.2 })],
			backing: [listed('MDF', { thickness: 6, density: 0.75 }), listed('Card', {})],
		};
		const stackOf = (line: string) =>
			rowIn(`picture 300 x 200, ${line}`, { ...show, ...lists }).framed.layers.flatMap((layer) =>
				['glazing', 'backing'].includes(layer.what) ? [toMm(layer.thickness), layer.density] : [],
			);
		expect(stackOf('frame Oak')).toEqual([2.5, 2.5, 6, 0.75]);
		expect(stackOf('frame Oak, glazing acrylic, backing card')).toEqual([3, 1.2, 3, 0.7]);
		expect(stackOf('frame Oak, glazing light, backing none')).toEqual([3, 1.2]);
		expect(stackOf('frame none, glazing glass')).toEqual([2.5, 2.5]);
		expect(stackOf('frame none')).toEqual([]);
	});

	test.each([
		['frame Oak, glazing none, backing none', ['mount', 'print']],
		['frame Oak, glazing acrylic', ['glazing', 'mount', 'print', 'backing']],
		['frame none', ['mount', 'print']],
		['frame none, glazing glass', ['glazing', 'mount', 'print']],
		['mount none, frame none', ['print']],
	])('of %s the stack is %j', (line, layers) => {
		expect(rowIn(`picture 300 x 200, ${line}`).framed.layers.map(({ what }) => what)).toEqual(layers);
	});
});
