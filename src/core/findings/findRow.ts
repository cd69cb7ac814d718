import { formatExact } from '../length/formatLength.ts';
import { nearestLength } from '../length/length.ts';
import type { Cells } from '../row/cells.ts';
import { isHeldByPaper } from '../row/heldByPaper.ts';
import { workedOutAs, workOut } from '../row/workOut.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { withCells } from '../show/withCells.ts';
import { addsUp } from './addsUp.ts';
import { barePaper } from './barePaper.ts';
import { bottomHeavy } from './bottomHeavy.ts';
import { doesNotFit } from './doesNotFit.ts';
import { editionNumber } from './edition.ts';
import { fallsThrough } from './fallsThrough.ts';
import type { Finding, Level, Mend } from './finding.ts';
import type { Candidate, Finder, Found, RowContext } from './found.ts';
import { heavy, lipShrinks, pastGuide, shortStick, tooDeep, tooThick } from './frame.ts';
import { frameClash } from './frameClash.ts';
import { innerBlank } from './innerBlank.ts';
import { overLimit, underLimit } from './limits.ts';
import { crops, lowResolution } from './pixels.ts';
import { needsPaper } from './needsPaper.ts';
import { needsSize } from './needsSize.ts';
import { noBoard } from './noBoard.ts';
import { notRead } from './notRead.ts';
import { offRuler } from './offRuler.ts';
import { ownSize } from './ownSize.ts';
import { paperBounds, paperCrowds, paperMargin, paperShort } from './paper.ts';
import { signatureCovered, signedOnMount, touchesGlass } from './protection.ts';
import { shapeClash } from './shapeClash.ts';
import { thinBorder } from './thinBorder.ts';
import { thinOverlap } from './thinOverlap.ts';
import { findingOf } from './findingOf.ts';
import { topHeavy } from './topHeavy.ts';
import { turned } from './turned.ts';
import { uneven } from './uneven.ts';
import { findUnitSlip } from './unitSlip.ts';
import { weightLost } from './weightLost.ts';
import { labelOf } from './words/inWords.ts';

/** Every finder but `unit-slip`, which asks what these found. Within a level, findings stand in this order. */
const finders: readonly Finder[] = [
	notRead,
	addsUp,
	doesNotFit,
	fallsThrough,
	paperShort,
	overLimit,
	underLimit,
	tooThick,
	frameClash,
	shortStick,
	tooDeep,
	noBoard,
	innerBlank,
	touchesGlass,
	editionNumber,
	needsSize,
	needsPaper,
	ownSize,
	shapeClash,
	turned,
	uneven,
	thinBorder,
	lipShrinks,
	topHeavy,
	bottomHeavy,
	barePaper,
	thinOverlap,
	paperMargin,
	paperCrowds,
	heavy,
	pastGuide,
	lowResolution,
	signatureCovered,
	signedOnMount,
	paperBounds,
	crops,
	weightLost,
	offRuler,
];

/** What sizes in the wrong unit bring with them, and what goes with them: the slip alone is said. */
const comesOfSlip: ReadonlySet<Found['code']> = new Set([
	...(['own-size', 'shape-clash', 'turned', 'uneven', 'thin-border', 'lip-shrinks', 'top-heavy'] as const),
	...(['bottom-heavy', 'bare-paper', 'thin-overlap', 'paper-crowds', 'weight-lost', 'off-ruler'] as const),
]);

const weights: Readonly<Record<Level, number>> = { stop: 0, look: 1, note: 2 };

/** Mends offered for one finding, at most: more would be a riddle, not an offer. */
const mostMends = 6;

/** All that is found in a row, in order of weight. Mends are tried only when they are asked for. */
export function findRow(row: Row, settings: Settings, worked: WorkedRow): readonly Finding[] {
	const context = contextOf(row, settings, worked);
	const found = allFound(context);
	return found.map((one) => withMends(one, found, context)).sort((a, b) => weights[a.level] - weights[b.level]);
}

function contextOf(row: Row, settings: Settings, worked: WorkedRow): RowContext {
	const { unit } = settings;
	const { read, words, inherited, hasMount, solution, solved, boards, frame, copies } = worked;
	const { onPaper, place, hinges, hangs, materials, framed } = worked;
	// Written out, for spreading costs more than solving a row, and rows are tried by the dozen.
	return {
		read,
		words,
		inherited,
		hasMount,
		solution,
		solved,
		boards,
		frame,
		onPaper,
		place,
		hinges,
		hangs,
		materials,
		framed,
		copies,
		row,
		settings,
		text: (value) => formatExact(nearestLength(value), unit),
		workedOut: (changed) => contextOf(changed, settings, workOut(changed, settings)),
		readAs: (cells: Cells) => {
			const other = contextOf(row, settings, workedOutAs(worked, cells, settings));
			return { solution: other.solution, found: () => finders.flatMap((find) => find(other)) };
		},
	};
}

function allFound(context: RowContext): readonly Found[] {
	const found = finders.flatMap((find) => find(context));
	const slip = findUnitSlip(context, found);
	return slip.length === 0 ? found : [...slip, ...found.filter(({ code }) => !comesOfSlip.has(code))];
}

const withMends = (found: Found, all: readonly Found[], context: RowContext): Finding =>
	findingOf(found, context.settings, () => (found.candidates ? mendsOf(found, found.candidates(), all, context) : []));

/** The candidates by which the finding goes away and no `stop` comes that was not there. */
function mendsOf(
	finding: Found,
	candidates: readonly Candidate[],
	all: readonly Found[],
	context: RowContext,
): readonly Mend[] {
	const mends: Mend[] = [];
	const key = ({ code, cells }: Found) =>
		`${code} ${code === 'not-read' ? cells[0] : (cells.find((cell) => /Width|side/.test(cell)) ?? 'height')}`;
	const stops = new Set(all.filter(({ level }) => level === 'stop').map(key));
	for (const { offer, change } of candidates) {
		if (mends.some((mend) => JSON.stringify(mend.change) === JSON.stringify(change))) continue;
		const after = context.workedOut(withCells(context.row, change, context.settings));
		// What a slip of units may be is looked for only where that is asked, or a row has come out: it is many trials.
		const alone = finders.flatMap((find) => find(after));
		const hasStop = alone.some(({ level }) => level === 'stop');
		const found = hasStop && finding.code !== 'unit-slip' ? alone : [...findUnitSlip(after, alone), ...alone];
		const isMended = !found.some((one) => key(one) === key(finding));
		// A reading that was meant may well bring what the unread text hid.
		const isNewStop = finding.code !== 'not-read' && found.some((one) => one.level === 'stop' && !stops.has(key(one)));
		// A picture that is named is one that the paper holds.
		const isNamed = (change['picture width'] ?? '') !== '' || (change['picture height'] ?? '') !== '';
		if (!isMended || isNewStop || (isNamed && !isHeldByPaper(after, context.settings))) continue;
		const label = labelOf(typeof offer === 'function' ? offer(after) : offer, context.settings);
		// Two that say the same cannot be told apart: the first, which changes less, is enough.
		if (!mends.some((mend) => mend.label === label)) mends.push({ label, change });
		if (mends.length === mostMends) break;
	}
	// Without a paper nothing is known of what holds the print: what mends the paper, or the window over it, comes first.
	return mends.sort((a, b) => +(a.change.paper === '') - +(b.change.paper === ''));
}
