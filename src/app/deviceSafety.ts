/** What this device says of how well it keeps things. */
export interface DeviceSafety {
	readonly isInstalled: boolean;
	readonly isPersistent: boolean | undefined;
	readonly isPassingTab: boolean;
}

/**
 * Whether the app is open in a tab of a browser that has no question with which to install it, and that clears the
 * storage of a tab which is not used: the tablet's own browser, known by a property that no other has.
 */
export const isPassingTab = (): boolean => Reflect.get(navigator, 'standalone') === false;

/** Asks the device how well it keeps things. */
export async function deviceSafety(): Promise<DeviceSafety> {
	const isInstalled =
		matchMedia('(display-mode: standalone), (display-mode: window-controls-overlay)').matches ||
		Reflect.get(navigator, 'standalone') === true; // how one tablet's browser says it
	const storage = 'storage' in navigator ? navigator.storage : undefined;
	return { isInstalled, isPassingTab: isPassingTab(), isPersistent: await storage?.persisted().catch(() => undefined) };
}
