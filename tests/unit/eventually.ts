import { vi } from 'vitest';

/**
 * Resolves once this no longer throws. It waits as long as `expect.poll` does by the configuration: the second that vitest
 * gives by itself is little on a busy machine.
 */
export const eventually = (check: () => unknown): Promise<unknown> =>
	vi.waitFor(check, { interval: 1, timeout: 20_000 });
