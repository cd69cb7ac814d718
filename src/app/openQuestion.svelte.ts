import type { WorkedOutShow } from '../core/findings/workedOutShow.ts';
import type { Edit } from '../core/show/edit.ts';
import type { Show } from '../core/show/show.ts';
import type { Answer, Asked, Question, WorkOut } from './cutQuestion.ts';
import { judgingPart } from './judging.ts';

/** Whether anything of a show is cut that an edit might make wrong. */
export const isAnythingCut = ({ ticks = [], cutSheets = [] }: Show): boolean => ticks.length + cutSheets.length > 0;

/** Whether an edit may make wrong what is cut: what only ticks and marks, or names the show, does not. */
const mayBeAsked = (edit: Edit, show: Show): boolean =>
	isAnythingCut(show) && !edit.ticks && !edit.cutSheets && (edit.rows.length > 0 || edit.settings !== undefined);

/** The change of a show that waits for a word, if one does. */
export class OpenQuestion {
	#asked = $state.raw<Asked>();

	get question(): Question | undefined {
		return this.#asked?.question;
	}

	/**
	 * Asks about an edit of a show, where something has to be asked: then the edit waits.
	 * @returns whether it may not be made now: before it is known what to ask none is, for a cut could be spoilt
	 */
	ask(edit: Edit, former: Edit | undefined, now: WorkedOutShow, workOut: WorkOut): boolean {
		if (!mayBeAsked(edit, now.show)) return false;
		if (!judgingPart.part) return true;
		const question = judgingPart.part.questionOf(edit, now, workOut);
		this.#asked = question && { edit, question, former };
		return question !== undefined;
	}

	/** Ends the question. @returns the edit to make in `show`, and in whose place; undefined where nothing is to be done */
	end(answer: Answer, show: Show): Omit<Asked, 'question'> | undefined {
		const asked = this.#asked;
		this.#asked = undefined;
		if (asked === undefined || answer === 'leave' || !judgingPart.part) return undefined;
		const { edit, former, question } = asked;
		const { begunAgain, withoutWrongTicks } = judgingPart.part;
		const make = answer === 'keep' ? withoutWrongTicks : begunAgain;
		return { edit: make(edit, question.wronged, show), former };
	}
}
