/** What this device says of how well it keeps things. */
export interface DeviceSafety {
	readonly isInstalled: boolean;
	readonly isPersistent: boolean | undefined;
}

/** Asks the device how well it keeps things. */
export async function deviceSafety(): Promise<DeviceSafety> {
	const isInstalled =
		matchMedia('(display-mode: standalone), (display-mode: window-controls-overlay)').matches ||
		Reflect.get(navigator, 'standalone') === true; // how one tablet's browser says it
	const storage = 'storage' in navigator ? navigator.storage : undefined;
	return { isInstalled, isPersistent: await storage?.persisted().catch(() => undefined) };
}
