/** How much of the room that the browser gives the app is used, and how much it gives, in bytes; nothing where it does not say. */
export async function storageRoom(): Promise<StorageEstimate> {
	if (typeof navigator === 'undefined' || !('storage' in navigator)) return {};
	return navigator.storage.estimate().catch((): StorageEstimate => ({}));
}
