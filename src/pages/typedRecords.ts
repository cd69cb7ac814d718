/** A field of a record of the settings, such as a frame's lip. */
export interface RecordField {
	readonly key: string;
	readonly label: string;
	readonly isNeeded?: boolean;
}

/** What is typed of a frame: its rebate, and what it hides and holds. */
export const frameFields: readonly RecordField[] = [
	{ key: 'name', label: 'Name', isNeeded: true },
	{ key: 'width', label: 'Rebate width', isNeeded: true },
	{ key: 'height', label: 'Rebate height', isNeeded: true },
	{ key: 'depth', label: 'Rebate depth' },
	{ key: 'lip', label: 'Lip' },
];

/** What is typed of a board. */
export const boardFields: readonly RecordField[] = [
	{ key: 'name', label: 'Name', isNeeded: true },
	{ key: 'width', label: 'Sheet width', isNeeded: true },
	{ key: 'height', label: 'Sheet height', isNeeded: true },
	{ key: 'thickness', label: 'Thickness' },
];

/** The records of a list of settings as typed; what is none is left as it is by whoever writes the list back. */
export function typedRecords(value: unknown): readonly Readonly<Record<string, unknown>>[] {
	if (!Array.isArray(value)) return [];
	return value.map((each: unknown) =>
		typeof each === 'object' && each !== null ? (each as Readonly<Record<string, unknown>>) : {},
	);
}
