import { expect, onTestFinished, test, vi } from 'vitest';
import type { Session } from '../../../src/app/session.svelte.ts';
import { StickPlanning } from '../../../src/app/stickPlanning.svelte.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { sticksInWorker } from '../../../src/workers/sticksInWorker.ts';
import { rowOf } from '../core/findings/rowOf.ts';

test('sticks are planned until the session begins to close, and none are after that', async () => {
	const { settings } = readSettings({ frames: [{ name: 'Ash', moulding: 20, lip: 6, stick: '2400' }] });
	const rows = [rowOf('picture 300 x 200, frame Ash')];
	const ending = new AbortController();
	const results = rows.map((row) => judgeRow(row, settings));
	const session = { show: { rows }, results, settings, signal: ending.signal } as unknown as Session;
	const signals: AbortSignal[] = [];
	const plan: typeof sticksInWorker = (_job, signal) =>
		new Promise((_, reject) => {
			signals.push(signal);
			signal.addEventListener('abort', () => reject(signal.reason as Error));
		});
	vi.useFakeTimers();
	onTestFinished(() => void vi.useRealTimers());
	const sticks = new StickPlanning(session, plan);
	sticks.later();
	await vi.runAllTimersAsync();
	expect([signals.length, sticks.isBusy]).toEqual([1, true]);
	ending.abort(new Error('closed'));
	sticks.later();
	await vi.runAllTimersAsync();
	expect(signals.map(({ aborted }) => aborted)).toEqual([true]);
	expect([sticks.isBusy, sticks.problem]).toEqual([false, undefined]);
});
