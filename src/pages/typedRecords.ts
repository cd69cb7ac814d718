import { glazingDensity, usualDensity } from '../core/row/materials.ts';
import { glazingMaterials } from '../core/settings/board.ts';
import { paperEdges } from '../core/settings/paper.ts';
import { supplyKinds } from '../core/settings/supply.ts';
import { isRecord } from '../core/values/isRecord.ts';

/** A field of a record of the settings, such as a frame's lip. */
export interface RecordField {
	readonly key: string;
	readonly label: string;
	readonly isNeeded?: boolean;
	/** The words that it may hold; the first is what a blank one means. */
	readonly choices?: readonly string[];
	/** Whether it is a count or a text, not a length: a number in a file is read as it is. */
	readonly isPlain?: boolean;
	/** Whether it is a price: a number in a file is in the smallest coin. */
	readonly isPrice?: boolean;
	/** What counts where nothing is typed in it. */
	readonly byDefault?: (record: Readonly<Record<string, unknown>>) => number;
}

/** What is typed of a frame: the size it is sold by or its rebate, and what it hides and holds. */
export const frameFields: readonly RecordField[] = [
	{ key: 'name', label: 'Name', isNeeded: true },
	{ key: 'width', label: 'Width' },
	{ key: 'height', label: 'Height' },
	{ key: 'rebateWidth', label: 'Rebate width' },
	{ key: 'rebateHeight', label: 'Rebate height' },
	{ key: 'clearance', label: 'Clearance' },
	{ key: 'depth', label: 'Rebate depth' },
	{ key: 'lip', label: 'Lip' },
	{ key: 'moulding', label: 'Face width' },
	{ key: 'weight', label: 'Weight of a metre, kg', isPlain: true },
	{ key: 'price', label: 'Price', isPrice: true },
	{ key: 'count', label: 'In stock', isPlain: true },
	{ key: 'stick', label: 'Length as sold' },
	{ key: 'includes', label: 'Comes with', choices: ['neither', 'glazing', 'backing', 'both'] },
];

/** What is typed of a paper: a sheet, or a roll by its width and length. */
export const paperFields: readonly RecordField[] = [
	{ key: 'name', label: 'Name', isNeeded: true },
	{ key: 'width', label: 'Width', isNeeded: true },
	{ key: 'height', label: 'Height' },
	{ key: 'roll', label: 'Length of a roll' },
	{ key: 'margin', label: 'Printer’s margin' },
	{ key: 'surface', label: 'Surface', isPlain: true },
	{ key: 'edge', label: 'Edge', choices: paperEdges },
	{ key: 'price', label: 'Price of a pack', isPrice: true },
	{ key: 'pack', label: 'In a pack', isPlain: true },
	{ key: 'count', label: 'In stock', isPlain: true },
];

/** What is typed of a wall. */
export const wallFields: readonly RecordField[] = [
	{ key: 'name', label: 'Name', isNeeded: true },
	{ key: 'length', label: 'Length', isNeeded: true },
	{ key: 'height', label: 'Height' },
	{ key: 'centre', label: 'Centre line above the floor' },
	{ key: 'gap', label: 'Gap; blank: all alike' },
];

/** What is typed of a sheet of labels. */
export const labelSheetFields: readonly RecordField[] = [
	{ key: 'name', label: 'Name', isNeeded: true },
	{ key: 'paper', label: 'Paper', choices: ['A4', 'Letter'] },
	{ key: 'width', label: 'Label width', isNeeded: true },
	{ key: 'height', label: 'Label height', isNeeded: true },
	{ key: 'columns', label: 'Labels across', isNeeded: true, isPlain: true },
	{ key: 'rows', label: 'Labels down', isNeeded: true, isPlain: true },
	{ key: 'left', label: 'Left edge to first; blank: centred' },
	{ key: 'top', label: 'Top edge to first; blank: centred' },
	{ key: 'gapAcross', label: 'Gap across' },
	{ key: 'gapDown', label: 'Gap down' },
];

/** What is typed of what is in the way on a wall. */
export const obstacleFields: readonly RecordField[] = [
	{ key: 'name', label: 'Name', isNeeded: true },
	{ key: 'left', label: 'From the wall’s left', isNeeded: true },
	{ key: 'width', label: 'Width', isNeeded: true },
	{ key: 'bottom', label: 'Above the floor' },
	{ key: 'height', label: 'Height' },
];

const density = {
	...{ key: 'density', label: 'Density, kg/m²\u00a0per\u00a0mm', isPlain: true },
	byDefault: () => usualDensity,
};
const grainWords: RecordField = { key: 'grain', label: 'Grain along', choices: ['none', 'width', 'height'] };

/** What is typed of a board: a sheet of it, or a blank bought ready cut. */
export const boardFields: readonly RecordField[] = [
	{ key: 'name', label: 'Name', isNeeded: true },
	{ key: 'kind', label: 'Kind', choices: ['sheet', 'blank'] },
	{ key: 'width', label: 'Width', isNeeded: true },
	{ key: 'height', label: 'Height', isNeeded: true },
	{ key: 'thickness', label: 'Thickness' },
	{ key: 'colour', label: 'Colour', isPlain: true },
	{ key: 'price', label: 'Price of a pack', isPrice: true },
	{ key: 'pack', label: 'In a pack', isPlain: true },
	{ key: 'count', label: 'In stock', isPlain: true },
	grainWords,
	{ key: 'trim', label: 'Trim each edge', byDefault: () => 0 },
	density,
];

const withoutGrain = boardFields.filter(({ key }) => key !== 'grain' && key !== 'colour');

/** What is typed of glass or acrylic. */
export const glazingFields: readonly RecordField[] = [
	withoutGrain[0]!,
	{ key: 'material', label: 'Material', choices: glazingMaterials },
	...withoutGrain.slice(1, -1),
	{
		...density,
		byDefault: ({ material }) =>
			glazingDensity[typeof material === 'string' && /acrylic/i.test(material) ? 'acrylic' : 'glass'],
	},
];

/** What is typed of a backing. */
export const backingFields: readonly RecordField[] = withoutGrain;

/** What is typed of what is used up with each print. */
export const supplyFields: readonly RecordField[] = [
	{ key: 'kind', label: 'Kind', choices: ['', ...supplyKinds], isNeeded: true },
	{ key: 'name', label: 'Name' },
	{ key: 'each', label: 'Each print needs', isPlain: true },
	{ key: 'price', label: 'Price of a pack', isPrice: true },
	{ key: 'pack', label: 'In a pack', isPlain: true },
	{ key: 'count', label: 'In stock', isPlain: true },
];

/** What is typed of an offcut that was kept. */
export const offcutFields: readonly RecordField[] = [
	{ key: 'board', label: 'Board', isNeeded: true },
	{ key: 'width', label: 'Width', isNeeded: true },
	{ key: 'height', label: 'Height', isNeeded: true },
	{ key: 'count', label: 'How many', isPlain: true },
	grainWords,
];

/** The records of a list of settings as typed; what is none is left as it is by whoever writes the list back. */
export function typedRecords(value: unknown): readonly Readonly<Record<string, unknown>>[] {
	if (!Array.isArray(value)) return [];
	return value.map((each: unknown) => (isRecord(each) ? withWords(each) : {}));
}

/** A record of which a list of words is one of the words of its field, as a file may have what comes with a frame. */
function withWords(record: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
	const { includes } = record;
	if (!Array.isArray(includes)) return record;
	const [first, ...others] = includes as readonly unknown[];
	return { ...record, includes: others.length > 0 ? 'both' : first };
}
