import type { CellFocus } from './cellFocus.ts';
import type { GridAnswers } from './gridAnswers.ts';
import type { GridSeen } from './gridSeen.svelte.ts';
import { heldPaste, isOfGrid, playAgain, pressAgain } from './playAgain.ts';

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

	readonly onkeydown = (event: KeyboardEvent): void => {
		if (this.#grid.isWaiting && !isOfGrid(event)) return;
		this.#answer(
			event,
			(answers) => answers.keydown(event, this.isFinger),
			() => {
				this.#focus.give(); // what had it may have gone from the page
				pressAgain(event);
			},
		);
	};

	readonly onfocusout = (event: FocusEvent): void => {
		this.#answers()?.left();
		this.#focus.left(event.relatedTarget);
	};

	/** Copies, or cuts. Later than the event itself, only a button's way to the clipboard is open. */
	readonly oncopy = (event: ClipboardEvent): void => {
		const what = event.type === 'cut' ? 'cut' : 'copy';
		this.#answer(
			event,
			(answers) => answers.copy(event),
			(answers) => answers.copyLater(what),
		);
	};

	readonly onpaste = (event: ClipboardEvent): void => {
		const held = this.#grid.isWaiting ? heldPaste(event) : event;
		this.#answer(event, (answers) => answers.paste(event, held));
	};

	/** A press, a click, or what asks for a menu. */
	readonly onpointer = (event: PointerEvent | MouseEvent): void => {
		if (event instanceof PointerEvent && event.type === 'pointerdown') this.isFinger = event.pointerType !== 'mouse';
		this.#answer(
			event,
			(answers) => answers.point(event),
			() => playAgain(event),
		);
	};

	/** Answers an event, or has it wait where it came before what answers it. @param later does it then */
	#answer(event: Event, act: (answers: GridAnswers) => void, later = act): void {
		if (!this.#grid.isWaiting) {
			const answers = this.#answers();
			if (answers) act(answers);
			return;
		}
		if (event.cancelable) event.preventDefault();
		this.#grid.do(() => {
			const answers = this.#answers();
			if (answers && this.#focus.isInPage) later(answers);
		});
	}
}
