import { expect, test } from 'vitest';
import { cases } from '../../shared/check-values/framing.json' with { type: 'json' };
import { inches, toInches, toMm } from '../../src/core/length/length.ts';
import { hingeCount } from '../../src/core/row/hinges.ts';
import { workOut } from '../../src/core/row/workOut.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../src/core/settings/settings.ts';
import type { Typed } from '../../src/core/show/row.ts';

const worked = (typed: Typed, show: TypedSettings) =>
	workOut({ id: 'row', order: 1, typed }, readSettings(show).settings);

const { outerRail, clearanceMm, clearanceIn, stackIn, hinges, glass, acrylic, mdf } = cases;

test(`the framed size is the rebate and twice what lies outside it (${outerRail.source})`, () => {
	const { insideIn, mouldingIn, lipIn, outerIn } = outerRail;
	const frames = [{ name: 'Oak', clearance: 0, moulding: `${mouldingIn} in`, lip: `${lipIn} in` }];
	const show = { unit: 'in', frames, frame: 'Oak' };
	const { framed } = worked({ mount: `${insideIn} x ${insideIn} in`, shape: '1:1', side: '1 in' }, show);
	expect(framed.size && toInches(framed.size.width)).toBeCloseTo(outerIn, 9);
});

test(`the clearance is what the trade leaves (${clearanceMm.source}; ${clearanceIn.source})`, () => {
	const metric = toMm(readSettings({}).settings.frameClearance);
	expect(metric).toBeGreaterThanOrEqual(clearanceMm.least);
	expect(metric).toBeLessThanOrEqual(clearanceMm.greatest);
	expect(toInches(readSettings({ unit: 'in' }).settings.frameClearance)).toBe(clearanceIn.allowance);
});

test(`a stack is the sum of its layers (${stackIn.source})`, () => {
	const sized = (name: string, thickness: number) => ({ name, width: 40, height: 30, thickness: `${thickness} in` });
	const show = {
		unit: 'in',
		boards: [sized('Board', stackIn.mount)],
		glazing: [{ ...sized('Pane', stackIn.glazing), material: 'acrylic' }],
		backing: [sized('Foam', stackIn.backing)],
		frames: [{ name: 'Oak' }],
		frame: 'Oak',
	};
	const { layers } = worked({ shape: '3:2' }, show).framed;
	const sum = layers.reduce((total, { what, thickness }) => (what === 'print' ? total : total + thickness), 0);
	expect(sum).toBe(inches(stackIn.depth));
});

test.each(hinges.counts)(`$widthIn in of paper has $count hinges (${hinges.source})`, ({ widthIn, count }) =>
	expect(hingeCount(inches(widthIn), 'in')).toBe(count),
);

/** The weight of a square metre of one layer. */
const kgOf = (show: TypedSettings, layer: string) => {
	const { layers } = worked({ shape: '3:2', frame: 'Oak' }, { frames: [{ name: 'Oak' }], ...show }).framed;
	const { thickness, density } = layers.find(({ what }) => what === layer)!;
	return toMm(thickness) * density;
};

test.each([
	...glass.panes.map((pane) => ({ ...pane, material: 'glass', source: glass.source })),
	...acrylic.panes.map((pane) => ({ ...pane, material: 'acrylic', source: acrylic.source })),
])('a square metre of $material of $thicknessMm mm weighs $kg kg ($source)', ({ thicknessMm, kg, material }) => {
	const glazing = [{ name: 'Pane', width: 1000, height: 800, thickness: thicknessMm, material }];
	expect(kgOf({ glazing }, 'glazing')).toBeCloseTo(kg, 9);
});

test(`a sheet of backing weighs what MDF does (${mdf.source})`, () => {
	const backing = [{ name: 'MDF', width: 2440, height: 1220, thickness: mdf.thicknessMm }];
	expect(kgOf({ backing }, 'backing') * mdf.areaM2).toBeCloseTo(mdf.kg, 2);
});
