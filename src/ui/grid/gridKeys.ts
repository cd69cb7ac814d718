import type { Move } from '../../core/grid/move.ts';
import type { After, GridState } from './gridState.svelte.ts';

/** What the keys of the grid need besides its state. */
export interface KeyContext {
	readonly grid: GridState;
	/** Opens the menu of the row or of the column in hand. */
	readonly openMenu: (of: 'row' | 'column') => void;
	/** Goes to what the row in hand is told. */
	readonly goToSentences: () => void;
	/** Takes the next or the former cell that something is said about in hand. */
	readonly goToFinding: (by: 1 | -1) => void;
	readonly showKeys: () => void;
	/** Goes to where words are typed that are looked for. */
	readonly find: () => void;
}

type Command = (context: KeyContext) => void;

/** The name of a key with what is held down: `Ctrl+Shift+Z`. The command key of an Apple keyboard is `Ctrl` too. */
export function keyName(event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>): string {
	const { key } = event;
	const name = key.length === 1 ? key.toUpperCase() : key;
	// Shift is in the character already: `?`, not `Shift+?`.
	const isShiftSaid = event.shiftKey && (key.length > 1 || event.ctrlKey || event.metaKey || event.altKey);
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

const selects: Readonly<Record<string, 'rows' | 'columns' | 'everything'>> = {
	'Shift+ ': 'rows',
	'Ctrl+ ': 'columns',
	'Ctrl+A': 'everything',
};

/** Moves the hand, or selects, if the key is one of those that do; with Shift a move extends the selection. */
export function selectByKey(grid: GridState, event: KeyboardEvent): boolean {
	const name = event.key === ' ' && event.shiftKey ? 'Shift+ ' : keyName(event);
	const way = moves[name.replace('Shift+', '')];
	const what = selects[name];
	if (what !== undefined) grid.selectWhole(what);
	else if (way !== undefined) grid.go(way, event.shiftKey);
	else if (grid.rowIndex < 0 && name === ' ') grid.selectColumns(grid.column);
	else return false;
	return true;
}

/** What each key does while no cell is being typed into. */
export const commandKeys: Readonly<Record<string, Command>> = {
	Delete: ({ grid }) => grid.clear(),
	Backspace: ({ grid }) => grid.clear(),
	'Ctrl+D': ({ grid }) => grid.fill('down'),
	'Ctrl+R': ({ grid }) => grid.fill('right'),
	'Ctrl+Z': ({ grid }) => grid.undo(),
	'Ctrl+Shift+Z': ({ grid }) => grid.redo(),
	'Ctrl+Y': ({ grid }) => grid.redo(),
	'Alt+ArrowUp': ({ grid }) => grid.moveRows(-1),
	'Alt+ArrowDown': ({ grid }) => grid.moveRows(1),
	'Alt+Shift+ArrowDown': ({ grid }) => grid.duplicateRows(),
	'Ctrl+Enter': ({ grid }) => grid.addRow(grid.rowIndex + 1),
	'Ctrl+Shift+Enter': ({ grid }) => grid.addRow(Math.max(0, grid.rowIndex)),
	'Ctrl+Delete': ({ grid }) => grid.removeRows(),
	'Ctrl+Backspace': ({ grid }) => grid.removeRows(),
	F9: ({ grid }) => grid.leaveWorkedOut(),
	'Shift+F10': ({ openMenu }) => openMenu('row'),
	ContextMenu: ({ openMenu }) => openMenu('row'),
	F7: ({ openMenu }) => openMenu('column'),
	'Ctrl+F': ({ find }) => find(),
	F6: ({ goToSentences }) => goToSentences(),
	F8: ({ goToFinding }) => goToFinding(1),
	'Shift+F8': ({ goToFinding }) => goToFinding(-1),
	'?': ({ showKeys }) => showKeys(),
};

/** What keys do in the heads of the columns, where they do something else than in the cells. */
export const headKeys: Readonly<Record<string, Command>> = {
	Enter: ({ openMenu }) => openMenu('column'),
	F2: ({ openMenu }) => openMenu('column'),
	'Shift+F10': ({ openMenu }) => openMenu('column'),
	ContextMenu: ({ openMenu }) => openMenu('column'),
	'Alt+ArrowLeft': ({ grid }) => grid.moveColumns(-1),
	'Alt+ArrowRight': ({ grid }) => grid.moveColumns(1),
	'Alt+Shift+ArrowLeft': ({ grid }) => grid.sizeColumn(-1),
	'Alt+Shift+ArrowRight': ({ grid }) => grid.sizeColumn(1),
	Delete: ({ grid }) => grid.hideColumns(),
};

/** Where each key that puts a typed text in takes the hand. */
export const commitKeys: Readonly<Record<string, After>> = {
	Enter: 'down',
	'Shift+Enter': 'up',
	Tab: 'right',
	'Shift+Tab': 'left',
	F2: 'stay',
};

/** Whether a key types a character, or begins to compose one. */
export const isTyping = (event: KeyboardEvent): boolean =>
	!event.ctrlKey && !event.metaKey && !event.altKey && (event.key.length === 1 || event.key === 'Process');
