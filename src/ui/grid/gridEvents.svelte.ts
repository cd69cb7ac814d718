import type { CellFocus } from './cellFocus.ts';
import type { GridAnswers } from './gridAnswers.ts';
import type { GridSeen } from './gridSeen.svelte.ts';
import { heldPaste, isOfGrid } from './heldEvents.ts';

/**
 * What is heard in the grid: keys, fingers and the clipboard. What answers them is loaded later than the grid is seen; what
 * comes before that is held, and played once it is there.
 */
export class GridEvents {
	readonly #grid: GridSeen;
	readonly #focus: CellFocus;
	readonly #answers: () => GridAnswers | undefined;
	/** Whether a finger was what touched the grid last. */
	isFinger = $state(false);

	/** @param answers undefined until they are loaded */
	constructor(grid: GridSeen, focus: CellFocus, answers: () => GridAnswers | undefined) {
		this.#grid = grid;
		this.#focus = focus;
		this.#answers = answers;
	}

	/** A key, a press, a click, what asks for a menu, copies, cuts or pastes. */
	readonly heard = (event: Event): void => {
		if (event.type === 'pointerdown') this.isFinger = (event as PointerEvent).pointerType !== 'mouse';
		if (!this.#grid.isWaiting) return this.#answers()?.answer(event, this.isFinger);
		if (event instanceof KeyboardEvent && !isOfGrid(event)) return;
		const held = event.type === 'paste' ? heldPaste(event as ClipboardEvent) : undefined;
		if (event.cancelable) event.preventDefault();
		this.#grid.do(() => this.#answers()?.answerLater(event, held));
	};

	/** The focus has left a cell. */
	readonly left = (event: FocusEvent): void => {
		this.#answers()?.keyboard.left();
		this.#focus.left(event.relatedTarget);
	};
}
