import { formatWithUnit } from '../length/formatLength.ts';
import { type Length, plus, zero } from '../length/length.ts';
import { boardThickness, usualBoardThickness } from '../row/stack.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';

/** What keeps the print of a row off its glazing; `far` is nothing where `parts` is empty. */
export function keptOff({ read, hasMount, boards }: WorkedRow): {
	readonly parts: readonly string[];
	readonly far: Length;
	/** Whether a board's thickness is not known, so that the usual one counts. */
	readonly isGuess: boolean;
	readonly mountCount: number;
} {
	const { innerMount, spacer = zero } = read.cells;
	const outer = boardThickness(boards.mount);
	const inner = boardThickness(boards['inner mount']);
	const mounts = !hasMount || read.cells.isFloat ? [] : innerMount ? [outer, inner] : [outer];
	return {
		parts: [
			...(mounts.length === 2 ? ['the mount and the inner mount'] : mounts.length === 1 ? ['the mount'] : []),
			...(spacer > 0 ? ['a spacer'] : []),
		],
		far: plus(...mounts.map(({ thickness }) => thickness), spacer),
		isGuess: mounts.some(({ isKnown }) => !isKnown),
		mountCount: mounts.length,
	};
}

/** What keeps the print of a row off the glass, and how far, in one sentence. */
export function protectionOf(worked: WorkedRow, settings: Settings): string {
	const { glazing } = worked.words;
	const say = (value: Length) => formatWithUnit(value, settings);
	if (glazing === 'none') return 'No glazing. Nothing touches the print, and nothing keeps dust and fingers off it.';
	const { parts, far, isGuess, mountCount } = keptOff(worked);
	if (parts.length === 0) return `Nothing keeps the print off the ${glazing}. It has neither mount nor spacer.`;
	const guess = isGuess ? ` (the board’s thickness is not known; ${say(usualBoardThickness)} is usual)` : '';
	return `${parts.join(' and ').replace(/^./, (first) => first.toUpperCase())} keep${parts.length > 1 || mountCount === 2 ? '' : 's'} the print ${say(far)} off the ${glazing}${guess}.`;
}
