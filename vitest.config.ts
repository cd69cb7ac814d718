import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	test: {
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
					benchmark: { include: ['tests/bench/**/*.bench.ts'] },
					sequence: { groupOrder: 0 },
				},
			},
			{ test: { name: 'published', include: ['tests/published/**/*.test.ts'], sequence: { groupOrder: 1 } } },
			{
				test: {
					name: 'house',
					include: ['tests/house/**/*.test.ts'],
					testTimeout: 60_000,
					sequence: { groupOrder: 2 },
				},
			},
			{
				test: {
					name: 'browser',
					include: ['tests/browser/**/*.test.ts'],
					testTimeout: 60_000,
					hookTimeout: 120_000,
					maxWorkers: 2, // two Chromiums at a time: one leaves half of a small machine idle, three wait for each other
					sequence: { groupOrder: 3 },
				},
			},
		],
	},
});
