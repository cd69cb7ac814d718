import { expect, test } from 'vitest';
import { inches, toInches, toMm } from '../../src/core/length/length.ts';
import { workOut } from '../../src/core/row/workOut.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../src/core/settings/settings.ts';
import type { Row, Typed } from '../../src/core/show/row.ts';
import { fixingOf, hooksOf, ringsOf, safetyFactor } from '../../src/core/walls/fixing.ts';
import { hangWalls } from '../../src/core/walls/hangWalls.ts';
import { cases } from '../../shared/check-values/hanging.json' with { type: 'json' };

const row = (typed: Typed, place = 0): Row => ({ id: `r${place}`, order: place, typed });

/** Hangs prints that are framed to a size, in inches. */
function hang(prints: readonly Typed[], typed: TypedSettings) {
	const { settings } = readSettings({ unit: 'in', ...typed });
	const results = prints.map((print, place) => workOut(row(print, place), settings));
	return { settings, results, hung: hangWalls(results, settings).walls[0]!.prints };
}

test.each(cases.centre)('the middle of a print hangs at $centre ($source)', ({ unit, centre }) => {
	const { walls } = readSettings({ unit, walls: [{ name: 'North', length: '5 m' }] }).settings;
	expect(walls[0]!.centre).toBe(readSettings({ unit, border: centre }).settings.border);
	if (unit !== 'in') return;
	expect(toInches(walls[0]!.centre)).toBeGreaterThanOrEqual(cases.centreRange.least);
	expect(toInches(walls[0]!.centre)).toBeLessThanOrEqual(cases.centreRange.greatest);
});

test.each(cases.hooks)('$heightIn in high, drop $dropIn: hook at $hookIn in ($source)', (published) => {
	const { heightIn, dropIn, centreIn, hookIn } = published;
	// A frame whose outer size is what goes in: no play, and a face no wider than its lip.
	const frames = [{ name: 'Plain', clearance: '0 in', moulding: '1/4 in', lip: '1/4 in' }];
	const print = { 'mount width': '16 in', 'mount height': `${heightIn} in`, drop: `${dropIn} in`, frame: 'Plain' };
	const { settings, results, hung } = hang([print], {
		frames,
		walls: [{ name: 'North', length: '200 in', centre: `${centreIn} in` }],
	});
	expect(toInches(hooksOf(results[0]!, hung[0]!, settings)!.hooks[0]!.height)).toBe(hookIn);
});

test.each([...cases.spacing, cases.setGap])(
	'$widthsIn on $wallIn in: left edges at $leftsIn ($source)',
	(published) => {
		const prints = published.widthsIn.map((width) => ({ 'mount width': `${width} in`, 'mount height': '8 in' }));
		const gap = 'gapIn' in published && published !== cases.setGap ? {} : { gap: `${cases.setGap.gapIn} in` };
		const { hung } = hang(prints, { walls: [{ name: 'North', length: `${published.wallIn} in`, ...gap }] });
		expect(hung.map(({ left }) => toInches(left))).toEqual(published.leftsIn);
	},
);

/** Fixes a frame of 400 mm height whose cord rises by so much to one nail, its rings so far apart. */
function fix({
	spanMm,
	riseMm,
	weightKg,
}: {
	readonly spanMm: number;
	readonly riseMm: number;
	readonly weightKg: number;
}) {
	const { settings } = readSettings({ hanging: { inset: 0, rings: '400 mm' } });
	const worked = workOut(row({ drop: `${400 - riseMm} mm` }), settings);
	const size = { width: spanMm * 1e7, height: 1e10 } as unknown as NonNullable<typeof worked.framed.size>;
	expect(toMm(settings.hanging.inset)).toBe(0);
	return fixingOf(
		{
			read: worked.read,
			frame: { ...worked.frame, frame: { name: 'Plain', clearance: settings.frameClearance } },
			framed: { ...worked.framed, size, weightKg },
		},
		settings,
	)!;
}

test.each(cases.pull)('rings $spanMm mm apart, the nail $riseMm mm above them ($source)', (published) => {
	const { spanMm, riseMm, weight, pull } = published;
	expect(fix({ spanMm, riseMm, weightKg: weight }).pullKg).toBeCloseTo(pull, 2);
});

const { weight: weightOfChart, source: chart } = cases.pullByAngle;
test.each(cases.pullByAngle.rows)(
	`a cord at $degrees degrees pulls $pull at ${weightOfChart} (${chart})`,
	(published) => {
		const { degrees, pull } = published;
		const riseMm = 100;
		const spanMm = (2 * riseMm) / Math.tan((degrees * Math.PI) / 180);
		expect(Math.round(fix({ spanMm, riseMm, weightKg: weightOfChart }).pullKg!)).toBe(pull);
	},
);

test(`a fixing rated for ${cases.rating.rating} may hold ${cases.rating.usable} (${cases.rating.source})`, () => {
	expect(cases.rating.rating / safetyFactor).toBe(cases.rating.usable);
});

test(`rings ${cases.rings.downIn} in down a frame of ${cases.rings.heightIn} in (${cases.rings.source})`, () => {
	const { settings } = readSettings({
		unit: 'in',
		frames: [{ name: 'Plain', clearance: '0', moulding: '1 in', lip: '1 in' }],
	});
	const print = { 'mount width': '12', 'mount height': `${cases.rings.heightIn}`, frame: 'Plain' };
	expect(ringsOf(workOut(row(print), settings), settings)).toBeCloseTo(inches(cases.rings.downIn), 0);
});
