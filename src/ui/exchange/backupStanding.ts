/** A show of a backup, and whether this device has it. */
export interface BackupStanding {
	readonly name: string;
	readonly prints: number;
	readonly standing: 'missing' | 'same' | 'differs';
}
