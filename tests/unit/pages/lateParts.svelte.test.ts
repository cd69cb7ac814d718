import { afterEach, expect, test, vi } from 'vitest';
import { judgingPart } from '../../../src/app/judging.ts';
import { besidePart, loadParts, othersPart, paperPart } from '../../../src/pages/lateParts.ts';

afterEach(() => {
	vi.useRealTimers();
	vi.unstubAllGlobals();
	vi.restoreAllMocks();
});

test('later parts come one by one, each when the page is idle, and what is out of view a second after what is in view', async () => {
	vi.useFakeTimers();
	const asked: string[] = [];
	for (const [name, part] of Object.entries({ judgingPart, besidePart, othersPart, paperPart }))
		vi.spyOn(part, 'load').mockImplementation(() => {
			asked.push(name);
			return Promise.resolve(undefined);
		});
	let whenIdle: (() => void) | undefined;
	vi.stubGlobal('requestIdleCallback', (act: () => void) => (whenIdle = act));
	/** @returns what is loaded after so long, once the page has nothing else to do */
	const loadedAfter = async (ms: number) => {
		await vi.advanceTimersByTimeAsync(ms);
		asked.length = 0;
		whenIdle?.();
		whenIdle = undefined;
		await vi.advanceTimersByTimeAsync(0);
		return [...asked];
	};

	const loading = loadParts();
	await vi.advanceTimersByTimeAsync(10_000); // the page stays busy
	expect(asked).toEqual([]);
	expect(await loadedAfter(0)).toEqual(['judgingPart']);
	expect(await loadedAfter(0)).toEqual(['besidePart']);
	expect(await loadedAfter(900)).toEqual([]);
	expect(await loadedAfter(200)).toEqual(['othersPart']);
	expect(await loadedAfter(0)).toEqual(['paperPart']);
	await loading;
});
