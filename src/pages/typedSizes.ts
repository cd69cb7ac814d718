import { isRecord } from '../core/values/isRecord.ts';

/** A named size as typed. */
export interface TypedSize {
	readonly name: string;
	readonly width: string;
	readonly height: string;
}

/** The named sizes of a show as texts to be edited. A number, which a file may hold, is in millimetres. */
export function typedSizes(value: unknown): readonly TypedSize[] {
	if (!Array.isArray(value)) return [];
	return value.map((each: unknown) => {
		const size = isRecord(each) ? each : {};
		return { name: text(size['name']), width: text(size['width']), height: text(size['height']) };
	});
}

const text = (value: unknown) => (typeof value === 'number' ? `${value} mm` : typeof value === 'string' ? value : '');
