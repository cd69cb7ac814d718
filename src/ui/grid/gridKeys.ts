import type { EnterHabit } from '../../core/grid/enterHabit.ts';
import type { Move } from '../../core/grid/move.ts';
import type { After } from './gridEditor.svelte.ts';
import type { GridState } from './gridState.svelte.ts';

/** What is asked for in the grid and done around it. */
export interface GridAround {
	/** Opens the menu of the selected rows or columns at a place in the window. */
	readonly onmenu: (of: 'row' | 'column', x: number, y: number) => void;
	/** Goes to the findings of the active row. */
	readonly onsentences: () => void;
	/** Selects the next or the former cell that something is said about. */
	readonly onfinding: (by: 1 | -1) => void;
	readonly onkeys: () => void;
	/** Goes to where words are typed that are looked for. */
	readonly onfind: () => void;
	/** What Enter does on a cell that is not open. */
	readonly enterHabit: EnterHabit;
}

/** What the keys of the grid need besides its state. */
export interface KeyContext extends GridAround {
	readonly grid: GridState;
	/** Opens the active cell to edit what it holds, and its list where it takes words. */
	readonly edit: () => void;
	/** Opens the menu of the active row or column. */
	readonly openMenu: (of: 'row' | 'column') => void;
}

type Command = (context: KeyContext) => void;
type Keys = Readonly<Record<string, Command>>;

/** The name of a key with what is held down: `Ctrl+Shift+Z`. The command key of an Apple keyboard is `Ctrl` too. */
export function keyName(event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>): string {
	const { key } = event;
	const name = key.length === 1 ? key.toUpperCase() : key;
	// Shift is in the character already: `?`, not `Shift+?`. A space is the same with it.
	const isInName = key.length === 1 && key !== ' ' && !event.ctrlKey && !event.metaKey && !event.altKey;
	const isShiftSaid = event.shiftKey && !isInName;
	const held = [event.ctrlKey || event.metaKey ? 'Ctrl' : '', event.altKey ? 'Alt' : '', isShiftSaid ? 'Shift' : ''];
	return [...held.filter((word) => word !== ''), name].join('+');
}

const moves: Readonly<Record<string, Move>> = {
	ArrowLeft: 'left',
	ArrowRight: 'right',
	ArrowUp: 'up',
	ArrowDown: 'down',
	Home: 'row start',
	End: 'row end',
	PageUp: 'page up',
	PageDown: 'page down',
	'Ctrl+ArrowLeft': 'edge left',
	'Ctrl+ArrowRight': 'edge right',
	'Ctrl+ArrowUp': 'edge up',
	'Ctrl+ArrowDown': 'edge down',
	'Ctrl+Home': 'grid start',
	'Ctrl+End': 'grid end',
};

const withShift = (key: string): string => (key.startsWith('Ctrl+') ? key.replace('+', '+Shift+') : `Shift+${key}`);

/** Each move, and with Shift the same as a way to extend the selection. */
const moveKeys: Keys = Object.fromEntries(
	Object.entries(moves).flatMap(([key, way]): (readonly [string, Command])[] => [
		[key, ({ grid }) => grid.moves.go(way, false)],
		[withShift(key), ({ grid }) => grid.moves.go(way, true)],
	]),
);

/** Enter on a cell that is not open: through the selection where there is one, else as is the habit. */
function enter({ grid, edit, enterHabit }: KeyContext, isBack: boolean): void {
	if (grid.selection.isRange || enterHabit === 'down') grid.moves.step('enter', isBack);
	else if (!isBack) edit();
}

function openList({ grid, edit }: KeyContext): void {
	const { column } = grid.selection;
	if (column.words) edit();
	else grid.notices.say(`${column.label} has no list: type into it`);
}

