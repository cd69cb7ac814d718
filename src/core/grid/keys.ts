import type { Move } from './move.ts';

/** A key as it was pressed; a keyboard event is one. */
export interface Key {
	readonly key: string;
	readonly shiftKey: boolean;
	readonly ctrlKey: boolean;
	/** Command, which stands for Ctrl on a Mac. */
	readonly metaKey: boolean;
	readonly altKey: boolean;
}

/** What a key does to the selection. */
export type SelectionCommand =
	| { readonly kind: 'move'; readonly way: Move; readonly isExtending: boolean }
	| { readonly kind: 'select'; readonly what: 'rows' | 'columns' | 'everything' };

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
	'Ctrl+a': 'everything',
	'Ctrl+Shift+ ': 'everything',
};

/** The command of a key outside a cell's editor; undefined if the key is not one of the selection's. */
export function selectionCommand({ key, shiftKey, ctrlKey, metaKey, altKey }: Key): SelectionCommand | undefined {
	if (altKey) return undefined;
	const name = key.length === 1 ? key.toLowerCase() : key;
	const held = ctrlKey || metaKey ? 'Ctrl+' : '';
	const what = selects[`${held}${shiftKey ? 'Shift+' : ''}${name}`];
	if (what) return { kind: 'select', what };
	const way = moves[held + name];
	return way && { kind: 'move', way, isExtending: shiftKey };
}
