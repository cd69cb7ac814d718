import { aptInstall, onPath } from '../browser/harness/programs.ts';
import { openFirefox } from './firefox.ts';
import type { Engine, Folders, Tab } from './tab.ts';
import { openWebKit } from './webKit.ts';

/** A program that the plays need: what it is called, and the Debian package that it comes in. */
interface Needed {
	readonly names: readonly string[];
	readonly debian: string;
}

const firefox: Needed = { names: ['firefox-esr', 'firefox'], debian: 'firefox-esr' };
const webKitDriver: Needed = { names: ['WebKitWebDriver'], debian: 'webkit2gtk-driver' };
const screen: Needed = { names: ['xvfb-run'], debian: 'xvfb' };

const needed = [firefox, webKitDriver, screen];

const missing = () => needed.filter(({ names }) => onPath(...names) === undefined);

/**
 * Gets the browsers that are not installed, where that can be done without asking.
 * @throws Error saying what to do, if one could not be had
 */
export function getEngines(): void {
	if (missing().length > 0) aptInstall(...missing().map(({ debian }) => debian));
	const still = missing();
	if (still.length === 0) return;
	const packages = still.map(({ debian }) => debian).join(' ');
	const programs = still.map(({ names }) => names.join(' or ')).join(', ');
	throw new Error(
		`Not found: ${programs}. On Debian, as root: apt-get install ${packages}. Elsewhere, have them on the PATH.`,
	);
}

/** Opens a browser with one window in it. `getEngines` must have gone before. */
export const openTab = (engine: Engine, folders: Folders): Promise<Tab> =>
	engine === 'Firefox'
		? openFirefox(onPath(...firefox.names)!, folders)
		: openWebKit(onPath(...webKitDriver.names)!, onPath(...screen.names)!, folders);
