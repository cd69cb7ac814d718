import { formatWithUnit } from '../length/formatLength.ts';
import { plus, zero } from '../length/length.ts';
import { boardThickness, usualBoardThickness } from '../row/stack.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';

/** What keeps the print of a row off the glass, and how far, in one sentence. */
export function protectionOf({ read, words, hasMount, boards }: WorkedRow, settings: Settings): string {
	const { innerMount, spacer = zero } = read.cells;
	const { glazing } = words;
	const say = (value: Parameters<typeof formatWithUnit>[0]) => formatWithUnit(value, settings);
	if (glazing === 'none') return 'No glazing: nothing touches the print, and nothing keeps dust and fingers off it.';
	const outer = boardThickness(boards.mount);
	const inner = boardThickness(boards['inner mount']);
	const mounts = !hasMount || read.cells.isFloat ? [] : innerMount ? [outer, inner] : [outer];
	const parts = [
		...(mounts.length === 2 ? ['the mount and the inner mount'] : mounts.length === 1 ? ['the mount'] : []),
		...(spacer > 0 ? ['a spacer'] : []),
	];
	if (parts.length === 0) return `Nothing keeps the print off the ${glazing}: it has neither mount nor spacer.`;
	const far = plus(...mounts.map(({ thickness }) => thickness), spacer);
	const guess = mounts.some(({ isKnown }) => !isKnown)
		? ` (the board’s thickness is not known; ${say(usualBoardThickness)} is usual)`
		: '';
	return `${parts.join(' and ').replace(/^./, (first) => first.toUpperCase())} keep${parts.length > 1 || mounts.length === 2 ? '' : 's'} the print ${say(far)} off the ${glazing}${guess}.`;
}
