import { type Length, minus, plus } from '../length/length.ts';
import type { Reading } from '../length/reading.ts';
import { downToRuler } from '../length/ruler.ts';
import type { Size } from '../length/size.ts';
import type { PlainRecord } from '../values/isRecord.ts';
import type { StockContext } from './readBoards.ts';
import { nameKey } from '../values/named.ts';
import { ownValue } from '../values/ownValue.ts';
import {
	isAbsent,
	lengthSetting,
	numberAndUnit,
	optionalSettings,
	recordsOf,
	sizeOfRecord,
	textSetting,
	valueOf,
	wholeSetting,
} from './settingValue.ts';
import { shown } from '../values/shownText.ts';
import { type Frame, type FrameMaterial, unframed } from './frame.ts';

/** What frames are read by. */
interface FrameContext extends StockContext {
	readonly ruler: Length;
	/** The clearance of frames that have none of their own. */
	readonly frameClearance: Length;
}

/**
 * Reads the frames; one without a name, or of which a size cannot be read, is reported and left out, and so is one whose
 * name another before it has: a row's cell knows a frame by its name.
 */
export function readFrames(value: unknown, context: FrameContext): readonly Frame[] {
	const names = new Set<string>();
	return recordsOf(value, 'frames', context).flatMap(([record, key]) => {
		const name = valueOf(textSetting(record['name']), `${key}.name`, context);
		const own = optionalSettings<Pick<Frame, 'clearance'>>(record, key, context, {
			clearance: ['clearance', (typed) => lengthSetting(typed, context, true)],
		});
		const clearance = own.clearance ?? context.frameClearance;
		const size = sizesOf(record, key, clearance, context);
		const rest = optionalSettings<Omit<Frame, 'name' | 'size' | 'clearance'>>(record, key, context, {
			depth: ['depth', (typed) => lengthSetting(typed, context)],
			lip: ['lip', (typed) => lengthSetting(typed, context, true)],
			moulding: ['moulding', (typed) => lengthSetting(typed, context)],
			weightKgPerMetre: ['weight', weightSetting],
			price: ['price', context.price],
			count: ['count', (typed) => wholeSetting(typed, 0)],
			stick: ['stick', (typed) => lengthSetting(typed, context)],
			includes: ['includes', includesSetting],
		});
		if (name === undefined || size === undefined) return [];
		const problem = names.has(nameKey(name))
			? `“${name}” is the name of a frame before it too; give this one another`
			: nameKey(name) === unframed
				? `“${name}” says in the frame cell that a print has no frame, and cannot name one`
				: undefined;
		if (problem !== undefined) {
			context.report(`${key}.name`, problem);
			return [];
		}
		names.add(nameKey(name));
		return [{ name, ...(size !== 'made to measure' && { size }), clearance, ...rest }];
	});
}

/**
 * What a frame takes and its rebate, each from the other where it is blank; both blank, it is made to each mount.
 * @returns undefined, with each problem reported, where one of them cannot be read
 */
function sizesOf(
	record: PlainRecord,
	key: string,
	clearance: Length,
	context: FrameContext,
): Frame['size'] | 'made to measure' {
	const isTyped = (sides: readonly string[]) => sides.some((side) => !isAbsent(record[side]));
	const read = (sides: readonly [string, string]) => sizeOfRecord(record, key, context, sides);
	if (!isTyped([...outer, ...inner])) return 'made to measure';
	const takes = isTyped(outer) ? read(outer) : undefined;
	const rebate = isTyped(inner) ? read(inner) : undefined;
	if ((isTyped(outer) && !takes) || (isTyped(inner) && !rebate)) return undefined;
	if (takes) return { takes, rebate: rebate ?? each(takes, (side) => plus(side, clearance)) };
	const left = each(rebate!, (side) => minus(side, clearance));
	const none = inner.find((_, i) => [left.width, left.height][i]! < context.ruler);
	if (none === undefined) return { takes: each(left, (side) => downToRuler(side, context.ruler)), rebate: rebate! };
	context.report(`${key}.${none}`, 'the clearance leaves nothing of the rebate');
	return undefined;
}

const outer = ['width', 'height'] as const;
const inner = ['rebateWidth', 'rebateHeight'] as const;

const each = ({ width, height }: Size, change: (side: Length) => Length): Size => ({
	width: change(width),
	height: change(height),
});

/** What comes with a frame: `glazing`, `backing`, both or neither. */
function includesSetting(value: unknown): Reading<readonly FrameMaterial[]> {
	const words = (Array.isArray(value) ? value : [value]).flatMap((word: unknown) =>
		typeof word === 'string'
			? word
					.toLowerCase()
					.split(/\s*(?:,|\+|&|\band\b)\s*/)
					.filter((part) => part !== '')
			: [word],
	);
	const known: Readonly<Record<string, readonly FrameMaterial[]>> = {
		...{ glazing: ['glazing'], backing: ['backing'] },
		...{ both: ['glazing', 'backing'], neither: [], none: [] },
	};
	const parts = words.map((word) => (typeof word === 'string' ? ownValue(known, word.trim()) : undefined));
	return parts.every((part) => part !== undefined)
		? { value: [...new Set(parts.flat())] }
		: { problem: `${shown(value)} is none of: glazing, backing, both, neither` };
}

/** The weight of a metre of moulding, in kg: `0.4`, `0.4 kg`, `400 g`, with or without `/m`. */
function weightSetting(value: unknown): Reading<number> {
	if (typeof value === 'number' && Number.isFinite(value) && value >= 0) return { value };
	const problem = `${String(value)} is not a weight of a metre, such as 0.4 kg`;
	if (typeof value !== 'string') return { problem };
	const read = numberAndUnit(value, problem);
	if ('problem' in read) return read;
	const unit = /^(kg|g)?\s*(?:\/\s*m)?$/.exec(read.value.unit);
	return unit === null ? { problem } : { value: Number(read.value.number) / (unit[1] === 'g' ? 1000 : 1) };
}
