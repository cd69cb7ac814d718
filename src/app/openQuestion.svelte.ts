import { begunAgain, withoutWrongTicks } from '../core/bench/cutWarning.ts';
import type { WorkedOutShow } from '../core/findings/workedOutShow.ts';
import type { Edit } from '../core/show/edit.ts';
import type { Show } from '../core/show/show.ts';
import { type Answer, type Asked, type Question, questionOf, type WorkOut } from './cutQuestion.ts';

/** The change of a show that waits for a word, if one does. */
export class OpenQuestion {
	#asked = $state.raw<Asked>();

	get question(): Question | undefined {
		return this.#asked?.question;
	}

	/**
	 * Asks about an edit of a show, where something has to be asked: then the edit waits.
	 * @returns the question
	 */
	ask(edit: Edit, former: Edit | undefined, now: WorkedOutShow, workOut: WorkOut): Question | undefined {
		const question = questionOf(edit, now, workOut);
		this.#asked = question && { edit, question, former };
		return question;
	}

	/** Ends the question. @returns the edit to make in `show`, and in whose place; undefined where nothing is to be done */
	end(answer: Answer, show: Show): Omit<Asked, 'question'> | undefined {
		const asked = this.#asked;
		this.#asked = undefined;
		if (asked === undefined || answer === 'leave') return undefined;
		const { edit, former, question } = asked;
		const make = answer === 'keep' ? withoutWrongTicks : begunAgain;
		return { edit: make(edit, question.wronged, show), former };
	}
}
