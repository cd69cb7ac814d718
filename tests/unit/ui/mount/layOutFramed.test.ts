import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { layOutFramed } from '../../../../src/ui/mount/layOutFramed.ts';
import { layOutProfile } from '../../../../src/ui/mount/layOutProfile.ts';

const oak = { name: 'Oak', width: 500, height: 400, clearance: 3, depth: 12, lip: 6, moulding: 22 };

function worked(typed: Typed, frame: object = {}) {
	const { settings, problems } = readSettings({ frames: [{ ...oak, ...frame }], mountSize: '500 x 400 mm' });
	expect(problems).toEqual([]);
	return [judgeRow({ id: 'a', order: 1, typed: { frame: 'Oak', ...typed } }, settings), settings] as const;
}

test('the frame lies round the mount: rebate with the play, lip and face', () => {
	const layout = layOutFramed(worked({ shape: '3:2' })[0])!;
	expect(layout.inside).toEqual({ left: 0, right: 500, top: 0, bottom: 400 });
	expect(layout.rebate).toEqual({ left: -1.5, right: 501.5, top: -1.5, bottom: 401.5 });
	expect(layout.sight).toEqual({ left: 4.5, right: 495.5, top: 4.5, bottom: 395.5 });
	expect(layout.outer).toEqual({ left: -17.5, right: 517.5, top: -17.5, bottom: 417.5 });
	expect(layout.window!.left).toBeGreaterThan(layout.sight.left);
	expect(layout.isKnown).toBe(true);
});

test('a lip or a face that is not known is drawn as is usual, and said not to be known', () => {
	const layout = layOutFramed(worked({ shape: '3:2' }, { lip: undefined, moulding: undefined })[0])!;
	expect(layout.isKnown).toBe(false);
	expect(layout.outer.left).toBeLessThan(layout.sight.left);
});

test('a print without a mount lies on its paper', () => {
	const typed = { mount: 'none', 'picture width': '460', 'picture height': '360', paper: '500 x 400' };
	const layout = layOutFramed(worked(typed)[0])!;
	expect(layout.window).toBeUndefined();
	expect(layout.picture).toEqual({ left: 20, right: 480, top: 20, bottom: 380 });
});

test('without a frame there is nothing to draw', () => {
	const [result, settings] = worked({ frame: 'none', shape: '3:2' });
	expect(layOutFramed(result)).toBeUndefined();
	expect(layOutProfile(result, settings)).toBeUndefined();
});

test('the stack lies in the rebate from the back of the lip on, clear of its side by half the play', () => {
	const profile = layOutProfile(...worked({ shape: '3:2' }))!;
	const { layers } = profile;
	expect(layers.map(({ what }) => what)).toEqual(['glazing', 'mount', 'print', 'backing']);
	expect(layers[0]).toMatchObject({ x: 22 - 6 + 1.5, y: 0, height: 2 });
	for (const [place, layer] of layers.slice(1).entries()) {
		const before = layers[place]!;
		expect(layer.y).toBeCloseTo(before.y + before.height, 9);
	}
	expect(profile.left!.y).toBeCloseTo(6.7, 9);
	expect(profile.left!.height).toBeCloseTo(5.3, 9);
	expect(profile.over).toBe(0);
});

test('a stack too deep stands out of the rebate', () => {
	const profile = layOutProfile(...worked({ shape: '3:2' }, { depth: 5 }))!;
	expect(profile.over).toBeCloseTo(1.7, 9);
	expect(profile.left).toBeUndefined();
	expect(profile.bottom).toBeCloseTo(6.7, 9);
});

test('a spacer lies at the edge only, under the lip', () => {
	const profile = layOutProfile(...worked({ shape: '3:2', spacer: '3' }))!;
	const [glazing, spacer] = profile.layers;
	expect(spacer).toMatchObject({ what: 'spacer', y: 2, height: 3 });
	expect(spacer!.width).toBeLessThan(glazing!.width);
});
