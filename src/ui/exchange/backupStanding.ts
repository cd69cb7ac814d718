/** A show of a backup, and whether this device has it. */
export interface BackupStanding {
	readonly name: string;
	readonly prints: number;
	readonly standing: 'missing' | 'same' | 'differs';
	/** The one on this device, and how many prints differ, where it is another than the backup's. */
	readonly here?: { readonly name: string; readonly prints: number; readonly differing: number } | undefined;
}
