import { formatSize } from '../core/length/formatLength.ts';
import { shownText } from '../core/values/shownText.ts';
import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import { judgeRow } from '../core/findings/judgeRow.ts';
import { gravestWords } from '../core/findings/together.ts';
import type { Row } from '../core/show/row.ts';
import { withKept } from '../files/keptColumns.ts';
import { readRows } from '../files/csv.ts';
import { firstLines } from '../files/firstLines.ts';
import type { Session } from './session.svelte.ts';
import type { IncomingList } from './incoming.ts';

/** The first rows of a file as they would be understood. */
export interface PreviewOfRows {
	/** Why they cannot be read so. */
	readonly problem?: string;
	readonly rows: readonly { readonly title: string; readonly words: string }[];
}

/** How many rows are shown: enough to see by that a column is not what it was said to be. */
const mostRows = 3;

/** How much of the text is read for them: it is read again with each answer, and long cells must not delay that. */
const mostCharacters = 20_000;

/** Solves the first rows of a file under a matching of its columns, for the eye. */
export function previewRows({ settings }: Session, { opened }: IncomingList, matching: ColumnMatching): PreviewOfRows {
	const { text, isWhole } = opened.list.beginning;
	const read = readRows(firstLines(text, mostCharacters), settings, (place) => `row ${place}`, {
		matching,
		isBeginning: !isWhole || text.length > mostCharacters,
	});
	if ('problem' in read) return { problem: `So they cannot be read: ${read.problem}.`, rows: [] };
	return { rows: solved(read.rows, settings) };
}

/** Solves the first rows that keep columns of other programs, under a matching of these, for the eye. */
export function previewKept({ show, settings }: Session, matching: ColumnMatching): PreviewOfRows {
	const kept = show.rows.filter(({ extra }) => extra !== undefined).slice(0, mostRows);
	return { rows: solved(withKept(kept, matching, settings), settings) };
}

function solved(all: readonly Row[], settings: Session['settings']): PreviewOfRows['rows'] {
	return all.slice(0, mostRows).map((row, place) => {
		const { solved, findings } = judgeRow(row, settings);
		const size = (name: string, width?: typeof solved.mountWidth, height?: typeof solved.mountHeight) =>
			width === undefined || height === undefined ? [] : [`${name} ${formatSize(width, height, settings)}`];
		const words = [
			...size('picture', solved.pictureWidth, solved.pictureHeight),
			...size('window', solved.windowWidth, solved.windowHeight),
			...size('mount', solved.mountWidth, solved.mountHeight),
		];
		const stop = gravestWords(
			findings.filter(({ level }) => level === 'stop'),
			settings,
		);
		return {
			title: shownText(row.typed.title ?? row.typed.number ?? `Row ${place + 1}`),
			words: [words.join(', ') || 'no size yet', ...(stop === undefined ? [] : [stop])].join(' · '),
		};
	});
}
