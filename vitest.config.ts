import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './tests/longestFirst.ts';

// Two files at a time: by itself vitest leaves one core of a small machine idle, and three Chromiums wait for each other.
const maxWorkers = 2;
// Modules are loaded once a worker, not once a file: no test leaves anything behind in one.
const isolate = false;
// What only means something when it is long, what is a race, and what others show in parts, as it says there.
const onlyInSoak =
	process.env.EVENHANG_SOAK === '1'
		? []
		: [
				'tests/browser/importWhileTyping.test.ts',
				'tests/browser/kills.test.ts',
				'tests/browser/longUse.test.ts',
				'tests/browser/order/wholeJob.test.ts',
				'tests/browser/pictures/killedWhileReading.test.ts',
				'tests/browser/wholeShow.test.ts',
			];

export default defineConfig({
	test: {
		maxWorkers,
		sequence: { sequencer: LongestFirst },
		projects: [
			{
				// Runes are compiled as in the browser, where `$derived` remembers; for a server it would not.
				plugins: [svelte()],
				resolve: { conditions: ['browser'] },
				test: {
					name: 'unit',
					include: ['tests/unit/**/*.test.ts'],
					environment: './tests/unit/browserCompile.ts',
					setupFiles: ['./tests/unit/setup.ts'],
					testTimeout: 120_000, // a property over 10,000 rows takes seconds, and many of them on a busy machine
					hookTimeout: 120_000, // a session is closed once all of it is written
					expect: { poll: { timeout: 20_000 } }, // a second is little on a busy machine
					benchmark: { include: ['tests/bench/**/*.bench.ts'] },
					maxWorkers,
					isolate,
				},
			},
			{ test: { name: 'published', include: ['tests/published/**/*.test.ts'], maxWorkers, isolate } },
			{ test: { name: 'house', include: ['tests/house/**/*.test.ts'], testTimeout: 60_000, maxWorkers, isolate } },
			{
				test: {
					name: 'browser',
					include: ['tests/browser/**/*.test.ts'],
					exclude: onlyInSoak,
					globalSetup: ['./tests/browser/harness/getChromium.ts', './tests/browser/harness/buildsFolder.ts'],
					testTimeout: 120_000,
					hookTimeout: 120_000,
					expect: { poll: { timeout: 20_000 } }, // as long as the browser is waited for
					maxWorkers,
					isolate,
				},
			},
			{
				test: {
					name: 'engines',
					include: ['tests/engines/**/*.test.ts'],
					globalSetup: ['./tests/engines/getEngines.ts'],
					execArgv: ['--experimental-websocket'], // from Node 22 on it is there without
					testTimeout: 300_000,
					hookTimeout: 300_000,
					maxWorkers: 1,
				},
			},
		],
	},
});
