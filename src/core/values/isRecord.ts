/** A record of plain values. */
export type PlainRecord = Readonly<Record<string, unknown>>;

/** Whether a value is a record, not a list. */
export const isRecord = (value: unknown): value is PlainRecord =>
	typeof value === 'object' && value !== null && !Array.isArray(value);
