import { mm } from '../length/length.ts';
import { parseSize } from '../length/parseSize.ts';
import { isProblem } from '../length/reading.ts';
import type { Level } from '../findings/finding.ts';
import { readCells } from '../row/readCells.ts';
import type { RowResult } from '../row/rowResult.ts';
import { readWords } from '../row/rowWords.ts';
import type { SolvedRow } from '../row/solvedRow.ts';
import { kindOf } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import type { Settings, Size } from '../show/settings.ts';
import type { ViewColumn } from './columnView.ts';
import type { SortKey } from './sortRows.ts';

/** A row with all that a column may show of it. */
export interface SortSource {
	readonly row: Row;
	readonly result: RowResult;
	/** The bench steps in which its cuts come, from 1. */
	readonly steps: readonly number[];
	readonly settings: Settings;
}

const results: Partial<Record<ViewColumn, keyof SolvedRow>> = {
	'picture width': 'pictureWidth',
	'picture height': 'pictureHeight',
	'window width': 'windowWidth',
	'window height': 'windowHeight',
	'mount width': 'mountWidth',
	'mount height': 'mountHeight',
	side: 'side',
	top: 'top',
	bottom: 'bottom',
};

const unitsInMicron = mm(0.001);
const gravity: Record<Level, number> = { stop: 0, look: 1, note: 2 };

/**
 * What a row is sorted by in a column: sizes by how large they are, in whatever unit they were typed, shapes by how wide
 * they are, steps by the first, what there is to know by the gravest. What cannot be read is a text.
 */
export function sortKeyOf(column: ViewColumn, { row, result, steps, settings }: SortSource): SortKey {
	if (column === 'steps') return steps[0];
	if (column === 'findings') return result.findings[0] && gravity[result.findings[0].level];
	if (result.findings.some(({ code, cells }) => code === 'not-read' && cells.includes(column)))
		return textKey(row.typed[column]);
	const solved = results[column];
	if (solved !== undefined) return result.solved[solved] ?? textKey(row.typed[column]);
	if (column === 'mount') return mountKey(result.solved) ?? textKey(row.typed.mount);
	const typed = row.typed[column];
	if (typed === undefined) return inherited(column, row, settings);
	switch (kindOf(column)) {
		case 'space':
			return spaceOf(column, row, settings) ?? textKey(typed);
		case 'size': {
			const reading = parseSize(typed, { unit: row.units?.[column] ?? settings.unit, sizes: settings.sizes });
			return isProblem(reading) ? textKey(typed) : sizeKey(reading.value);
		}
		case 'shape': {
			const { shape } = readCells(row, settings).cells;
			return shape ? shape.numerator / shape.denominator : textKey(typed);
		}
		default:
			return textKey(typed);
	}
}

/** By the longer side, then the shorter, to 1 µm: mounts of one size stand together, whichever way they lie. */
const sizeKey = ({ width, height }: Size): number =>
	Math.round(Math.max(width, height) / unitsInMicron) * 2 ** 24 + Math.round(Math.min(width, height) / unitsInMicron);

const mountKey = ({ mountWidth: width, mountHeight: height }: SolvedRow): SortKey =>
	width === undefined || height === undefined ? undefined : sizeKey({ width, height });

function spaceOf(column: ViewColumn, row: Row, settings: Settings): SortKey {
	if (column === 'spacer') return readWords(row, settings).spacer;
	const { overlap, reveal, signingSpace, innerMount } = readCells(row, settings).cells;
	return { overlap, reveal, 'signing space': signingSpace, 'inner mount': innerMount }[column as 'overlap'];
}

function inherited(column: ViewColumn, { typed }: Row, { overlap, reveal }: Settings): SortKey {
	const hasReveal = reveal !== undefined && reveal > 0;
	if (column === 'overlap' && typed.reveal === undefined && !hasReveal) return overlap;
	return column === 'reveal' && typed.overlap === undefined && hasReveal ? reveal : undefined;
}

function textKey(typed = ''): SortKey {
	const text = typed.trim();
	return text === '' ? undefined : text;
}
