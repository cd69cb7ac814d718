import { afterEach, expect, test, vi } from 'vitest';
import { getEngines } from './openTab.ts';

afterEach(() => void vi.unstubAllEnvs());

test('a browser that is not there and cannot be had is named, with what to do', () => {
	vi.stubEnv('PATH', '/no/such/folder');
	expect(getEngines).toThrow(
		'Not found: firefox-esr or firefox, WebKitWebDriver, xvfb-run. ' +
			'On Debian, as root: apt-get install firefox-esr webkit2gtk-driver xvfb. Elsewhere, have them on the PATH.',
	);
});
