import { mountSizeOf } from '../../core/grid/filterRows.ts';
import type { RowResult } from '../../core/findings/rowResult.ts';
import { ofPrints, printsOf } from '../../core/show/blankRow.ts';
import type { Row } from '../../core/show/row.ts';
import type { Settings } from '../../core/settings/settings.ts';
import { onceMade } from '../../core/values/onceMade.ts';

/** What prints can be asked for, as far as there are any. */
export interface FilterChoices {
	/** Codes of findings. */
	readonly codes: readonly string[];
	readonly mounts: readonly string[];
	readonly boards: readonly string[];
	readonly frames: readonly string[];
	readonly makers: readonly string[];
}

/** What the prints of a show can be asked for. */
export function filterChoices(rows: readonly Row[], all: readonly RowResult[], settings: Settings): FilterChoices {
	const results = ofPrints(rows, all);
	return {
		codes: inOrder(results.flatMap(({ findings }) => findings.map(({ code }) => code))),
		mounts: inOrder(results.map((result) => mountSizeOf(result, settings))),
		boards: inOrder(results.map(({ boards }) => boards.mount.asked ?? '')),
		frames: inOrder(results.map(({ frame }) => frame.frame?.name ?? '')),
		makers: inOrder(printsOf(rows).map(({ typed }) => typed.maker?.trim() ?? '')),
	};
}

const numbered = onceMade(() => new Intl.Collator(undefined, { numeric: true }));
const inOrder = (texts: readonly string[]): readonly string[] =>
	[...new Set(texts)].filter((text) => text !== '').sort(numbered().compare);
