/** How the text of a column is read. */
export type ColumnKind =
	| 'text'
	| 'edition'
	| 'count'
	| 'shape'
	| 'money' // an amount in the show's currency, or a word such as `NFS`
	| 'pixels' // of a picture file, width first
	| 'size' // two lengths, above zero, or a listed name
	| 'mount' // a size, `fit`, `none`, or blank
	| 'length' // one length, above zero
	| 'space' // one length, zero or more
	| 'weight'; // bottom weight

/** The typed columns of a row, in the order in which the CSV writes them. */
export const columns = [
	{ name: 'print id', kind: 'text' },
	{ name: 'number', kind: 'text' },
	{ name: 'title', kind: 'text' },
	{ name: 'maker', kind: 'text' },
	{ name: 'edition', kind: 'edition' },
	{ name: 'medium', kind: 'text' },
	{ name: 'year', kind: 'text' },
	{ name: 'copies', kind: 'count' },
	{ name: 'picture file', kind: 'text' },
	{ name: 'pixels', kind: 'pixels' },
	{ name: 'shape', kind: 'shape' },
	{ name: 'picture width', kind: 'length' },
	{ name: 'picture height', kind: 'length' },
	{ name: 'paper', kind: 'size' },
	{ name: 'margin left', kind: 'space' },
	{ name: 'margin top', kind: 'space' },
	{ name: 'surface', kind: 'text' },
	{ name: 'mount', kind: 'mount' },
	{ name: 'mount width', kind: 'length' },
	{ name: 'mount height', kind: 'length' },
	{ name: 'window width', kind: 'length' },
	{ name: 'window height', kind: 'length' },
	{ name: 'side', kind: 'length' },
	{ name: 'top', kind: 'length' },
	{ name: 'bottom', kind: 'length' },
	{ name: 'bottom weight', kind: 'weight' },
	{ name: 'overlap', kind: 'space' },
	{ name: 'reveal', kind: 'space' },
	{ name: 'signing space', kind: 'space' },
	{ name: 'inner mount', kind: 'space' },
	{ name: 'mounting', kind: 'text' },
	{ name: 'board', kind: 'text' },
	{ name: 'inner board', kind: 'text' },
	{ name: 'frame', kind: 'text' },
	{ name: 'glazing', kind: 'text' },
	{ name: 'backing', kind: 'text' },
	{ name: 'spacer', kind: 'space' },
	{ name: 'signed on', kind: 'text' },
	{ name: 'net', kind: 'money' },
	{ name: 'price', kind: 'money' },
	{ name: 'value', kind: 'money' },
	{ name: 'stage', kind: 'text' },
	{ name: 'buyer', kind: 'text' },
	{ name: 'accepted', kind: 'text' },
	{ name: 'wall', kind: 'text' },
	{ name: 'hang order', kind: 'text' },
	{ name: 'hang left', kind: 'space' },
	{ name: 'hang centre', kind: 'length' },
	{ name: 'drop', kind: 'length' },
	{ name: 'note', kind: 'text' },
] as const satisfies readonly { name: string; kind: ColumnKind }[];

/** The name of a typed column, as the README and the CSV write it. */
export type ColumnName = (typeof columns)[number]['name'];

/** The columns that stand in no list that is passed on: who bought a print is nobody else's business. */
const keptHere: readonly string[] = ['buyer'];

/** What is asked of a list of columns. */
export function columnsIn<Column extends { readonly name: string; readonly kind: ColumnKind }>(
	list: readonly Column[],
) {
	const kinds = new Map<string, ColumnKind>(list.map(({ name, kind }) => [name, kind]));
	const kindOf = (column: ColumnName): ColumnKind => kinds.get(column)!;
	return {
		kindOf,
		isColumnName: (text: string): text is ColumnName => kinds.has(text),
		hasUnit: (column: ColumnName): boolean => ['size', 'mount', 'length', 'space', 'weight'].includes(kindOf(column)),
		sharedColumns: list.filter(({ name }) => !keptHere.includes(name)),
	};
}

const ofRow = columnsIn(columns);

/** The columns that a list has which is passed on. */
export const { sharedColumns } = ofRow;

/** How the text of a column is read. */
export const { kindOf } = ofRow;

/** Whether a text names a typed column, exactly as written. */
export const { isColumnName } = ofRow;

/** Whether bare numbers of the column take the unit of the show or of a CSV header. */
export const { hasUnit } = ofRow;