/** What each key does while no cell is being typed into. */
const cellKeys: Keys = {
	...moveKeys,
	'Shift+ ': ({ grid }) => grid.selection.selectWhole('rows'),
	'Ctrl+Shift+ ': ({ grid }) => grid.selection.selectWhole('rows'),
	'Ctrl+ ': ({ grid }) => grid.selection.selectWhole('columns'),
	'Ctrl+A': ({ grid }) => grid.selection.selectWhole('everything'),
	Enter: (context) => enter(context, false),
	'Shift+Enter': (context) => enter(context, true),
	F2: ({ edit }) => edit(),
	'Alt+ArrowDown': (context) => openList(context),
	Delete: ({ grid }) => grid.blocks.clear(),
	Backspace: ({ grid }) => grid.blocks.clear(),
	'Ctrl+D': ({ grid }) => grid.blocks.fill('down'),
	'Ctrl+R': ({ grid }) => grid.blocks.fill('right'),
	'Ctrl+Z': ({ grid }) => grid.edits.undo(),
	'Ctrl+Shift+Z': ({ grid }) => grid.edits.redo(),
	'Ctrl+Y': ({ grid }) => grid.edits.redo(),
	'Alt+Shift+ArrowUp': ({ grid }) => grid.rowEdits.move(-1),
	'Alt+Shift+ArrowDown': ({ grid }) => grid.rowEdits.move(1),
	'Ctrl+Shift+D': ({ grid }) => grid.rowEdits.duplicate(),
	'Ctrl+Enter': ({ grid }) => grid.rowEdits.add(grid.selection.rowIndex + 1),
	'Ctrl+Shift+Enter': ({ grid }) => grid.rowEdits.add(Math.max(0, grid.selection.rowIndex)),
	'Ctrl+Delete': ({ grid }) => grid.rowEdits.remove(),
	'Ctrl+Backspace': ({ grid }) => grid.rowEdits.remove(),
	F9: ({ grid }) => grid.pasting.leaveWorkedOut(),
	'Shift+F10': ({ openMenu }) => openMenu('row'),
	ContextMenu: ({ openMenu }) => openMenu('row'),
	F7: ({ openMenu }) => openMenu('column'),
	'Ctrl+F': ({ onfind }) => onfind(),
	F6: ({ onsentences }) => onsentences(),
	F8: ({ onfinding }) => onfinding(1),
	'Shift+F8': ({ onfinding }) => onfinding(-1),
	'?': ({ onkeys }) => onkeys(),
};

/** What keys do in the heads of the columns, where they do something else than in the cells. */
const headKeys: Keys = {
	' ': ({ grid }) => grid.selection.selectWhole('columns'),
	Enter: ({ openMenu }) => openMenu('column'),
	F2: ({ openMenu }) => openMenu('column'),
	'Shift+F10': ({ openMenu }) => openMenu('column'),
	ContextMenu: ({ openMenu }) => openMenu('column'),
	'Alt+ArrowLeft': ({ grid }) => grid.columnEdits.move(-1),
	'Alt+ArrowRight': ({ grid }) => grid.columnEdits.move(1),
	'Alt+Shift+ArrowLeft': ({ grid }) => grid.columnEdits.size(-1),
	'Alt+Shift+ArrowRight': ({ grid }) => grid.columnEdits.size(1),
	Delete: ({ grid }) => grid.columnEdits.hide(),
};

/** What a key does in the cells or in the heads; undefined where it does nothing. */
export const commandOf = (name: string, isInHead: boolean): Command | undefined =>
	(isInHead ? headKeys[name] : undefined) ?? cellKeys[name];

/** Which cell each key that puts a typed text in makes active. */
export const commitKeys: Readonly<Record<string, After>> = {
	Enter: 'down',
	'Shift+Enter': 'up',
	Tab: 'right',
	'Shift+Tab': 'left',
	F2: 'stay',
};

/** What arrows do while a cell is typed over: they keep the text and move on. */
export const overKeys: Readonly<Record<string, After>> = {
	ArrowLeft: 'arrow left',
	ArrowRight: 'arrow right',
	ArrowUp: 'arrow up',
	ArrowDown: 'arrow down',
};

/** Whether a key types a character, or begins to compose one. */
export const isTyping = (event: KeyboardEvent): boolean =>
	!event.ctrlKey && !event.metaKey && !event.altKey && (event.key.length === 1 || event.key === 'Process');
