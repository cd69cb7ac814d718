import { commandOf, commitKeys, isTyping, type KeyContext, keyName, overKeys } from './gridKeys.ts';

/** What the keyboard needs besides what its keys need. */
export interface KeyboardContext extends KeyContext {
	/** Opens the active cell for typing over what it holds. */
	readonly typeOver: () => void;
}

/** The keyboard of the grid: in its editor a key puts the text in or leaves it, elsewhere it is a command. */
export class GridKeyboard {
	readonly #context: KeyboardContext;
	/** Whether Tab leaves the grid, which Escape lets it do. */
	#isTabFree = false;

	constructor(context: KeyboardContext) {
		this.#context = context;
	}

	/** @returns whether the key has been dealt with */
	down(event: KeyboardEvent): boolean {
		if (event.isComposing || event.defaultPrevented) return false;
		if (event.key === 'Shift') return false; // on its way to Shift+Tab: what Escape has freed stays free
		const { editor } = this.#context.grid;
		const name = keyName(event);
		const isDone = editor.editing ? this.#inEditor(name, event) : this.#inCells(name, event);
		this.#isTabFree = !editor.editing && name === 'Escape';
		return isDone;
	}

	/** The focus has left a cell. */
	left(): void {
		this.#isTabFree = false;
	}

	#inEditor(name: string, event: KeyboardEvent): boolean {
		const { editor } = this.#context.grid;
		const after = commitKeys[name] ?? (editor.editing?.isOver ? overKeys[name] : undefined);
		const isInInput = event.target instanceof HTMLInputElement;
		if (name === 'Escape') editor.cancel();
		else if (name === 'Ctrl+Enter' && isInInput) editor.commitToAll();
		else if (after !== undefined && isInInput) editor.commit(after);
		else return false;
		return true;
	}

	#inCells(name: string, event: KeyboardEvent): boolean {
		const { selection, moves } = this.#context.grid;
		if (name === 'Tab' || name === 'Shift+Tab') return !this.#isTabFree && moves.step('tab', event.shiftKey);
		const command = commandOf(name, selection.rowIndex < 0);
		if (command !== undefined) {
			command(this.#context);
			return true;
		}
		// The character goes into the editor, which has the focus by then.
		if (isTyping(event) && selection.row !== undefined) this.#context.typeOver();
		return false;
	}
}
