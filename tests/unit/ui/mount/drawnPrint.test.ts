import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { drawnPrint } from '../../../../src/ui/mount/drawnPrint.ts';

const papers = [{ name: 'Rag', width: 350, height: 240, edge: 'deckle' }];
const drawn = (typed: Typed, frames: readonly object[] = []) => {
	const { settings } = readSettings({ frames, papers, mountSize: '500 x 400 mm' });
	return drawnPrint(judgeRow({ id: 'a', order: 1, typed }, settings));
};
const whole = { left: 0, right: 500, top: 0, bottom: 400 };

test('a mount is drawn with its window and the picture', () => {
	const { outer, sight, card, window, inner, picture } = drawn({ 'picture width': '376', 'picture height': '251' })!;
	expect([outer, card, sight, inner]).toEqual([whole, whole, undefined, undefined]);
	expect(window!.left).toBe(65);
	expect(picture!.left).toBe(62);
});

test('an inner mount has a window of its own within the outer one', () => {
	const { window, inner } = drawn({ shape: '3:2', 'inner mount': '5' })!;
	expect([inner!.left - window!.left, window!.bottom - inner!.bottom]).toEqual([5, 5]);
});

test('of a float the edge of its paper is drawn, in a frame too; of a mount there is none', () => {
	const oak = { name: 'Oak', width: 500, height: 400, clearance: 3, lip: 6, moulding: 22 };
	const picture = { 'picture width': '300', 'picture height': '200' };
	const edgeOf = (typed: Typed) => [drawn(typed)!.floatEdge, drawn({ ...typed, frame: 'Oak' }, [oak])!.floatEdge];
	expect(edgeOf({ ...picture, paper: 'Rag', mounting: 'float' })).toEqual(['deckle', 'deckle']);
	expect(edgeOf({ ...picture, mounting: 'float' })).toEqual(['straight', 'straight']);
	expect(edgeOf({ ...picture, paper: 'Rag' })).toEqual([undefined, undefined]);
	expect(drawn({ ...picture, paper: 'Rag', mount: 'none', mounting: 'float' })!.floatEdge).toBeUndefined();
});

test('in a frame, its outer edge is the whole', () => {
	const oak = { name: 'Oak', width: 500, height: 400, clearance: 3, lip: 6, moulding: 22 };
	const { outer, sight, card } = drawn({ shape: '3:2', frame: 'Oak' }, [oak])!;
	expect([outer.left, sight!.left, card]).toEqual([-17.5, 4.5, whole]);
});

test('without a mount and a frame it is the paper, with the picture on it', () => {
	const typed = { mount: 'none', paper: 'A4', 'picture width': '200', 'picture height': '150' };
	const { outer, card, picture } = drawn(typed)!;
	expect([outer, card]).toEqual([{ left: 0, right: 297, top: 0, bottom: 210 }, undefined]);
	expect(picture).toEqual({ left: 48.5, right: 248.5, top: 30, bottom: 180 });
});

test('of a print without any size nothing is drawn', () =>
	expect(drawn({ mount: 'none', title: 'Tar' })).toBeUndefined());
